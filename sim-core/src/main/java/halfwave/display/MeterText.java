package halfwave.display;

import halfwave.instrument.Figure;
import halfwave.instrument.Shown;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.message.Quantity;

/** What stands on a meter's display, as text: every figure with its last digit and its unit. */
public final class MeterText {

  private MeterText() {}

  /** The display in the language of the sentences. */
  public static String text(Shown shown, Sentences sentences) {
    return sentences.text(message(shown, sentences.quantities()));
  }

  /** One figure of a display, with its last digit and its unit. */
  public static String text(Figure figure, Sentences sentences) {
    return figure instanceof Figure.Value value
        ? number(value, sentences.quantities())
        : sentences.text(Message.of(MessageKey.METER_OVER_RANGE));
  }

  private static Message message(Shown shown, QuantityText numbers) {
    if (shown instanceof Shown.Alternating alternating) {
      return Message.of(MessageKey.METER_ALTERNATING, argument(alternating.figure(), numbers));
    } else if (shown instanceof Shown.Direct direct) {
      return Message.of(MessageKey.METER_DIRECT, argument(direct.figure(), numbers));
    } else if (shown instanceof Shown.Both both) {
      return Message.of(
          MessageKey.METER_BOTH,
          argument(both.alternating(), numbers),
          argument(both.direct(), numbers));
    } else if (shown instanceof Shown.Ohms ohms) {
      return ohms(ohms, numbers);
    } else if (shown instanceof Shown.Unsolved unsolved) {
      return Message.of(
          MessageKey.ACCOUNT_UNSOLVED,
          Argument.name(unsolved.reason().failure()),
          Argument.name(unsolved.reason().part()));
    }
    return Message.of(MessageKey.METER_NOTHING);
  }

  private static Message ohms(Shown.Ohms ohms, QuantityText numbers) {
    Message figure =
        ohms.figure() instanceof Figure.Value value
            ? Message.of(MessageKey.METER_FIGURE, Argument.text(number(value, numbers)))
            : Message.of(MessageKey.METER_OVER_RANGE);
    Message heard =
        ohms.tone() ? Message.of(MessageKey.METER_TONE, Argument.nested(figure)) : figure;
    return ohms.steady() ? heard : Message.of(MessageKey.METER_UNSTEADY, Argument.nested(heard));
  }

  private static Argument argument(Figure figure, QuantityText numbers) {
    return figure instanceof Figure.Value value
        ? Argument.text(number(value, numbers))
        : Argument.nested(Message.of(MessageKey.METER_OVER_RANGE));
  }

  /** A number with as many decimals as its last digit has in the unit of its range. */
  private static String number(Figure.Value value, QuantityText numbers) {
    DisplayUnit unit = unit(value.resolution());
    // a little less, so that a resolution of 0.1 in floating point needs one decimal
    double step = unit.fromSi(value.resolution().si()) * 1.000001;
    int decimals = 0;
    while (step < 1 && decimals < 6) {
      step *= 10;
      decimals++;
    }
    return numbers.fixed(value.quantity().si(), unit, decimals);
  }

  /** The unit printed beside a range; the last digit says which range it is. */
  private static DisplayUnit unit(Quantity resolution) {
    double step = resolution.si();
    return switch (resolution.dimension()) {
      case CURRENT -> step < 1e-6 ? DisplayUnit.MICROAMP : DisplayUnit.MILLIAMP;
      case RESISTANCE ->
          step < 1 ? DisplayUnit.OHM : step < 1e3 ? DisplayUnit.KILOHM : DisplayUnit.MEGOHM;
      default -> DisplayUnit.VOLT;
    };
  }
}
