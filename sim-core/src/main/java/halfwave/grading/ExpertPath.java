package halfwave.grading;

import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Outcome;
import halfwave.diagnosis.Reasons;
import halfwave.message.Message;
import halfwave.quiz.Appearances;
import halfwave.quiz.Done;
import halfwave.quiz.Move;
import halfwave.quiz.Variant;
import halfwave.quiz.Visit;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
  private static final int MOST_MOVES = 80;

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
    Expert expert = new Expert(assessor);
    List<Step> steps = new ArrayList<>();
    Visit visit = Visit.begin(variant, appearances, false);
    for (int k = 0; k < MOST_MOVES; k++) {
      Move move = expert.next(visit).orElse(null);
      if (move == null || visit.refusal(move).isPresent()) {
        break;
      }
      Visit after = visit.after(move);
      if (move instanceof Move.Checked || move instanceof Move.Repaired) {
        steps.add(step(expert.thought(after), after, after.minutes() - visit.minutes()));
      }
      visit = after;
    }
    return new ExpertPath(steps, visit);
  }

  private static Step step(Assessor.Thought thought, Visit visit, int minutes) {
    Done done = visit.log().get(visit.log().size() - 1);
    List<halfwave.diagnosis.Step> steps = thought.belief().steps();
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
