package halfwave.picture.bench;

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
    return text(Message.of(key, plain(ohms, Dimension.RESISTANCE)));
  }

  String amps(MessageKey key, double amps) {
    return text(Message.of(key, current(amps)));
  }

  /** A quantity without the zeros that say nothing at its end. */
  Argument plain(double si, Dimension dimension) {
    return Argument.text(
        sentences
            .text(Argument.quantity(si, dimension))
            .replaceFirst("([.,]\\d*?)0+(?=\\s|$)", "$1")
            .replaceFirst("[.,](?=\\s|$)", ""));
  }

  /** A flame current as a meter shows it: tenths of a microampere, hundredths below one. */
  Argument current(double amps) {
    QuantityText quantities = sentences.quantities();
    boolean small = amps < 0.995e-6;
    return Argument.text(quantities.fixed(amps, DisplayUnit.MICROAMP, small ? 2 : 1));
  }

  String length(MessageKey key, double meters) {
    return text(Message.of(key, Argument.text(length(meters))));
  }

  /** A length as a ruler shows it: tenths of a millimetre, hundredths of an inch. */
  String length(double meters) {
    boolean inches = inches(sentences);
    return sentences
        .quantities()
        .fixed(meters, inches ? DisplayUnit.INCH : DisplayUnit.MILLIMETER, inches ? 2 : 1);
  }

  /** A round length, without decimals that are nought. */
  String ruler(double meters) {
    DisplayUnit unit = inches(sentences) ? DisplayUnit.INCH : DisplayUnit.MILLIMETER;
    return sentences.quantities().fixed(meters, unit, unit.fromSi(meters) < 0.99 ? 1 : 0);
  }

  /** Whether lengths are in inches. */
  static boolean inches(Sentences sentences) {
    return sentences.quantities().unit(0.01, Dimension.LENGTH) == DisplayUnit.INCH;
  }
}
