package halfwave.flame;

import org.apache.commons.math3.util.FastMath;

/**
 * The voltage of a cylindrical sheath whose edge stands at a fixed multiple of the rod's radius,
 * prepared so that it costs eight square roots.
 *
 * <p>With {@code r = r_s/cosh t} the integral of {@link FlowingSourceSheath} becomes {@code V =
 * r_s·∫ from 0 to arccosh(r_s/a) of tanh²t·√(A·r_s²·tanh²t + B) dt}: smooth, so eight
 * Gauss–Legendre points give six digits.
 */
final class SheathShape {

  /** Abscissas and weights of the eight-point rule; Abramowitz and Stegun, table 25.4. */
  private static final double[] NODE = {
    0.1834346424956498, 0.5255324099163290, 0.7966664774136267, 0.9602898564975363
  };

  private static final double[] WEIGHT = {
    0.3626837833783620, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763
  };

  private final double[] tanhSquared = new double[8];
  private final double[] weight = new double[8];

  /**
   * Prepares a shape.
   *
   * @param ratio r_s/a (1); above one
   */
  SheathShape(double ratio) {
    double half = 0.5 * FastMath.log(ratio + Math.sqrt((ratio - 1) * (ratio + 1)));
    for (int k = 0; k < 4; k++) {
      for (int side = 0; side < 2; side++) {
        double t = half * (side == 0 ? 1 - NODE[k] : 1 + NODE[k]);
        double tanh = FastMath.tanh(t);
        tanhSquared[2 * k + side] = tanh * tanh;
        weight[2 * k + side] = half * WEIGHT[k] * tanh * tanh;
      }
    }
  }

  /** Voltage for A (V²/m⁴), B (V²/m²) and r_s (m). */
  double volts(double capitalA, double capitalB, double rs) {
    double a = capitalA * rs * rs;
    double sum = 0;
    for (int k = 0; k < 8; k++) {
      sum += weight[k] * Math.sqrt(a * tanhSquared[k] + capitalB);
    }
    return rs * sum;
  }
}
