package halfwave.grading;

import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.CheckAdvice;
import halfwave.diagnosis.Occasion;
import halfwave.fault.FaultGroup;
import halfwave.fault.FaultKind;
import halfwave.grading.Assessor.Thought;
import halfwave.quiz.Conclusion;
import halfwave.quiz.Done;
import halfwave.quiz.Move;
import halfwave.quiz.Phase;
import halfwave.quiz.Ready;
import halfwave.quiz.Visit;
import halfwave.work.FurnacePart;
import halfwave.work.MeterTest;
import halfwave.work.Repair;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What an expert does next on a service call, and says at its end. */
public final class Expert {

  /** What is less likely than this is not listed any more [judgement]. */
  private static final double LISTED_PROBABILITY = 0.03;

  private static final Check READING = new Check.Read(MeterTest.SERIES_CURRENT, Occasion.WARM);

  private final Assessor assessor;

  /** On one call. */
  public Expert(Assessor assessor) {
    this.assessor = assessor;
  }

  /** What is thought after all that was done. */
  public Thought thought(Visit visit) {
    return assessor.after(Entries.of(visit.log()));
  }

  /** The stage at which a visit is. */
  public Phase phase(Visit visit) {
    if (!seen(visit.log(), new Check.Call())) {
      return Phase.DESCRIBE;
    } else if (proved(visit)) {
      return Phase.PROVE;
    }
    if (!listed(visit)) {
      return Phase.LIST_CAUSES;
    }
    Optional<Move> next = wanted(visit);
    if (next.isEmpty() || next.get().equals(new Move.Checked(READING))) {
      return Phase.PROVE;
    }
    return next.get() instanceof Move.Repaired ? Phase.REPAIR : Phase.TEST;
  }

  /** The next move, switching off and on included; nothing: it is time to conclude. */
  public Optional<Move> next(Visit visit) {
    if (visit.ending().isPresent()) {
      return Optional.empty();
    }
    Optional<Move> wanted = wanted(visit);
    return wanted.isPresent() ? Optional.of(Ready.before(visit, wanted.get())) : heating(visit);
  }

  /** Power and gas on before one leaves. */
  static Optional<Move> heating(Visit visit) {
    if (!visit.power()) {
      return Optional.of(new Move.Power(true));
    }
    return visit.gas() ? Optional.empty() : Optional.of(new Move.Gas(true));
  }

  private Optional<Move> wanted(Visit visit) {
    if (!seen(visit.log(), new Check.Call())) {
      return checked(new Check.Call());
    } else if (!seen(visit.log(), new Check.Light())
        && visit.variant().call().open(new Check.Light())) {
      return checked(new Check.Light());
    }
    Thought thought = thought(visit);
    if (!listed(visit)) {
      return Optional.of(new Move.Suspects(groups(thought)));
    } else if (waits(visit)) {
      return checked(new Check.Call());
    }
    Optional<CheckAdvice> check = thought.advice().nextCheck();
    if (check.isPresent()) {
      return checked(check.get().check());
    }
    Optional<Repair> repair = thought.advice().nextRepair().map(r -> r.repair());
    if (repair.isPresent()) {
      return Optional.of(new Move.Repaired(repair.get()));
    }
    boolean open = visit.variant().call().open(READING);
    return open && !seen(visit.sinceRepair(), READING) ? checked(READING) : Optional.empty();
  }

  private static boolean listed(Visit visit) {
    return visit.log().stream().anyMatch(d -> d.move() instanceof Move.Suspects);
  }

  private static Optional<Move> checked(Check check) {
    return Optional.of(new Move.Checked(check));
  }

  /** Whether a repair was made and no call watched since. */
  private static boolean waits(Visit visit) {
    return visit.repaired() && !seen(visit.sinceRepair(), new Check.Call());
  }

  private static boolean proved(Visit visit) {
    return visit.repaired()
        && seen(visit.sinceRepair(), new Check.Call())
        && seen(visit.sinceRepair(), READING);
  }

  private static boolean seen(List<Done> log, Check check) {
    return log.stream().anyMatch(d -> d.move().equals(new Move.Checked(check)));
  }

  /** Where the fault may still be. */
  public static Set<FaultGroup> groups(Thought thought) {
    Set<FaultGroup> groups = EnumSet.noneOf(FaultGroup.class);
    for (Map.Entry<Cause, Double> e : thought.belief().now().entrySet()) {
      if (e.getValue() >= LISTED_PROBABILITY) {
        e.getKey().kinds().stream().map(FaultKind::group).forEach(groups::add);
      }
    }
    return groups;
  }

  /** What an expert concludes: what was most likely wrong at first. */
  public Conclusion conclusion(Visit visit) {
    Cause cause = thought(visit).belief().atFirst().keySet().iterator().next();
    return conclusion(cause);
  }

  /** A cause with its place and its repair. */
  public static Conclusion conclusion(Cause cause) {
    List<Repair> repairs = Places.repairs(cause);
    FurnacePart place = repairs.isEmpty() ? null : repairs.get(0).part();
    return new Conclusion(cause, place, repairs.isEmpty() ? null : repairs.get(0));
  }
}
