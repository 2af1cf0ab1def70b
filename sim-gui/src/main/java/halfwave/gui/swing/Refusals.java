package halfwave.gui.swing;

import halfwave.display.Sentences;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Refusal;
import halfwave.quantity.RejectedValueException;
import halfwave.quantity.RejectedValueException.Allowed;

/** What to say about an act that cannot be done. */
final class Refusals {

  private Refusals() {}

  static String text(Refusal refusal, Wording words) {
    RejectedValueException reason = refusal.reason();
    if (reason.allowed() == Allowed.CLEAR_OF_BURNER) {
      return words.text("refused.rod");
    }
    return words.text(
        "refused.line",
        reason.field(),
        reason.value(),
        words.sentences().text(Sentences.allowed(reason)));
  }
}
