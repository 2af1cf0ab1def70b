package halfwave.io;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Reads a JSON file strictly: what is not exactly right is refused with file, field and value. */
public final class JsonFile {

  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          // read, so that it can be refused by the name of its field
          .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
          .enable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
          .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
          // numbers keep their spelling, so that a refusal shows what the file says
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
          .build();

  private JsonFile() {}

  /**
   * Reads the whole file.
   *
   * @param file the file
   * @return its value, from where fields are read one by one
   * @throws BadInputException if there is no such file, or it is not JSON from start to end
   */
  public static JsonValue read(Path file) {
    byte[] bytes;
    try {
      if (Files.isDirectory(file)) {
        throw BadInputException.ofFile(
            file.toString(), Message.of(MessageKey.ALLOWED_FILE_NOT_FOLDER));
      }
      bytes = Files.readAllBytes(file);
    } catch (NoSuchFileException e) {
      throw BadInputException.ofFile(file.toString(), Message.of(MessageKey.ALLOWED_EXISTING_FILE));
    } catch (IOException e) {
      throw BadInputException.ofFile(file.toString(), Message.of(MessageKey.ALLOWED_READABLE_FILE));
    }
    return parse(file.toString(), bytes);
  }

  /**
   * The same for bytes that are already in memory.
   *
   * @param name what messages call the file
   * @param bytes its content
   */
  public static JsonValue parse(String name, byte[] bytes) {
    try (JsonParser parser = MAPPER.createParser(bytes)) {
      return new JsonValue(name, "", tree(name, parser));
    } catch (IOException e) {
      throw BadInputException.ofFile(name, Message.of(MessageKey.ALLOWED_READABLE_FILE));
    }
  }

  private static JsonNode tree(String name, JsonParser parser) throws IOException {
    try {
      JsonNode node = MAPPER.readTree(parser);
      if (node == null || node.isMissingNode()) {
        throw broken(name, parser, MessageKey.ALLOWED_JSON, parser.currentLocation());
      }
      if (parser.nextToken() != null) {
        throw broken(name, parser, MessageKey.ALLOWED_NOTHING_MORE, parser.currentTokenLocation());
      }
      return node;
    } catch (MismatchedInputException e) {
      // a tree has no types to mismatch: the one thing left is a field that stands twice
      throw BadInputException.ofField(
          name,
          field(parser.getParsingContext()),
          Argument.text(shortened(parser.getText())),
          Message.of(MessageKey.ALLOWED_ONCE));
    } catch (JsonProcessingException e) {
      throw broken(name, parser, MessageKey.ALLOWED_JSON, e.getLocation());
    } catch (IOException e) {
      // bytes that are no text
      throw broken(name, parser, MessageKey.ALLOWED_JSON, parser.currentLocation());
    }
  }

  private static BadInputException broken(
      String name, JsonParser parser, MessageKey allowed, @Nullable JsonLocation where) {
    int line = where == null ? 1 : where.getLineNr();
    int column = where == null ? 1 : where.getColumnNr();
    Message message = Message.of(allowed, Argument.count(line), Argument.count(column));
    String field = field(parser.getParsingContext());
    return field.isEmpty()
        ? BadInputException.ofFile(name, message)
        : BadInputException.ofField(
            name, field, Argument.nested(Message.of(MessageKey.VALUE_BROKEN_OFF)), message);
  }

  /** Where the parser stands, in the words of {@link JsonValue}. */
  private static String field(JsonStreamContext context) {
    JsonStreamContext parent = context.getParent();
    String before = parent == null ? "" : field(parent);
    if (context.inArray()) {
      return context.hasCurrentIndex() ? before + "[" + context.getCurrentIndex() + "]" : before;
    }
    String name = context.getCurrentName();
    return name == null ? before : before.isEmpty() ? name : before + "." + name;
  }

  /** A value as a message shows it. */
  static String shortened(String text) {
    return text.length() <= 60 ? text : text.substring(0, 57) + "...";
  }
}
