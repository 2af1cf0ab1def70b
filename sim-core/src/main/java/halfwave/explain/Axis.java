package halfwave.explain;

import halfwave.bench.Parameter;
import halfwave.quantity.Guard;
import halfwave.quantity.RejectedValueException;
import halfwave.quantity.RejectedValueException.Allowed;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The values that one parameter takes in a sweep. A class and no record, because the unit of its
 * ends follows from the parameter and cannot stand in a component's name.
 */
public final class Axis {

  /** Fewest values of an axis. */
  public static final int LEAST_COUNT = 2;

  /** Most values of an axis. */
  public static final int MOST_COUNT = 10_000;

  /** Cuts off what binary fractions leave behind (0.0095, not 0.009500000000000001). */
  private static final MathContext SHOWN = new MathContext(12);

  private final Parameter parameter;
  private final double from;
  private final double to;
  private final int count;
  private final boolean logarithmic;

  private Axis(Parameter parameter, double from, double to, int count, boolean logarithmic) {
    Guard.inRange("from", from, parameter.low(), parameter.high());
    Guard.inRange("to", to, parameter.low(), parameter.high());
    Guard.inRange("count", count, LEAST_COUNT, MOST_COUNT);
    if (logarithmic) {
      Guard.positive("from", from);
      Guard.positive("to", to);
    }
    if (from == to) {
      throw new RejectedValueException(
          "to", Double.toString(to), Allowed.CONSISTENT, Double.NaN, Double.NaN);
    }
    this.parameter = parameter;
    this.from = from;
    this.to = to;
    this.count = count;
    this.logarithmic = logarithmic;
  }

  /**
   * Values at equal distances.
   *
   * @param parameter what changes
   * @param from first value, SI, in the parameter's range
   * @param to last value, SI, in the parameter's range; not the first; it may be below it
   * @param count how many, with both ends; 2 to 10,000
   * @throws RejectedValueException naming {@code from}, {@code to} or {@code count}
   */
  public static Axis linear(Parameter parameter, double from, double to, int count) {
    return new Axis(parameter, from, to, count, false);
  }

  /** Values at equal ratios; both ends above zero, otherwise as {@link #linear}. */
  public static Axis logarithmic(Parameter parameter, double from, double to, int count) {
    return new Axis(parameter, from, to, count, true);
  }

  /** What changes. */
  public Parameter parameter() {
    return parameter;
  }

  /** First value, SI. */
  public double from() {
    return from;
  }

  /** Last value, SI. */
  public double to() {
    return to;
  }

  /** How many values, with both ends. */
  public int count() {
    return count;
  }

  /** Whether the values stand at equal ratios instead of equal distances. */
  public boolean isLogarithmic() {
    return logarithmic;
  }

  /** All values, SI, in order. */
  public List<Double> values() {
    return IntStream.range(0, count).mapToObj(this::value).toList();
  }

  private double value(int k) {
    if (k == 0 || k == count - 1) {
      return k == 0 ? from : to;
    }
    double share = (double) k / (count - 1);
    double value =
        logarithmic
            ? from * StrictMath.pow(to / from, share)
            : ((count - 1 - k) * from + k * to) / (count - 1);
    return new BigDecimal(value).round(SHOWN).doubleValue();
  }
}
