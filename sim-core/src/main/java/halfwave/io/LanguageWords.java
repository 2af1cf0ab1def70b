package halfwave.io;

import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.lesson.Words;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.util.LinkedHashMap;
import java.util.Map;

/** A text in several languages, as it stands in a file. */
public final class LanguageWords {

  private LanguageWords() {}

  /**
   * Reads it.
   *
   * @throws BadInputException if the English text is missing, a text is blank, or a language
   *     unknown
   */
  public static Words of(JsonValue value) {
    JsonFields f = value.anyFields();
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put(Words.FALLBACK, filled(f.get(Words.FALLBACK)));
    for (String tag : f.names()) {
      if (!Words.isTag(tag)) {
        throw f.get(tag).refused(Message.of(MessageKey.ALLOWED_LANGUAGE, Argument.text("es")));
      }
      texts.put(tag, filled(f.get(tag)));
    }
    return new Words(texts);
  }

  /**
   * A text that is not blank.
   *
   * @throws BadInputException if it is blank, or none
   */
  public static String filled(JsonValue value) {
    String text = value.text();
    if (text.isBlank()) {
      throw value.refused(Message.of(MessageKey.ALLOWED_FILLED_TEXT));
    }
    return text;
  }

  /** Writes it into a field of that name. */
  public static void put(ObjectNode node, String name, Words words) {
    ObjectNode object = node.putObject(name);
    words.texts().forEach(object::put);
  }
}
