package halfwave.lesson;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A demonstration played to the end without an audience, to find out whether the model does what it
 * says.
 *
 * @param performances what came of each step
 * @param doubts what is not so
 */
public record Rehearsal(List<Performance> performances, List<Doubt> doubts) {

  /**
   * Something that the model does otherwise.
   *
   * @param stepIndex in which step, from zero
   * @param answerIndex of which answer, or null: of the step itself
   * @param claim the claim that does not hold; null where a wrong answer comes true
   */
  public record Doubt(int stepIndex, @Nullable Integer answerIndex, @Nullable Claim claim) {}

  /** Takes copies. */
  public Rehearsal {
    performances = List.copyOf(performances);
    doubts = List.copyOf(doubts);
  }

  /** Plays it. */
  public static Rehearsal of(Demonstration demonstration) {
    List<Performance> performances = new ArrayList<>();
    List<Doubt> doubts = new ArrayList<>();
    Performance last = demonstration.start().from(demonstration.cold()).performed();
    for (int k = 0; k < demonstration.steps().size(); k++) {
      Step step = demonstration.steps().get(k);
      last = step.play().from(last.after()).performed();
      performances.add(last);
      doubts.addAll(doubts(k, step, last));
    }
    return new Rehearsal(performances, doubts);
  }

  private static List<Doubt> doubts(int index, Step step, Performance shown) {
    List<Doubt> doubts = new ArrayList<>(failing(index, null, step.claims(), shown));
    Question question = step.question();
    if (question != null) {
      for (int k = 0; k < question.answers().size(); k++) {
        Answer answer = question.answers().get(k);
        if (k == question.right()) {
          doubts.addAll(failing(index, k, answer.claims(), shown));
        } else if (answer.comesTrue(shown)) {
          doubts.add(new Doubt(index, k, null));
        }
      }
    }
    return doubts;
  }

  private static List<Doubt> failing(
      int index, @Nullable Integer answer, List<Claim> claims, Performance shown) {
    return claims.stream()
        .filter(c -> !c.holds(shown))
        .map(c -> new Doubt(index, answer, c))
        .toList();
  }
}
