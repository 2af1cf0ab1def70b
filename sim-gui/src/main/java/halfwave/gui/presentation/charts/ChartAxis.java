package halfwave.gui.presentation.charts;

import halfwave.display.DisplayUnit;
import halfwave.display.QuantityText;
import halfwave.gui.presentation.Wording;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.util.FastMath;

/**
 * An axis of a chart: numbers as they are shown, and where they stand.
 *
 * @param title its title with the unit
 * @param low the number at its beginning, in the unit that is shown; above {@code high} where the
 *     axis runs backwards
 * @param high the number at its end
 * @param decades whether equal ratios stand at equal distances
 * @param marks the numbers beside it
 */
public record ChartAxis(String title, double low, double high, boolean decades, List<Mark> marks) {

  /**
   * A number beside an axis.
   *
   * @param at where, 0 to 1 of the axis
   * @param words the number, or empty for a mark without one
   */
  public record Mark(double at, String words) {}

  /** From here on 2 and 5 would crowd an axis (decades). */
  private static final double MANY_DECADES = 2.5;

  /** What binary fractions leave behind is no step. */
  private static final double ROUNDING = 1e-9;

  /** Takes a copy. */
  public ChartAxis {
    marks = List.copyOf(marks);
  }

  /**
   * An axis of equal differences between these numbers.
   *
   * @param most about so many marks
   */
  static ChartAxis linear(String title, double low, double high, int most, QuantityText numbers) {
    double step = step(Math.abs(high - low), most);
    double least = Math.min(low, high);
    List<Mark> marks = new ArrayList<>();
    long first = (long) Math.ceil(least / step - ROUNDING);
    for (long k = first; k * step <= Math.max(low, high) + ROUNDING * step; k++) {
      marks.add(new Mark((k * step - low) / (high - low), numbers.fixed(k * step, decimals(step))));
    }
    return new ChartAxis(title, low, high, false, marks);
  }

  /** The same with its ends moved out to marks. */
  static ChartAxis rounded(String title, double low, double high, int most, QuantityText numbers) {
    double step = step(high - low, most);
    double from = Math.floor(low / step + ROUNDING) * step;
    double to = Math.ceil(high / step - ROUNDING) * step;
    return linear(title, from, to, most + 2, numbers);
  }

  /** An axis of equal ratios between two numbers above zero. */
  static ChartAxis decades(String title, double low, double high, QuantityText numbers) {
    double all = FastMath.log10(high / low);
    List<Mark> marks = new ArrayList<>();
    for (int power = (int) FastMath.floor(FastMath.log10(low));
        power <= FastMath.log10(high) + ROUNDING;
        power++) {
      for (int digit = 1; digit <= 9; digit++) {
        double value = digit * FastMath.pow(10, power);
        double at = FastMath.log10(value / low) / all;
        if (at < -ROUNDING || at > 1 + ROUNDING) {
          continue;
        }
        boolean said = digit == 1 || (all < MANY_DECADES && (digit == 2 || digit == 5));
        marks.add(new Mark(at, said ? numbers.significant(value, 1) : ""));
      }
    }
    return new ChartAxis(title, low, high, true, marks);
  }

  /** A name with its unit. */
  static String title(String name, DisplayUnit unit, Wording words) {
    return unit.symbol().isEmpty() ? name : words.text("chart.axis", name, unit.symbol());
  }

  /** Where a number stands: 0 to 1 on the axis, beyond that off it. */
  public double place(double shown) {
    return decades
        ? FastMath.log(shown / low) / FastMath.log(high / low)
        : (shown - low) / (high - low);
  }

  /** The number that stands there. */
  public double value(double place) {
    return decades ? low * FastMath.pow(high / low, place) : low + place * (high - low);
  }

  /** Where numbers stand. */
  double[] places(double... shown) {
    double[] at = new double[shown.length];
    for (int k = 0; k < at.length; k++) {
      at[k] = place(shown[k]);
    }
    return at;
  }

  /** A step of 1, 2 or 5 times a power of ten that makes at most so many steps. */
  static double step(double range, int most) {
    double power = FastMath.pow(10, FastMath.floor(FastMath.log10(range / most)));
    double digit = range / most / power;
    return power
        * (digit <= 1 + ROUNDING ? 1 : digit <= 2 + ROUNDING ? 2 : digit <= 5 + ROUNDING ? 5 : 10);
  }

  /** As many decimals as tell such steps apart. */
  static int decimals(double step) {
    return Math.max(0, (int) -FastMath.floor(FastMath.log10(step) + ROUNDING));
  }
}
