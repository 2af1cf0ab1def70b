package halfwave.instrument;

import halfwave.circuit.SteadyState;

/**
 * What is on the display.
 *
 * <pre>
 * Shown = Alternating | Direct | Both | Ohms | Nothing | Unsolved
 * </pre>
 */
public sealed interface Shown {

  /**
   * AC, without a sign.
   *
   * @param figure volts or amps, rms
   */
  record Alternating(Figure figure) implements Shown {}

  /**
   * DC, positive where red is above black, or where current enters by red.
   *
   * @param figure volts or amps
   */
  record Direct(Figure figure) implements Shown {}

  /**
   * AC and DC side by side.
   *
   * @param alternating AC
   * @param direct DC
   */
  record Both(Figure alternating, Figure direct) implements Shown {}

  /**
   * A resistance.
   *
   * @param figure ohms
   * @param steady whether the figure stands still; on a live circuit it jumps and means nothing
   * @param tone whether the meter sounds
   */
  record Ohms(Figure figure, boolean steady, boolean tone) implements Shown {}

  /** A dead display. */
  record Nothing() implements Shown {}

  /**
   * The circuit with this meter has no solution.
   *
   * @param reason why, naming the part
   */
  record Unsolved(SteadyState.Failed reason) implements Shown {}
}
