package halfwave.instrument;

import halfwave.circuit.SteadyState;

/**
 * What a meter's two ranges show, or why there is nothing to show.
 *
 * <pre>
 * MeterReading = Volts | Amps | None
 * </pre>
 */
public sealed interface MeterReading {

  /**
   * A voltage.
   *
   * @param meanVolts DC, signed (V)
   * @param alternatingRmsVolts AC, the mean removed (V rms)
   */
  record Volts(double meanVolts, double alternatingRmsVolts) implements MeterReading {}

  /**
   * A current.
   *
   * @param meanAmps DC, signed (A)
   * @param alternatingRmsAmps AC, the mean removed (A rms)
   */
  record Amps(double meanAmps, double alternatingRmsAmps) implements MeterReading {}

  /**
   * The circuit with this meter has no solution.
   *
   * @param reason why
   */
  record None(SteadyState.Failed reason) implements MeterReading {}
}
