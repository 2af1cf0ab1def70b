package halfwave.forecast;

import halfwave.quantity.Guard;
import org.apache.commons.math3.util.FastMath;

/**
 * Where a number lies, but for one time in ten.
 *
 * @param lowRatio 5 % are below (1); above zero
 * @param highRatio 5 % are above (1); at least the low end, at most 1000
 */
public record Range(double lowRatio, double highRatio) {

  /** The normal deviate below which 95 % lie. */
  private static final double DEVIATE = 1.6448536269514722;

  private static final double MOST = 1000;

  /** Checks the domain. */
  public Range {
    Guard.inRange("lowRatio", lowRatio, 1 / MOST, MOST);
    Guard.inRange("highRatio", highRatio, lowRatio, MOST);
  }

  /** The number at a normal deviate: log-normal. */
  double at(double normal) {
    double middle = 0.5 * FastMath.log(lowRatio * highRatio);
    double width = 0.5 * FastMath.log(highRatio / lowRatio) / DEVIATE;
    return FastMath.exp(middle + width * normal);
  }
}
