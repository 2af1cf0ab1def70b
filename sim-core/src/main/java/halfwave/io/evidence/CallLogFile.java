package halfwave.io.evidence;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.board.Ignition;
import halfwave.diagnosis.Entry;
import halfwave.io.BadInputException;
import halfwave.io.JsonFields;
import halfwave.io.JsonFile;
import halfwave.io.Typed;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.nio.file.Path;
import java.util.List;

/**
 * The file of what was done and found on a call, {@code "format": "halfwave-call-log", "version":
 * 1}: its lines in the words of {@link CallLogWords}, in order. Its schema is {@code
 * docs/schemas/call-log.schema.json}.
 */
public final class CallLogFile {

  static final String FORMAT = "halfwave-call-log";
  static final int VERSION = 1;

  private CallLogFile() {}

  /**
   * Reads a file.
   *
   * @param file the file
   * @param ignition of the appliance
   * @throws BadInputException if anything in it is not as the schema says
   */
  public static List<Entry> read(Path file, Ignition ignition) {
    JsonFields f = JsonFile.read(file).file(FORMAT, VERSION, "format", "version", "entries");
    return f.get("entries")
        .filledList(
            v -> CallLogWords.entry(new Typed(v.file(), v.path()), v.text(), ignition),
            Message.of(MessageKey.ALLOWED_LOG_FILLED));
  }

  /** The text of the file. */
  public static String text(List<Entry> entries) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", FORMAT).put("version", VERSION);
    ArrayNode lines = root.putArray("entries");
    entries.forEach(e -> lines.add(CallLogWords.text(e)));
    return root.toPrettyString() + "\n";
  }
}
