package halfwave.instrument;

import halfwave.quantity.Guard;

/**
 * The source with which a multimeter measures resistance.
 *
 * @param testVolts open-circuit voltage of red against black (V)
 * @param sourceOhms resistance behind which it stands (Ω)
 * @param toneBelowOhms below this the continuity function sounds (Ω)
 */
public record Ohmmeter(double testVolts, double sourceOhms, double toneBelowOhms) {

  /** Checks the domain. */
  public Ohmmeter {
    Guard.positive("testVolts", testVolts);
    Guard.positive("sourceOhms", sourceOhms);
    Guard.notNegative("toneBelowOhms", toneBelowOhms);
  }
}
