package halfwave.grading;

import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.Occasion;
import halfwave.diagnosis.Outcome;
import halfwave.evidence.Course;
import halfwave.fault.FaultGroup;
import halfwave.grading.Assessor.Thought;
import halfwave.quantity.Guard;
import halfwave.quantity.Noise;
import halfwave.quiz.CallSheet;
import halfwave.quiz.Conclusion;
import halfwave.quiz.Done;
import halfwave.quiz.Move;
import halfwave.quiz.Ready;
import halfwave.quiz.Visit;
import halfwave.work.MeterTest;
import halfwave.work.Repair;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A simulated learner. A slip is something else than what was meant: mostly another test, sometimes
 * a part, seldom that power and gas are left on.
 *
 * @param habit how it goes about a call
 * @param slipRatio share of what is done that is a slip (1)
 * @param seed of its chance
 */
public record Learner(Habit habit, double slipRatio, long seed) {

  /** What a slip is (1) [judgement]: the rest is another test. */
  private static final double LEAVES_ON_RATIO = 0.03;

  private static final double SWAPS_RATIO = 0.15;

  /** Nobody does more than this on one call. */
  private static final int MOST_MOVES = 80;

  /** Chance is asked for several things at each turn. */
  private static final int ASKED = 8;

  private static final Check READING = new Check.Read(MeterTest.SERIES_CURRENT, Occasion.WARM);

  /** Checks the domain. */
  public Learner {
    Guard.inRange("slipRatio", slipRatio, 0, 1);
  }

  /** Takes a call and hands it in. */
  public CallSheet take(Visit begun, Assessor assessor) {
    Visit visit = begun;
    for (int turn = 0; turn < MOST_MOVES && visit.ending().isEmpty(); turn++) {
      Optional<Move> next = next(visit, assessor, turn);
      if (next.isEmpty()) {
        break;
      }
      if (visit.refusal(next.get()).isEmpty()) {
        visit = visit.after(next.get());
      }
    }
    boolean ended = visit.ending().isPresent();
    return new CallSheet(
        visit.variant().call().name(), logged(visit), ended ? null : conclusion(visit, assessor));
  }

  private static List<CallSheet.Logged> logged(Visit visit) {
    return visit.log().stream().map(d -> CallSheet.Logged.of(d, 0)).toList();
  }

  private double chance(int turn, int what) {
    return Noise.uniform(seed, Noise.Purpose.VARIANT, (long) turn * ASKED + what);
  }

  private Optional<Move> next(Visit visit, Assessor assessor, int turn) {
    Optional<Move> meant = meant(visit, assessor, turn);
    if (meant.isPresent() && chance(turn, 0) < slipRatio) {
      double kind = chance(turn, 1);
      if (kind < LEAVES_ON_RATIO) {
        return meant;
      } else if (kind < LEAVES_ON_RATIO + SWAPS_RATIO) {
        meant = Optional.of(anyRepair(visit, chance(turn, 2)));
      } else {
        meant = Optional.of(anyCheck(visit, chance(turn, 2)));
      }
    }
    return meant.isPresent()
        ? Optional.of(Ready.before(visit, meant.get()))
        : Expert.heating(visit);
  }

  private Optional<Move> meant(Visit visit, Assessor assessor, int turn) {
    Set<Check> done = since(visit);
    boolean repaired = visit.repaired();
    if (!done.contains(new Check.Call())) {
      return Optional.of(new Move.Checked(new Check.Call()));
    } else if (!repaired && !done.contains(new Check.Light())) {
      return Optional.of(new Move.Checked(new Check.Light()));
    } else if (repaired && course(visit) == Course.RUNS) {
      boolean read = done.contains(READING) || !visit.variant().call().open(READING);
      return read ? Optional.empty() : Optional.of(new Move.Checked(READING));
    }
    Thought thought = assessor.after(Entries.of(visit.log()));
    Optional<Move> wanted = habit.wanted(thought, course(visit), done, chance(turn, 3));
    boolean says = visit.last().move() instanceof Move.Suspects;
    boolean decides = wanted.isEmpty() || wanted.get() instanceof Move.Repaired;
    if (decides && !repaired && !says && habit != Habit.PARTS_SWAPPER) {
      return Optional.of(new Move.Suspects(named(thought)));
    }
    boolean shown = done.contains(READING) || !visit.variant().call().open(READING);
    return wanted.isEmpty() && !shown ? Optional.of(new Move.Checked(READING)) : wanted;
  }

  /** Whoever tests at random names what comes first to mind; the others what they think. */
  private Set<FaultGroup> named(Thought thought) {
    return habit == Habit.RANDOM_TESTER ? EnumSet.allOf(FaultGroup.class) : Expert.groups(thought);
  }

  private static Set<Check> since(Visit visit) {
    Set<Check> since = new HashSet<>();
    for (Done done : visit.sinceRepair()) {
      if (done.move() instanceof Move.Checked checked) {
        since.add(checked.check());
      }
    }
    return since;
  }

  /** How the last call went that was watched; before there was one, as most complaints say. */
  private static Course course(Visit visit) {
    Course course = Course.GOES_OUT;
    for (Done done : visit.log()) {
      if (done.move().equals(new Move.Checked(new Check.Call()))
          && done.outcome() instanceof Outcome.Found found
          && found.what() instanceof Course seen) {
        course = seen;
      }
    }
    return course;
  }

  private static Move anyCheck(Visit visit, double chance) {
    List<Check> checks = visit.variant().call().checks();
    return new Move.Checked(checks.get((int) (chance * checks.size())));
  }

  private static Move anyRepair(Visit visit, double chance) {
    List<Repair> repairs =
        Stream.of(Repair.values())
            .filter(r -> r.possibleAt(visit.variant().call().ignition()))
            .toList();
    return new Move.Repaired(repairs.get((int) (chance * repairs.size())));
  }

  /** What was likeliest to be wrong at first, knowing what each repair brought. */
  private static Conclusion conclusion(Visit visit, Assessor assessor) {
    Cause cause =
        assessor.after(Entries.of(visit.log())).belief().atFirst().keySet().iterator().next();
    return Expert.conclusion(cause);
  }
}
