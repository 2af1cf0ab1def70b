package halfwave.io.bench;

import halfwave.bench.Change;
import halfwave.bench.Disorder;
import halfwave.bench.Intermittent;
import halfwave.bench.Parameter;
import halfwave.bench.Trigger;
import halfwave.display.QuantityReader;
import halfwave.io.JsonValue;
import halfwave.io.Typed;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import halfwave.quantity.RejectedValueException;
import halfwave.sequence.Deed;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A change of a bench in words.
 *
 * <pre>
 * CHANGE = PARAMETER=VALUE | DISORDER | carry-over=TIME | carry-over=never
 * FAULT  = CHANGE | TRIGGER:CHANGE
 * </pre>
 */
public final class ChangeWords {

  /** The word for the time from burner to burner. */
  static final String CARRY_OVER = "carry-over";

  private static final String EXAMPLES =
      "rod-fouled (see faults), connector=open, igniter-broken, carry-over=never";

  private ChangeWords() {}

  /** A fault that is there from the start, or one that lurks. */
  public static Deed fault(Typed where, String text) {
    int colon = text.indexOf(':');
    if (colon < 0) {
      return new Deed.Alter(change(where, text));
    }
    Trigger trigger = oneOf(where, Trigger.class, text.substring(0, colon));
    Typed after = where.then(JsonValue.spelling(trigger));
    return new Deed.Lurk(new Intermittent(trigger, change(after, text.substring(colon + 1))));
  }

  public static Change change(Typed where, String text) {
    boolean known =
        text.contains("=")
            || Stream.of(Disorder.values()).map(JsonValue::spelling).anyMatch(text::equals);
    if (!known) {
      throw where.refused(text, Message.of(MessageKey.ALLOWED_CHANGE, Argument.text(EXAMPLES)));
    }
    int equals = text.indexOf('=');
    if (equals < 0) {
      return new Change.Upset(oneOf(where, Disorder.class, text), true);
    }
    return text.substring(0, equals).equals(CARRY_OVER)
        ? carriedOver(where.then(CARRY_OVER), text.substring(equals + 1))
        : turned(where, text);
  }

  /** {@code PARAMETER=VALUE}. */
  public static Change turned(Typed where, String text) {
    int equals = text.indexOf('=');
    if (equals < 0) {
      throw where.refused(
          text, Message.of(MessageKey.ALLOWED_CHANGE, Argument.text("connector=open")));
    }
    Parameter parameter = oneOf(where, Parameter.class, text.substring(0, equals));
    String value = text.substring(equals + 1);
    Typed at = where.then(parameter.id());
    double si =
        parameter.dimension() == Dimension.RESISTANCE && value.equals(JsonValue.OPEN)
            ? Double.POSITIVE_INFINITY
            : QuantityReader.si(value, parameter.dimension()).orElse(Double.NaN);
    if (!parameter.accepts(si)) {
      throw at.refused(value, allowed(parameter));
    }
    return Change.Turned.to(parameter, si);
  }

  /** What a parameter may be set to. */
  static Message allowed(Parameter parameter) {
    return Message.of(
        parameter.accepts(Double.POSITIVE_INFINITY)
            ? MessageKey.ALLOWED_RANGE_OR_OPEN
            : MessageKey.ALLOWED_RANGE,
        Argument.quantity(parameter.low(), parameter.dimension()),
        Argument.quantity(parameter.high(), parameter.dimension()));
  }

  /** {@code TIME} or {@code never}. */
  public static Change carriedOver(Typed where, String text) {
    OptionalDouble seconds =
        text.equals(JsonValue.NEVER)
            ? OptionalDouble.of(Double.POSITIVE_INFINITY)
            : QuantityReader.si(text, Dimension.TIME);
    Message allowed = Message.of(MessageKey.ALLOWED_CARRY_OVER);
    double s = seconds.orElseThrow(() -> where.refused(text, allowed));
    try {
      return new Change.CarriedOver(s);
    } catch (RejectedValueException e) {
      throw where.refused(text, allowed);
    }
  }

  /** The constant that a word spells. */
  public static <E extends Enum<E>> E oneOf(Typed where, Class<E> type, String word) {
    return Stream.of(type.getEnumConstants())
        .filter(constant -> JsonValue.spelling(constant).equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                where.refused(
                    word, Message.of(MessageKey.ALLOWED_ONE_OF, Argument.text(words(type)))));
  }

  private static String words(Class<? extends Enum<?>> type) {
    return Stream.of(type.getEnumConstants())
        .map(JsonValue::spelling)
        .collect(Collectors.joining(", "));
  }
}
