package halfwave.message;

import halfwave.quantity.Dimension;

/**
 * What a placeholder of a sentence stands for.
 *
 * <pre>
 * Argument = Quantity | Count | Text | Name | Nested
 * </pre>
 */
public sealed interface Argument
    permits Quantity, Argument.Count, Argument.Text, Argument.Name, Argument.Nested {

  /**
   * A whole number of things.
   *
   * @param count how many
   */
  record Count(long count) implements Argument {}

  /**
   * Text that is the same in every language: a file name, a field, a number as a file spells it.
   *
   * @param text the text
   */
  record Text(String text) implements Argument {}

  /**
   * A thing with a name in each language, kept under the type and name of the constant.
   *
   * @param constant the thing
   */
  record Name(Enum<?> constant) implements Argument {}

  /**
   * A part of a sentence that is a message of its own.
   *
   * @param message the part
   */
  record Nested(Message message) implements Argument {}

  /** A quantity in SI. */
  static Argument quantity(double si, Dimension dimension) {
    return new Quantity(si, dimension);
  }

  /** A whole number of things. */
  static Argument count(long count) {
    return new Count(count);
  }

  /** Text that is the same in every language. */
  static Argument text(String text) {
    return new Text(text);
  }

  /** A thing with a name in each language. */
  static Argument name(Enum<?> constant) {
    return new Name(constant);
  }

  /** A part of a sentence that is a message of its own. */
  static Argument nested(Message message) {
    return new Nested(message);
  }
}
