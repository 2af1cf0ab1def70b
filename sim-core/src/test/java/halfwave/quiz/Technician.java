package halfwave.quiz;

import halfwave.diagnosis.Advice;
import halfwave.diagnosis.Adviser;
import halfwave.diagnosis.Belief;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.CheckAdvice;
import halfwave.diagnosis.Entry.Observed;
import halfwave.diagnosis.Entry.Repaired;
import halfwave.diagnosis.Entry.Result;
import halfwave.diagnosis.Outcome;
import halfwave.diagnosis.Outlook;
import halfwave.evidence.Course;
import halfwave.work.Repair;
import java.util.Objects;
import java.util.Optional;

/** Goes about a service call as the engine advises, and never works on a live appliance. */
final class Technician {

  private final Adviser adviser;
  private final ServiceCall call;
  private Visit visit;
  private Belief belief;

  Technician(Variant variant, Outlook outlook, Appearances appearances) {
    call = variant.call();
    adviser = new Adviser(outlook, call.ignition());
    visit = Visit.begin(variant, appearances, false);
    belief = outlook.start();
  }

  /** Watches a call first, then does what is advised until nothing is. */
  Visit followAdvice() {
    Outcome course = check(new Check.Call());
    check(new Check.Light());
    while (visit.ending().isEmpty()) {
      Advice advice = adviser.advice(belief);
      Optional<Check> next = next(advice);
      if (next.isPresent()) {
        check(next.get());
      } else if (advice.nextRepair().isEmpty()) {
        return visit;
      } else {
        Outcome then = repair(advice.nextRepair().get().repair(), course);
        if (!then.equals(course) && runs(then)) {
          return visit;
        }
        course = then;
      }
    }
    return visit;
  }

  private Optional<Check> next(Advice advice) {
    return advice.checks().stream()
        .filter(CheckAdvice::pays)
        .map(CheckAdvice::check)
        .filter(call::open)
        .findFirst();
  }

  /** What is believed after everything that may be looked at and measured. */
  Belief checkAll() {
    call.checks().forEach(this::check);
    return belief;
  }

  /** Repairs and looks no further. */
  void mend(Repair repair) {
    after(new Move.Repaired(repair));
  }

  Visit visit() {
    return visit;
  }

  /** Looks or measures. */
  Outcome check(Check check) {
    Outcome outcome = look(check);
    belief = belief.after(new Observed(check, outcome));
    return outcome;
  }

  private Outcome look(Check check) {
    after(new Move.Checked(check));
    return Objects.requireNonNull(visit.log().get(visit.log().size() - 1).outcome(), check.id());
  }

  private void after(Move move) {
    visit = Ready.forMove(visit, move).after(move);
  }

  /** Repairs and watches a call. */
  private Outcome repair(Repair repair, Outcome before) {
    mend(repair);
    if (visit.ending().isPresent()) {
      return before;
    }
    Outcome after = look(new Check.Call());
    belief = belief.after(new Repaired(repair, result(before, after)));
    return after;
  }

  private static Result result(Outcome before, Outcome after) {
    if (before.equals(after)) {
      return Result.UNCHANGED;
    }
    return runs(after) ? Result.CURED : Result.WORSE;
  }

  private static boolean runs(Outcome outcome) {
    return outcome.equals(new Outcome.Found(Course.RUNS));
  }
}
