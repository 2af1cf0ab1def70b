package halfwave.forecast;

import halfwave.circuit.SteadyState;

/**
 * What came of a forecast.
 *
 * <pre>
 * Forecasted = Forecast | Unsolved
 * </pre>
 */
public sealed interface Forecasted permits Forecast, Forecasted.Unsolved {

  /**
   * A circuit on the way had no steady state.
   *
   * @param reason why, naming the part
   */
  record Unsolved(SteadyState.Failed reason) implements Forecasted {}
}
