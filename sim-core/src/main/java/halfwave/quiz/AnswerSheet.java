package halfwave.quiz;

import java.util.List;
import java.util.Optional;

/**
 * What a learner hands in.
 *
 * @param engine name and version of the program it was made with
 * @param quiz name of the quiz
 * @param quizHash of the quiz with all that is hidden
 * @param learner name or code
 * @param extraTimeRatio time by the wall over that of the others (1); one or above
 * @param calls each call at most once, in the order in which they were begun
 */
public record AnswerSheet(
    String engine,
    String quiz,
    String quizHash,
    String learner,
    double extraTimeRatio,
    List<CallSheet> calls) {

  /** Takes a copy. */
  public AnswerSheet {
    calls = List.copyOf(calls);
  }

  /** What was handed in of a call. */
  public Optional<CallSheet> call(String name) {
    return calls.stream().filter(c -> c.call().equals(name)).findFirst();
  }
}
