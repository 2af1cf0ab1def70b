package halfwave.gui.presentation.quiz;

import halfwave.io.quiz.QuizText;
import halfwave.quiz.Appearances;
import halfwave.quiz.Quiz;
import halfwave.quiz.Rules;
import halfwave.quiz.ServiceCall;
import java.util.List;

/** One call of a bank by itself, so that a grader has only that to mark. */
final class PracticeQuiz {

  private PracticeQuiz() {}

  /** The call alone, with hints. */
  static Quiz of(Quiz bank, ServiceCall call) {
    return new Quiz(
        bank.name(),
        bank.title(),
        bank.about(),
        bank.seed(),
        bank.passRatio(),
        bank.weights(),
        new Rules(0, true),
        List.of(),
        List.of(call));
  }

  /**
   * Somebody begins it.
   *
   * @param time how often anything was practised before: each time may meet another furnace
   */
  static Attempt begin(Quiz alone, int time) {
    return Attempt.begin(alone, QuizText.hash(alone), "practice " + time, 1, new Appearances())
        .opened(alone.calls().get(0));
  }
}
