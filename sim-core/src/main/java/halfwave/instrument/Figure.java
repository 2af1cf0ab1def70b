package halfwave.instrument;

import halfwave.message.Quantity;
import halfwave.quantity.Dimension;

/**
 * One figure of a display.
 *
 * <pre>
 * Figure = Value | OverRange
 * </pre>
 */
public sealed interface Figure {

  /**
   * A number.
   *
   * @param quantity what is shown, a whole number of resolutions
   * @param resolution one step of the last digit
   */
  record Value(Quantity quantity, Quantity resolution) implements Figure {}

  /**
   * More than the largest range holds.
   *
   * @param dimension of what
   */
  record OverRange(Dimension dimension) implements Figure {}
}
