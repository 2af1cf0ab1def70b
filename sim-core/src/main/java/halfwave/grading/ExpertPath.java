package halfwave.grading;

import halfwave.diagnosis.Advice;
import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.CheckAdvice;
import halfwave.diagnosis.Entry;
import halfwave.diagnosis.Outcome;
import halfwave.diagnosis.Reasons;
import halfwave.diagnosis.RepairAdvice;
import halfwave.message.Message;
import halfwave.quiz.Appearances;
import halfwave.quiz.Done;
import halfwave.quiz.Move;
import halfwave.quiz.Ready;
import halfwave.quiz.Variant;
import halfwave.quiz.Visit;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How an expert goes about a service call: the best check each time, as long as checking pays, then
 * the repair that cures most for its effort and a call to see what it did, until the furnace is
 * whole and its signal was read.
 *
 * @param steps what is done, in order
 * @param end the visit after the last of them
 */
public record ExpertPath(List<Step> steps, Visit end) {

  /** Whoever is not done by then goes in circles. */
  private static final int MOST_STEPS = 30;

  /**
   * One step.
   *
   * @param move a check or a repair
   * @param outcome what a check found; null for a repair
   * @param minutes of this step (min)
   * @param told what its result did to the belief, in words; none for a repair
   * @param now how probable each cause is after it, falling
   */
  public record Step(
      Move move,
      @Nullable Outcome outcome,
      int minutes,
      List<Message> told,
      Map<Cause, Double> now) {

    /** Takes a copy. */
    public Step {
      told = List.copyOf(told);
    }
  }

  /** Takes a copy. */
  public ExpertPath {
    steps = List.copyOf(steps);
  }

  /**
   * The path.
   *
   * @param assessor what an expert thinks on this call
   * @param variant the furnace
   * @param appearances what is remembered of benches
   */
  public static ExpertPath of(Assessor assessor, Variant variant, Appearances appearances) {
    List<Step> steps = new ArrayList<>();
    List<Entry> entries = new ArrayList<>();
    Visit visit = Visit.begin(variant, appearances, false);
    Move move = next(assessor, entries).orElse(null);
    while (move != null && steps.size() < MOST_STEPS) {
      Visit ready = Ready.forMove(visit, move);
      if (ready.refusal(move).isPresent()) {
        break;
      }
      Visit after = ready.after(move);
      Done done = after.log().get(after.log().size() - 1);
      entries.add(entry(done));
      steps.add(step(assessor.after(entries), done, after.minutes() - visit.minutes()));
      visit = after;
      move = following(assessor, entries, visit, move);
    }
    return new ExpertPath(steps, visit);
  }

  /** After a repair a call is watched and the signal read, whatever is believed. */
  private static @Nullable Move following(
      Assessor assessor, List<Entry> entries, Visit visit, Move last) {
    if (last instanceof Move.Repaired) {
      return new Move.Checked(new Check.Call());
    }
    boolean proved = entries.stream().anyMatch(Entry.Repaired.class::isInstance) && visit.whole();
    if (!proved) {
      return next(assessor, entries).orElse(null);
    }
    boolean read = last instanceof Move.Checked checked && checked.check() instanceof Check.Read;
    return read ? null : reading(visit).orElse(null);
  }

  private static Optional<Move> reading(Visit visit) {
    return visit.variant().call().checks().stream()
        .filter(c -> c instanceof Check.Read read && read.current())
        .map(Move.Checked::new)
        .map(Move.class::cast)
        .findFirst();
  }

  private static Optional<Move> next(Assessor assessor, List<Entry> entries) {
    Advice advice = assessor.after(entries).advice();
    Optional<Move> check = advice.nextCheck().map(CheckAdvice::check).map(Move.Checked::new);
    return check.isPresent()
        ? check
        : advice.nextRepair().map(RepairAdvice::repair).map(Move.Repaired::new);
  }

  private static Entry entry(Done done) {
    if (done.move() instanceof Move.Checked checked && done.outcome() != null) {
      return new Entry.Observed(checked.check(), done.outcome());
    } else if (done.move() instanceof Move.Repaired repaired) {
      return new Entry.Repaired(repaired.repair(), Entry.Result.UNSEEN);
    }
    throw new IllegalStateException("neither check nor repair: " + done);
  }

  private static Step step(Assessor.Thought thought, Done done, int minutes) {
    var steps = thought.belief().steps();
    List<Message> told =
        done.outcome() == null ? List.of() : Reasons.of(steps.get(steps.size() - 1));
    return new Step(done.move(), done.outcome(), minutes, told, thought.belief().now());
  }

  /** What is checked before the first repair; the rest proves or corrects it. */
  public List<Step> search() {
    return steps.stream().takeWhile(s -> s.move() instanceof Move.Checked).toList();
  }

  /** The repairs among the steps that put something right, in order. */
  public List<Repair> cures() {
    List<Repair> cures = new ArrayList<>();
    Cause left = end.variant().cause();
    for (Step step : steps) {
      if (step.move() instanceof Move.Repaired repaired) {
        Cause after = left.after(repaired.repair());
        if (!after.equals(left)) {
          cures.add(repaired.repair());
        }
        left = after;
      }
    }
    return cures;
  }
}
