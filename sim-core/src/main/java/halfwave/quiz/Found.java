package halfwave.quiz;

import halfwave.diagnosis.Outcome;
import java.util.Locale;

/** What was found, as an answer sheet writes it down. */
public final class Found {

  private static final double MICRO = 1e-6;

  private Found() {}

  /** The text; empty where a move finds nothing. */
  public static String text(Done done) {
    Outcome outcome = done.outcome();
    return outcome == null ? "" : text(outcome);
  }

  /** The same of an outcome alone. */
  public static String text(Outcome outcome) {
    if (outcome instanceof Outcome.Found found) {
      return found.what().name().toLowerCase(Locale.ROOT).replace('_', '-');
    } else if (outcome instanceof Outcome.Amps amps) {
      return number(amps.meanAmps() / MICRO, 2)
          + "uA/"
          + number(amps.alternatingRmsAmps() / MICRO, 2)
          + "uA";
    } else if (outcome instanceof Outcome.Volts volts) {
      return number(volts.alternatingRmsVolts(), 1) + "V";
    }
    return "none";
  }

  private static String number(double value, int places) {
    return String.format(Locale.ROOT, "%." + places + "f", value);
  }
}
