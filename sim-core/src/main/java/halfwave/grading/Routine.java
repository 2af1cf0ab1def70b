package halfwave.grading;

import halfwave.diagnosis.Check;
import halfwave.diagnosis.Outcome;
import halfwave.evidence.Course;
import halfwave.quiz.Appearances;
import halfwave.quiz.Found;
import halfwave.quiz.Move;
import halfwave.quiz.Ready;
import halfwave.quiz.Variant;
import halfwave.quiz.Visit;
import halfwave.work.Repair;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Somebody's own order of work: the same steps on every call, until the furnace runs.
 *
 * @param name what it is called
 * @param steps in their order; at least one
 */
public record Routine(String name, List<Step> steps) {

  /**
   * One step: a check, a repair, or a repair that follows from what a check finds.
   *
   * @param check what to look at; null: nothing
   * @param found findings after which to repair; empty: none decides
   * @param belowAmps DC in series below which to repair (A); NaN: none decides
   * @param belowVolts AC below which to repair (V); NaN: none decides
   * @param repair what to do; null: nothing
   */
  public record Step(
      @Nullable Check check,
      Set<String> found,
      double belowAmps,
      double belowVolts,
      @Nullable Repair repair) {

    /** Takes a copy. */
    public Step {
      found = Set.copyOf(found);
    }

    private boolean decides(@Nullable Outcome outcome) {
      boolean always = check == null || plain();
      if (outcome == null || always) {
        return always;
      } else if (outcome instanceof Outcome.Amps amps) {
        return amps.meanAmps() < belowAmps;
      } else if (outcome instanceof Outcome.Volts volts) {
        return volts.alternatingRmsVolts() < belowVolts;
      }
      return outcome instanceof Outcome.Found && found.contains(Found.text(outcome));
    }

    private boolean plain() {
      return found.isEmpty() && Double.isNaN(belowAmps) && Double.isNaN(belowVolts);
    }
  }

  /** Takes a copy. */
  public Routine {
    steps = List.copyOf(steps);
    if (steps.isEmpty()) {
      throw new IllegalArgumentException("steps: at least one");
    }
  }

  /**
   * Goes through it at a furnace; each repair is followed by a call, and a call that runs ends it.
   * What the call does not allow, or its appliance does not have, is left out.
   */
  public Visit at(Variant variant, Appearances appearances) {
    Visit visit =
        done(Visit.begin(variant, appearances, false), new Move.Checked(new Check.Call()));
    for (Step step : steps) {
      Outcome outcome = null;
      if (step.check() != null) {
        Visit before = visit;
        visit = done(visit, new Move.Checked(step.check()));
        // a check that was left out decides nothing
        outcome = visit == before ? new Outcome.NotReached() : last(visit);
      }
      if (step.repair() != null && step.decides(outcome)) {
        visit = done(visit, new Move.Repaired(step.repair()));
        visit = done(visit, new Move.Checked(new Check.Call()));
        if (new Outcome.Found(Course.RUNS).equals(last(visit))) {
          return visit;
        }
      }
    }
    return visit;
  }

  private static Visit done(Visit visit, Move move) {
    if (visit.ending().isPresent()) {
      return visit;
    }
    Visit ready = Ready.forMove(visit, move);
    return ready.refusal(move).isPresent() ? visit : ready.after(move);
  }

  private static @Nullable Outcome last(Visit visit) {
    return visit.last().outcome();
  }
}
