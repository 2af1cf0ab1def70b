package halfwave.message;

import java.util.List;

/**
 * What the core says: a key and typed arguments. The sentence is made by {@code halfwave.display}.
 *
 * @param key which sentence
 * @param arguments what its placeholders stand for, in order
 */
public record Message(MessageKey key, List<Argument> arguments) {

  /** Takes a copy. */
  public Message {
    arguments = List.copyOf(arguments);
  }

  /** Makes a message. */
  public static Message of(MessageKey key, Argument... arguments) {
    return new Message(key, List.of(arguments));
  }
}
