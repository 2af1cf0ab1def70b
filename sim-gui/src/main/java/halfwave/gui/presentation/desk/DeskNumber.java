package halfwave.gui.presentation.desk;

import halfwave.gui.presentation.Wording;
import java.util.OptionalDouble;

/**
 * A number that an instructor types.
 *
 * @param least smallest that is allowed
 * @param most largest
 * @param whole whether it has no decimals
 */
public record DeskNumber(double least, double most, boolean whole) {

  /** What was typed, with a dot or a comma, if it is allowed. */
  public OptionalDouble read(String typed) {
    String plain = typed.strip().replace(',', '.');
    if (!plain.matches(whole ? "[0-9]{1,15}" : "[0-9]{1,9}(\\.[0-9]{0,6})?")) {
      return OptionalDouble.empty();
    }
    double number = Double.parseDouble(plain);
    return number >= least && number <= most ? OptionalDouble.of(number) : OptionalDouble.empty();
  }

  /** A share as a percentage that was typed: a share in binary is not quite what it was (%). */
  public static double percent(double ratio) {
    return Math.rint(ratio * 1e8) / 1e6;
  }

  /** As it stands in the field. */
  public String text(double number) {
    return number == Math.rint(number)
        ? Long.toString(Math.round(number))
        : Double.toString(number);
  }

  /** The same in a sentence, with the name of the field. */
  public String allowed(String field, Wording words) {
    return words.text(
        whole ? "desk.whole-allowed" : "desk.number-allowed", field, text(least), text(most));
  }

  /** What is allowed. */
  public String range(Wording words) {
    return words.text("desk.range", text(least), text(most));
  }
}
