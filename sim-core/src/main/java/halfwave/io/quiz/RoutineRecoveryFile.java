package halfwave.io.quiz;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.io.BadInputException;
import halfwave.io.JsonFields;
import halfwave.io.JsonFile;
import halfwave.io.bench.RecoveryFile;
import halfwave.io.quiz.RoutineFile.Unfinished;
import java.nio.file.Path;

/**
 * What is kept of an order of work that somebody writes, in case the program does not end as it
 * should: {@code "format": "halfwave-routine-recovery", "version": 1}. As {@link RecoveryFile} it
 * is the program's own.
 *
 * @param draft as it is
 * @param saved as it was last saved, or begun
 */
public record RoutineRecoveryFile(Unfinished draft, Unfinished saved) {

  private static final String FORMAT = "halfwave-routine-recovery";
  private static final int VERSION = 1;

  /**
   * Reads a file.
   *
   * @throws BadInputException if anything in it is not as it was written
   */
  public static RoutineRecoveryFile read(Path file) {
    JsonFields f = JsonFile.read(file).file(FORMAT, VERSION, "format", "version", "draft", "saved");
    return new RoutineRecoveryFile(
        RoutineFile.unfinished(f.get("draft")), RoutineFile.unfinished(f.get("saved")));
  }

  /** The text of the file. */
  public String text() {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", FORMAT).put("version", VERSION);
    root.set("draft", RoutineText.node(draft));
    root.set("saved", RoutineText.node(saved));
    return root.toPrettyString() + "\n";
  }
}
