package halfwave.display;

import halfwave.quantity.Dimension;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Numbers as a person types them in a command, with a dot as decimal sign: bare in SI, with a unit
 * ({@code 5mm}, {@code 2.2MΩ}, {@code 900°C}), or with the prefix alone ({@code 2.2M}).
 */
public final class QuantityReader {

  private static final Pattern TYPED =
      Pattern.compile("([+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?)\\s*(\\D*|\\D+3)");

  /** Cuts off what the conversion of decimal fractions leaves behind. */
  private static final MathContext TYPED_DIGITS = new MathContext(15);

  /** What a keyboard has instead of a sign; micro and ohm each have two code points. */
  private static final Map<String, String> SPELLINGS =
      Map.of("\u00b5", "u", "\u03bc", "u", "\u03a9", "ohm", "\u2126", "ohm", "°", "deg", "³", "3");

  private QuantityReader() {}

  /**
   * The number in SI.
   *
   * @param typed what was typed
   * @param dimension its kind
   * @return nothing where it is no number, or the unit is none of that kind
   */
  public static OptionalDouble si(String typed, Dimension dimension) {
    Matcher matcher = TYPED.matcher(typed.strip().replace(QuantityText.MINUS, '-'));
    if (!matcher.matches()) {
      return OptionalDouble.empty();
    }
    double number = Double.parseDouble(matcher.group(1));
    String unit = plain(matcher.group(2).strip());
    if (unit.isEmpty() || (unit.equals("K") && dimension == Dimension.TEMPERATURE)) {
      return finite(number);
    }
    return Stream.of(DisplayUnit.values())
        .filter(u -> kind(u, dimension) && spellings(u).contains(unit))
        .findFirst()
        .map(u -> finite(rounded(u.toSi(number))))
        .orElse(OptionalDouble.empty());
  }

  /** A bare number may be typed in per cent. */
  private static boolean kind(DisplayUnit unit, Dimension dimension) {
    return unit.dimension() == dimension
        || (unit == DisplayUnit.PERCENT && dimension == Dimension.NUMBER);
  }

  private static List<String> spellings(DisplayUnit unit) {
    String whole = plain(unit.symbol());
    boolean prefixed =
        whole.length() > 1
            && (unit.dimension() == Dimension.RESISTANCE
                || unit.dimension() == Dimension.CAPACITANCE)
            && !whole.equals("ohm");
    if (unit.dimension() == Dimension.TEMPERATURE) {
      return List.of(whole, whole.substring("deg".length()));
    }
    // m alone would be a meter, so a prefix stands alone only where no unit is spelt like it
    return prefixed ? List.of(whole, whole.substring(0, 1)) : List.of(whole);
  }

  private static String plain(String text) {
    String plain = text;
    for (Map.Entry<String, String> e : SPELLINGS.entrySet()) {
      plain = plain.replace(e.getKey(), e.getValue());
    }
    return plain;
  }

  private static double rounded(double si) {
    return Double.isInfinite(si) ? si : new BigDecimal(si).round(TYPED_DIGITS).doubleValue();
  }

  private static OptionalDouble finite(double si) {
    return Math.abs(si) < Double.POSITIVE_INFINITY ? OptionalDouble.of(si) : OptionalDouble.empty();
  }
}
