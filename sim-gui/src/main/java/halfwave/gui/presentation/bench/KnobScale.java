package halfwave.gui.presentation.bench;

import halfwave.quantity.Dimension;
import org.apache.commons.math3.util.FastMath;

/**
 * How the values of a knob are spread over its way, 0 to 1. What can be disconnected has zero at
 * one end and an open circuit at the other, and decades between.
 *
 * @param low smallest value
 * @param high largest value, or infinity
 * @param spread how
 */
public record KnobScale(double low, double high, Spread spread) {

  /** How values are spread. */
  public enum Spread {
    /** Equal differences. */
    LINEAR,
    /** Equal ratios. */
    DECADES,
    /** Zero, then equal ratios. */
    ZERO_AND_DECADES,
    /** Zero, then equal ratios, then infinity. */
    ZERO_DECADES_OPEN
  }

  /**
   * Where decades begin that zero lies below of (Ω, or the least worth a step of anything else).
   */
  private static final double LEAST_OHMS = 1;

  private static final double MOST_OHMS = 1e10;

  /** Share of the way that the ends take which no decade reaches. */
  private static final double END = 0.04;

  /**
   * The scale of a range.
   *
   * @param low smallest value
   * @param high largest value
   * @param open whether it may also be infinite
   * @param dimension of what
   */
  public static KnobScale of(double low, double high, boolean open, Dimension dimension) {
    boolean wide = low > 0 && high / low > 30;
    if (wide && high < Double.POSITIVE_INFINITY) {
      return new KnobScale(low, high, Spread.DECADES);
    }
    if (dimension == Dimension.RESISTANCE && open) {
      return new KnobScale(low, Double.POSITIVE_INFINITY, Spread.ZERO_DECADES_OPEN);
    }
    boolean decades =
        low == 0 && (dimension == Dimension.RESISTANCE || dimension == Dimension.CAPACITANCE);
    boolean film = low == 0 && dimension == Dimension.LENGTH && high <= 1e-3;
    return new KnobScale(low, high, decades || film ? Spread.ZERO_AND_DECADES : Spread.LINEAR);
  }

  private double least() {
    if (low > 0) {
      return low;
    }
    return spread == Spread.ZERO_DECADES_OPEN ? LEAST_OHMS : high / 1e5;
  }

  /** What is nearly open from its beginning still has some decades before it is. */
  private double most() {
    return high == Double.POSITIVE_INFINITY ? Math.max(MOST_OHMS, 100 * low) : high;
  }

  /** Where a value stands, 0 to 1. */
  public double place(double value) {
    if (value <= low) {
      return 0;
    }
    if (value >= high) {
      return 1;
    }
    if (spread == Spread.LINEAR) {
      return within((value - low) / (high - low));
    }
    double from = spread == Spread.DECADES ? 0 : END;
    double to = spread == Spread.ZERO_DECADES_OPEN ? 1 - END : 1;
    double share = FastMath.log(value / least()) / FastMath.log(most() / least());
    return within(from + within(share) * (to - from));
  }

  /** The value that stands there. */
  public double value(double place) {
    double p = within(place);
    double from = spread == Spread.DECADES || spread == Spread.LINEAR ? 0 : END;
    double to = spread == Spread.ZERO_DECADES_OPEN ? 1 - END : 1;
    // exactly the ends: a hair beyond them no bench takes the number
    if (p == 0 || p < from) {
      return low;
    }
    if (p == 1 || p > to) {
      return high;
    }
    if (spread == Spread.LINEAR) {
      return low + p * (high - low);
    }
    double share = (p - from) / (to - from);
    double value = rounded(least() * FastMath.pow(most() / least(), share));
    return Math.max(low, Math.min(high, value));
  }

  /** Three digits are all that a hand can mean. */
  private static double rounded(double value) {
    double decade = FastMath.pow(10, FastMath.floor(FastMath.log10(value)) - 2);
    return FastMath.rint(value / decade) * decade;
  }

  private static double within(double share) {
    return Math.max(0, Math.min(1, share));
  }
}
