package halfwave.io;

import halfwave.display.Sentences;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.util.Locale;

/**
 * A file that cannot be used as it is. Carries what a person needs to mend it: the file, the field,
 * its value, and what is allowed there.
 */
public final class BadInputException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String file;
  private final String field;
  private final transient Message message;

  private BadInputException(String file, String field, Message message) {
    super(Sentences.in(Locale.ENGLISH).text(message));
    this.file = file;
    this.field = field;
    this.message = message;
  }

  /**
   * A field that cannot be used.
   *
   * @param file the file's name, as the person gave it
   * @param field where in the file, such as {@code [2].circuit.lead.resistanceOhms}
   * @param value what stands there: text, or a message that says why nothing does
   * @param allowed what may stand there
   */
  public static BadInputException ofField(
      String file, String field, Argument value, Message allowed) {
    return new BadInputException(
        file,
        field,
        Message.of(
            MessageKey.BAD_FIELD,
            Argument.text(file),
            Argument.text(field),
            value,
            Argument.nested(allowed)));
  }

  /**
   * A file that cannot be used as a whole.
   *
   * @param file the file's name, as the person gave it
   * @param allowed what is allowed instead
   */
  public static BadInputException ofFile(String file, Message allowed) {
    return new BadInputException(
        file, "", Message.of(MessageKey.BAD_FILE, Argument.text(file), Argument.nested(allowed)));
  }

  /** The file's name, as the person gave it. */
  public String file() {
    return file;
  }

  /** Where in the file; empty for the file as a whole. */
  public String field() {
    return field;
  }

  /** File, field, value and what is allowed, as a message. */
  public Message message() {
    return message;
  }

  /** The same in one line of text. */
  public String line(Sentences sentences) {
    // a file name or a value may hold line ends
    return sentences.text(message).replaceAll("\\p{Cntrl}+", " ");
  }
}
