package halfwave.flame;

import java.util.function.DoubleUnaryOperator;

/** Finds the edge of a cylindrical sheath from the voltage it holds. */
final class SheathEdge {

  private SheathEdge() {}

  /**
   * Sheath radius r_s at which a law's voltage is the one asked for. Bisection on ln((r_s − a)/a),
   * which the voltage follows smoothly over many decades.
   *
   * @param voltsAt rising voltage of a sheath of radius r_s (m to V)
   * @param radius a (m)
   * @param volts voltage to meet (V); zero or above
   * @return r_s (m), not below a
   */
  static double radiusMeters(DoubleUnaryOperator voltsAt, double radius, double volts) {
    if (volts == 0) {
      return radius;
    }
    double low = 0;
    double high = radius;
    while (voltsAt.applyAsDouble(radius + high) < volts && high < 1e9 * radius) {
      low = high;
      high *= 4;
    }
    if (low == 0) {
      low = high;
      while (voltsAt.applyAsDouble(radius + low) > volts && low > 1e-12 * radius) {
        low /= 4;
      }
    }
    for (int k = 0; k < 60; k++) {
      double middle = Math.sqrt(low * high);
      if (voltsAt.applyAsDouble(radius + middle) < volts) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return radius + Math.sqrt(low * high);
  }
}
