package halfwave.gui.presentation.bench;

import halfwave.bench.Bench;
import halfwave.bench.Change;
import halfwave.bench.Condition;
import halfwave.bench.Parameter;
import halfwave.display.DisplayUnit;
import halfwave.display.QuantityReader;
import halfwave.gui.presentation.Wording;
import halfwave.message.Quantity;
import halfwave.quantity.Dimension;
import halfwave.sequence.Deed;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One number of the bench as a control.
 *
 * @param parameter which
 * @param name its name
 * @param value its value with unit
 * @param place where that stands on its way, 0 to 1
 * @param healthyPlace where the healthy value stands
 * @param healthy the healthy value with unit
 * @param range what it may be
 * @param asHealthy whether it is as it should be
 * @param si its value in SI
 * @param healthySi the healthy value in SI
 * @param scale how values are spread
 */
public record Knob(
    Parameter parameter,
    String name,
    String value,
    double place,
    double healthyPlace,
    String healthy,
    String range,
    boolean asHealthy,
    double si,
    double healthySi,
    KnobScale scale) {

  static Knob of(Parameter parameter, Bench bench, Bench as, Wording words) {
    KnobScale scale =
        KnobScale.of(
            parameter.low(),
            parameter.high(),
            parameter.accepts(Double.POSITIVE_INFINITY),
            parameter.dimension());
    double value = parameter.of(bench);
    double healthy = parameter.of(as.with(Condition.HEALTHY));
    return new Knob(
        parameter,
        words.heading(parameter),
        text(value, parameter.dimension(), words),
        scale.place(value),
        scale.place(healthy),
        text(healthy, parameter.dimension(), words),
        words.text(
            "knob.range",
            text(parameter.low(), parameter.dimension(), words),
            text(
                parameter.accepts(Double.POSITIVE_INFINITY)
                    ? Double.POSITIVE_INFINITY
                    : parameter.high(),
                parameter.dimension(),
                words)),
        Double.compare(value, healthy) == 0,
        value,
        healthy,
        scale);
  }

  private static String text(double si, Dimension dimension, Wording words) {
    return words.sentences().text(new Quantity(si, dimension));
  }

  /** Turns it to a place on its way. */
  public Deed to(double newPlace) {
    return turned(parameter, scale.value(newPlace));
  }

  /** Turns it to its healthy value. */
  public Deed healed() {
    return turned(parameter, healthySi);
  }

  /**
   * Turns it to what was typed, if that can be read. A bare number is in the unit that is shown;
   * where "open" is shown, in that of the healthy value.
   */
  public Optional<Deed> typed(String text, Wording words) {
    double shown = Double.isInfinite(si) ? healthySi : si;
    OptionalDouble read = read(text, parameter.dimension(), shown, words);
    return read.isPresent() && parameter.accepts(read.getAsDouble())
        ? Optional.of(turned(parameter, read.getAsDouble()))
        : Optional.empty();
  }

  /**
   * The same for a field in which something stands: a bare number is in its unit.
   *
   * @param shown what stands there (SI); infinite: it has no unit, and a bare number is in SI
   */
  static OptionalDouble read(String text, Dimension dimension, double shown, Wording words) {
    boolean bare =
        read(text, Dimension.NUMBER, words).isPresent()
            && !text.contains(DisplayUnit.PERCENT.symbol());
    if (!bare || Double.isInfinite(shown)) {
      return read(text, dimension, words);
    }
    DisplayUnit unit = words.sentences().quantities().unit(shown, dimension);
    return read(text + unit.symbol(), dimension, words);
  }

  /**
   * A number as a person types it: with a comma where the language has one, or the word for open.
   */
  public static OptionalDouble read(String text, Dimension dimension, Wording words) {
    String typed = text.strip();
    if (dimension == Dimension.RESISTANCE
        && typed.equalsIgnoreCase(text(Double.POSITIVE_INFINITY, dimension, words))) {
      return OptionalDouble.of(Double.POSITIVE_INFINITY);
    }
    char sign = words.sentences().quantities().fixed(0.5, 1).charAt(1);
    return QuantityReader.si(typed.replace(sign, '.'), dimension);
  }

  private static Deed turned(Parameter parameter, double si) {
    return new Deed.Alter(Change.Turned.to(parameter, si));
  }
}
