package halfwave.instrument;

import halfwave.message.Quantity;
import halfwave.quantity.Guard;

/**
 * One range of a function: where its last digit stands, and how far it may be wrong.
 *
 * @param largest largest reading
 * @param resolution one step of the last digit
 * @param accuracyRatio part of the reading by which it may be wrong
 * @param accuracyCount further steps of the last digit by which it may be wrong
 */
public record Scale(
    Quantity largest, Quantity resolution, double accuracyRatio, double accuracyCount) {

  /** Checks the domain. */
  public Scale {
    Guard.positive("largest", largest.si());
    Guard.inRange("resolution", resolution.si(), Double.MIN_NORMAL, largest.si());
    Guard.notNegative("accuracyRatio", accuracyRatio);
    Guard.notNegative("accuracyCount", accuracyCount);
    if (largest.dimension() != resolution.dimension()) {
      throw new IllegalArgumentException(
          "resolution = " + resolution + ": of the kind of " + largest);
    }
  }

  /** The accuracy of a data sheet is a limit; most meters stay well inside it [practice]. */
  static final double DEVIATIONS_TO_LIMIT = 3;

  /** The limit of error of a reading, in SI. */
  double limitSi(double si) {
    return accuracyRatio * Math.abs(si) + accuracyCount * resolution.si();
  }

  /** The nearest reading that the last digit allows, in SI. */
  double roundedSi(double si) {
    double rounded = Math.rint(si / resolution.si()) * resolution.si();
    // no minus zero on a display
    return rounded == 0 ? 0 : rounded;
  }
}
