package halfwave.io;

import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;

/**
 * Where a person typed something, for what a refusal has to name.
 *
 * @param command the command, or the file
 * @param place the option with what was understood so far, such as {@code --act 45s set}
 */
public record Typed(String command, String place) {

  /** The place one word further. */
  public Typed then(String word) {
    return new Typed(command, place + " " + word);
  }

  /** The refusal of what stands there. */
  public BadInputException refused(String value, Message allowed) {
    Argument shown =
        value.isEmpty()
            ? Argument.nested(Message.of(MessageKey.VALUE_MISSING))
            : Argument.text(JsonFile.shortened(value));
    return BadInputException.ofField(command, place, shown, allowed);
  }
}
