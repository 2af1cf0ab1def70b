package halfwave.lesson;

import halfwave.sequence.Playback;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

  /** Sees how far a rehearsal is, and may end it. */
  @FunctionalInterface
  public interface Watch {

    /**
     * Called again and again, on the thread that plays.
     *
     * @param doneRatio how much of the time is played, 0 to 1
     * @return false to give up
     */
    boolean goOn(double doneRatio);
  }

  /** Plays it. */
  public static Rehearsal of(Demonstration demonstration) {
    return of(demonstration, doneRatio -> true).orElseThrow();
  }

  /** The same for whoever may give it up; then there is nothing. */
  public static Optional<Rehearsal> of(Demonstration demonstration, Watch watch) {
    List<Performance> performances = new ArrayList<>();
    List<Doubt> doubts = new ArrayList<>();
    double all = Math.max(1, lengthMillis(demonstration));
    Playback.Watch slices = slice -> watch.goOn(slice.end().timeMillis() / all);
    Optional<Performance> last = demonstration.start().from(demonstration.cold()).performed(slices);
    for (int k = 0; last.isPresent() && k < demonstration.steps().size(); k++) {
      Step step = demonstration.steps().get(k);
      last = step.play().from(last.get().after()).performed(slices);
      if (last.isPresent()) {
        performances.add(last.get());
        doubts.addAll(doubts(k, step, last.get()));
      }
    }
    return last.map(end -> new Rehearsal(performances, doubts));
  }

  private static long lengthMillis(Demonstration demonstration) {
    return demonstration.start().lengthMillis()
        + demonstration.steps().stream().mapToLong(s -> s.play().lengthMillis()).sum();
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
