package halfwave.validation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Units of the report. Checks hold SI numbers, or bare ones where the unit has no size. */
public enum Unit {
  RATIO("", 1),
  PERCENT("%", 0.01),
  MICROAMPS("µA", 1e-6),
  AMPS_PER_SQUARE_METER("A/m²", 1),
  VOLTS("V", 1),
  ELECTRON_VOLTS("eV", 1),
  OHMS("Ω", 1),
  MEGOHMS("MΩ", 1e6),
  NANOFARADS("nF", 1e-9),
  WATTS("W", 1),
  MICROWATTS("µW", 1e-6),
  MILLIMETERS("mm", 1e-3),
  MICROMETERS("µm", 1e-6),
  DEGREES("°", StrictMath.PI / 180),
  METERS_PER_SECOND("m/s", 1),
  CUBIC_FEET_PER_HOUR("ft³/h", 0.0283168466 / 3600),
  SQUARE_CENTIMETERS_PER_VOLT_SECOND("cm²/Vs", 1e-4),
  RECOMBINATION("m³/s", 1),
  SOURCE_PER_AREA("1/m²s", 1),
  KELVIN("K", 1),
  SECONDS("s", 1),
  MILLISECONDS("s", 1000),
  HOURS("h", 3600),
  MINUTES("min", 1),
  BITS("bit", 1),
  COUNT("", 1);

  private static final int MOST_DIGITS = 5;

  private final String symbol;
  private final double size;

  Unit(String symbol, double size) {
    this.symbol = symbol;
    this.size = size;
  }

  /** The number in SI. */
  public double si(double number) {
    return number * size;
  }

  /** The number with its unit, no finer than the step; a step of zero asks for all digits. */
  public String text(double value, double step) {
    return symbol.isEmpty() ? number(value, step) : number(value, step) + " " + symbol;
  }

  /** The number alone. */
  public String number(double value, double step) {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      return Double.toString(value);
    }
    BigDecimal number = new BigDecimal(value / size);
    if (step > 0) {
      int scale = (int) Math.ceil(-StrictMath.log10(step / size) - 1e-9);
      number = number.setScale(Math.max(scale, 0), RoundingMode.HALF_EVEN);
    }
    number = number.round(new MathContext(MOST_DIGITS)).stripTrailingZeros();
    boolean plain = number.signum() == 0 || magnitude(number) >= -4 && magnitude(number) < 7;
    String text = plain ? number.toPlainString() : scientific(number);
    return text.replace('-', '−');
  }

  private static int magnitude(BigDecimal number) {
    return number.precision() - number.scale() - 1;
  }

  private static String scientific(BigDecimal number) {
    int power = magnitude(number);
    return number.movePointLeft(power).stripTrailingZeros().toPlainString() + "e" + power;
  }
}
