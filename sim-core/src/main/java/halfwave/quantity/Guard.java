package halfwave.quantity;

import halfwave.quantity.RejectedValueException.Allowed;

/**
 * Argument guards. Each returns its value, or throws {@link RejectedValueException}. All are
 * written positively, so that NaN is refused.
 */
public final class Guard {

  private Guard() {}

  /** Accepts finite numbers above zero. */
  public static double positive(String field, double value) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw rejected(field, value, Allowed.POSITIVE);
    }
    return value;
  }

  /** Accepts finite numbers, zero or above. */
  public static double notNegative(String field, double value) {
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw rejected(field, value, Allowed.NOT_NEGATIVE);
    }
    return value;
  }

  /** Accepts ohms: zero (shorted), any positive number, infinity (open). */
  public static double resistance(String field, double value) {
    if (!(value >= 0)) {
      throw rejected(field, value, Allowed.RESISTANCE);
    }
    return value;
  }

  /** Accepts finite numbers. */
  public static double finite(String field, double value) {
    if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
      throw rejected(field, value, Allowed.FINITE);
    }
    return value;
  }

  /** Accepts numbers from low to high, both included. */
  public static double inRange(String field, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new RejectedValueException(field, Double.toString(value), Allowed.RANGE, low, high);
    }
    return value;
  }

  private static RejectedValueException rejected(String field, double value, Allowed allowed) {
    return new RejectedValueException(
        field, Double.toString(value), allowed, Double.NaN, Double.NaN);
  }
}
