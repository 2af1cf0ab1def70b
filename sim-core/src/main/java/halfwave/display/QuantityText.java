package halfwave.display;

import halfwave.quantity.Dimension;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Numbers as text: a true minus sign, the language's decimal sign, a space before the unit, and as
 * many digits as are worth reading.
 */
public final class QuantityText {

  /** The minus sign of typography, as wide as a digit. */
  public static final char MINUS = '−';

  /** Parts thousands where the comma is the decimal sign. */
  private static final char NARROW_SPACE = '\u202f';

  /** Enough to tell readings apart, not so many that they look exact. */
  private static final int USUAL_DIGITS = 3;

  /** Larger numbers, such as ion densities, are written with a power of ten. */
  private static final int MOST_PLAIN_POWER = 6;

  private final char decimalSign;
  private final UnitSystem system;

  private QuantityText(char decimalSign, UnitSystem system) {
    this.decimalSign = decimalSign;
    this.system = system;
  }

  /** Text as that language and unit system have it. */
  public static QuantityText of(Locale locale, UnitSystem system) {
    return new QuantityText(DecimalFormatSymbols.getInstance(locale).getDecimalSeparator(), system);
  }

  /**
   * The quantity with three digits, in the unit that suits its size.
   *
   * @param si the number in SI; finite
   * @param dimension its kind
   */
  public String text(double si, Dimension dimension) {
    return text(si, unit(si, dimension), USUAL_DIGITS);
  }

  /**
   * The quantity in a given unit.
   *
   * @param si the number in SI; finite
   * @param unit the unit to show
   * @param digits how many significant digits; one or more
   */
  public String text(double si, DisplayUnit unit, int digits) {
    String number = significant(unit.fromSi(si), digits);
    return withUnit(unit == DisplayUnit.BTU_PER_HOUR ? grouped(number) : number, unit);
  }

  /** Long numbers of a unit that is never typed: 22,921 is read at once, 22921 is not. */
  private String grouped(String number) {
    int end = number.indexOf(decimalSign);
    StringBuilder text = new StringBuilder(number);
    int first = number.charAt(0) == MINUS ? 1 : 0;
    for (int k = (end < 0 ? number.length() : end) - 3; k > first; k -= 3) {
      text.insert(k, decimalSign == ',' ? NARROW_SPACE : ',');
    }
    return text.toString();
  }

  /**
   * A bare number with so many significant digits. Digits before the decimal sign are never cut; a
   * number too small for the unit fades to zero, since what is left of it is rounding.
   *
   * @param shown the number as it stands in its unit; finite
   * @param digits one or more
   */
  public String significant(double shown, int digits) {
    BigDecimal exact = new BigDecimal(shown);
    BigDecimal rounded = exact.round(new MathContext(digits, RoundingMode.HALF_UP));
    if (rounded.signum() == 0) {
      return "0";
    }
    int power = rounded.precision() - rounded.scale() - 1;
    if (power > MOST_PLAIN_POWER) {
      return fixed(rounded.movePointLeft(power).doubleValue(), digits - 1)
          + " × 10"
          + superscript(power);
    }
    int decimals = Math.max(0, digits - 1 - power);
    return number(exact.setScale(Math.min(decimals, digits + 1), RoundingMode.HALF_UP));
  }

  private static String superscript(int power) {
    return Integer.toString(power)
        .chars()
        .mapToObj(c -> "⁰¹²³⁴⁵⁶⁷⁸⁹".substring(c - '0', c - '0' + 1))
        .collect(Collectors.joining());
  }

  /**
   * The quantity in a given unit with so many decimals, for columns that line up.
   *
   * @param si the number in SI; finite
   * @param unit the unit to show
   * @param decimals zero or more
   */
  public String fixed(double si, DisplayUnit unit, int decimals) {
    return withUnit(fixed(unit.fromSi(si), decimals), unit);
  }

  /**
   * A time to the millisecond, without more decimals than it has; from ten minutes on in whole
   * minutes or hours where nothing is lost by it.
   *
   * @param millis milliseconds
   */
  public String time(long millis) {
    long minutes = millis / 60_000;
    if (minutes >= 10 && millis % 60_000 == 0) {
      boolean hours = minutes >= 120 && minutes % 60 == 0;
      return hours
          ? withUnit(number(BigDecimal.valueOf(minutes / 60)), DisplayUnit.HOUR)
          : withUnit(number(BigDecimal.valueOf(minutes)), DisplayUnit.MINUTE);
    }
    BigDecimal seconds = BigDecimal.valueOf(millis, 3);
    int decimals = Math.max(0, seconds.stripTrailingZeros().scale());
    return withUnit(number(seconds.setScale(decimals)), DisplayUnit.SECOND);
  }

  /**
   * A bare number with so many decimals: what a meter with a fixed point shows.
   *
   * @param shown the number as it stands in its unit; finite
   * @param decimals zero or more
   */
  public String fixed(double shown, int decimals) {
    return number(new BigDecimal(shown).setScale(decimals, RoundingMode.HALF_UP));
  }

  private String number(BigDecimal value) {
    String plain = value.abs().toPlainString().replace('.', decimalSign);
    return value.signum() < 0 ? MINUS + plain : plain;
  }

  private static String withUnit(String number, DisplayUnit unit) {
    // the degree of arc is the only unit that stands close to its number
    boolean close = unit.symbol().isEmpty() || unit == DisplayUnit.DEGREE;
    return close ? number + unit.symbol() : number + ' ' + unit.symbol();
  }

  /** The unit that suits the size of a quantity. */
  public DisplayUnit unit(double si, Dimension dimension) {
    List<DisplayUnit> units = DisplayUnit.usual(dimension, system);
    DisplayUnit best = units.get(0);
    for (DisplayUnit unit : units) {
      // what rounds to one of the larger unit is shown in it: 1 kΩ, never 1000 Ω
      // but 90 s is what the trade calls it, not 1.5 min
      double least = unit == DisplayUnit.MINUTE ? 2 : 0.9995;
      // a hundredth of an inch is still read as one
      least = unit == DisplayUnit.INCH ? 0.00995 : least;
      if (Math.abs(unit.fromSi(si)) >= least) {
        best = unit;
      }
    }
    if (dimension == Dimension.LENGTH && si == 0) {
      return system == UnitSystem.INCH ? DisplayUnit.INCH : DisplayUnit.MILLIMETER;
    }
    // volts and microamps are how the trade speaks, down to what a meter can show
    if (dimension == Dimension.CURRENT && Math.abs(si) < 0.9995e-6) {
      return si == 0 || Math.abs(si) >= 1e-8 ? DisplayUnit.MICROAMP : DisplayUnit.NANOAMP;
    }
    if (dimension == Dimension.VOLTAGE && Math.abs(si) < 0.9995) {
      return si == 0 || Math.abs(si) >= 0.1 ? DisplayUnit.VOLT : DisplayUnit.MILLIVOLT;
    }
    return best;
  }
}
