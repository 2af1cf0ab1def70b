package halfwave.architecture.bad.halfwave.io.bench;

import halfwave.architecture.bad.halfwave.io.quiz.LateTheme;

/** The file of a bench that knows quizzes. */
final class EarlyTheme {
  private EarlyTheme() {}

  static Object quiz() {
    return new LateTheme();
  }
}
