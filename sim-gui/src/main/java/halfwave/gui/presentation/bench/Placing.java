package halfwave.gui.presentation.bench;

import halfwave.circuit.Point;
import halfwave.instrument.HookUp;

/**
 * Where someone wants the leads of the meter.
 *
 * <pre>
 * Placing = At | InFlame
 * </pre>
 */
public sealed interface Placing {

  /**
   * Two places that need no flame to name them.
   *
   * @param hookUp the places
   */
  record At(HookUp hookUp) implements Placing {}

  /**
   * A bare wire in the root of whatever flame there is.
   *
   * @param other where the other lead is
   */
  record InFlame(Point other) implements Placing {}
}
