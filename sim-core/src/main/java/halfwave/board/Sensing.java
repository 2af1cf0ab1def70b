package halfwave.board;

import halfwave.quantity.Guard;

/**
 * How a board judges the current in its sense circuit.
 *
 * @param pickUpAmps DC from which there is a flame (A); 0.8 µA [derived from product ranges]
 * @param dropOutAmps DC below which there is none any more (A); at most the pick-up
 * @param warningAmps DC below which the status light warns (A); at least the drop-out
 * @param shortRmsAmps AC without DC from which the circuit counts as shorted (A rms); 20 µA [common
 *     practice, no source]
 * @param filterSeconds time constant of the filter τ (s); 0.1 to 0.3
 * @param responseMillis flame failure response time behind the filter (ms); 0 to 4000
 * @param fadeMillis how long after the valve has shut a signal is still the flame going out (ms)
 * @param checksLine whether the board refuses to start where line and neutral are swapped
 */
public record Sensing(
    double pickUpAmps,
    double dropOutAmps,
    double warningAmps,
    double shortRmsAmps,
    double filterSeconds,
    long responseMillis,
    long fadeMillis,
    boolean checksLine) {

  /** Checks the domain. */
  public Sensing {
    Guard.inRange("pickUpAmps", pickUpAmps, 1e-8, 1e-4);
    Guard.inRange("dropOutAmps", dropOutAmps, 1e-8, pickUpAmps);
    Guard.inRange("warningAmps", warningAmps, dropOutAmps, 1e-3);
    Guard.inRange("shortRmsAmps", shortRmsAmps, pickUpAmps, 1e-2);
    Guard.inRange("filterSeconds", filterSeconds, 1e-3, 10);
    Guard.inRange("responseMillis", responseMillis, 0, 4000);
    Guard.inRange("fadeMillis", fadeMillis, responseMillis, 60_000);
  }
}
