package halfwave.quiz;

import java.util.ArrayList;
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
 * @param sitting when it was taken by the computer's clock
 */
public record AnswerSheet(
    String engine,
    String quiz,
    String quizHash,
    String learner,
    double extraTimeRatio,
    List<CallSheet> calls,
    Sitting sitting) {

  /** Takes a copy. */
  public AnswerSheet {
    calls = List.copyOf(calls);
  }

  /** One of which nobody knows when it was taken. */
  public AnswerSheet(
      String engine,
      String quiz,
      String quizHash,
      String learner,
      double extraTimeRatio,
      List<CallSheet> calls) {
    this(engine, quiz, quizHash, learner, extraTimeRatio, calls, Sitting.UNKNOWN);
  }

  /** The same, taken then. */
  public AnswerSheet with(Sitting other) {
    return new AnswerSheet(engine, quiz, quizHash, learner, extraTimeRatio, calls, other);
  }

  /** Seconds by the clock on the wall at the last move; zero before the first. */
  public long lastMoveSeconds() {
    return calls.stream()
        .flatMap(c -> c.moves().stream())
        .mapToLong(CallSheet.Logged::wallSeconds)
        .max()
        .orElse(0);
  }

  /** The same at the last that is known, be it a move or that it was gone on with. */
  public long wallSeconds() {
    return Math.max(lastMoveSeconds(), sitting.lastSeconds());
  }

  /** What was handed in of a call. */
  public Optional<CallSheet> call(String name) {
    return calls.stream().filter(c -> c.call().equals(name)).findFirst();
  }

  /** The same with that of a call: in the place of what was there, or else as the last. */
  public AnswerSheet with(CallSheet other) {
    List<CallSheet> all = new ArrayList<>(calls);
    all.replaceAll(c -> c.call().equals(other.call()) ? other : c);
    if (call(other.call()).isEmpty()) {
      all.add(other);
    }
    return new AnswerSheet(engine, quiz, quizHash, learner, extraTimeRatio, all, sitting);
  }
}
