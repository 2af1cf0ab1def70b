package halfwave.picture;

import halfwave.display.DisplayUnit;
import halfwave.display.QuantityText;
import halfwave.display.Sentences;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;

/**
 * The words of a drawing in one language.
 *
 * @param sentences language and units
 */
record SheetWords(Sentences sentences) {

  String text(MessageKey key) {
    return sentences.text(Message.of(key));
  }

  String text(Message message) {
    return sentences.text(message);
  }

  String ohms(MessageKey key, double ohms) {
    return text(Message.of(key, Argument.quantity(ohms, Dimension.RESISTANCE)));
  }

  String amps(MessageKey key, double amps) {
    return text(Message.of(key, Argument.quantity(amps, Dimension.CURRENT)));
  }

  String length(MessageKey key, double meters) {
    return text(Message.of(key, Argument.text(length(meters))));
  }

  /** A length as a ruler shows it: tenths of a millimetre, hundredths of an inch. */
  String length(double meters) {
    QuantityText quantities = sentences.quantities();
    DisplayUnit unit =
        quantities.unit(0.01, Dimension.LENGTH) == DisplayUnit.INCH
            ? DisplayUnit.INCH
            : DisplayUnit.MILLIMETER;
    return quantities.fixed(meters, unit, unit == DisplayUnit.INCH ? 2 : 1);
  }
}
