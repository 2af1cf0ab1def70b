package halfwave.architecture.bad.halfwave.gui.presentation.bench;

import halfwave.architecture.bad.halfwave.gui.presentation.quiz.LateTheme;

/** The bench that looks into a quiz. */
final class EarlyTheme {
  private EarlyTheme() {}

  static Object quiz() {
    return new LateTheme();
  }
}
