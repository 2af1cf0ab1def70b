package halfwave.matching;

import halfwave.message.Quantity;
import halfwave.quantity.Guard;

/**
 * A reading that was taken.
 *
 * @param sight which
 * @param value what the meter showed
 */
public record TakenReading(Sight sight, Quantity value) {

  /** Checks that a meter can show that. */
  public TakenReading {
    ReadingKind kind = sight.kind();
    if (value.dimension() != kind.dimension()) {
      throw new IllegalArgumentException("value = " + value + ": of " + kind.dimension());
    }
    Guard.inRange("value", value.si(), kind.leastSi(), kind.mostSi());
  }

  /** Makes one of a number in SI. */
  public static TakenReading of(Sight sight, double si) {
    return new TakenReading(sight, new Quantity(si, sight.kind().dimension()));
  }
}
