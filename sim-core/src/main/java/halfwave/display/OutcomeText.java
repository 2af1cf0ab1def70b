package halfwave.display;

import halfwave.diagnosis.Outcome;
import halfwave.diagnosis.Reasons;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;

/** What came of a check, as it is written down: a reading with the figures that a meter shows. */
public final class OutcomeText {

  private static final int AMPS_DECIMALS = 2;
  private static final int VOLTS_DECIMALS = 1;

  private OutcomeText() {}

  /** The text, as it begins a line. */
  public static String of(Outcome outcome, Sentences sentences) {
    if (outcome instanceof Outcome.Amps amps && whole(amps)) {
      return sentences.text(
          Message.of(
              MessageKey.OUTCOME_BOTH,
              fixed(amps.meanAmps(), DisplayUnit.MICROAMP, AMPS_DECIMALS, sentences),
              fixed(amps.alternatingRmsAmps(), DisplayUnit.MICROAMP, AMPS_DECIMALS, sentences)));
    } else if (outcome instanceof Outcome.Volts volts
        && !Double.isNaN(volts.alternatingRmsVolts())) {
      return sentences.text(
          Message.of(
              MessageKey.OUTCOME_ALTERNATING,
              fixed(volts.alternatingRmsVolts(), DisplayUnit.VOLT, VOLTS_DECIMALS, sentences)));
    }
    return sentences.sentence(Reasons.said(outcome));
  }

  private static boolean whole(Outcome.Amps amps) {
    return !Double.isNaN(amps.meanAmps()) && !Double.isNaN(amps.alternatingRmsAmps());
  }

  private static Argument fixed(double si, DisplayUnit unit, int decimals, Sentences sentences) {
    return Argument.text(sentences.quantities().fixed(si, unit, decimals));
  }
}
