package halfwave.io.lesson;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.io.BadInputException;
import halfwave.io.JsonFields;
import halfwave.io.JsonFile;
import halfwave.io.JsonValue;
import halfwave.io.bench.RecoveryFile;
import halfwave.lesson.Draft;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * What is kept of a demonstration that somebody makes, in case the program does not end as it
 * should: {@code "format": "halfwave-draft-recovery", "version": 1}. As {@link RecoveryFile} it is
 * the program's own. Its demonstrations are as in {@link DemonstrationFile}, but acts that cannot
 * be done where they stand are kept too: their maker was about to mend them.
 *
 * @param draft the draft as it is
 * @param saved as it was last saved, or begun
 * @param file where it was last saved, or null
 */
public record DraftRecoveryFile(Draft draft, Draft saved, @Nullable Path file) {

  private static final String FORMAT = "halfwave-draft-recovery";
  private static final int VERSION = 1;

  /**
   * Reads a file.
   *
   * @throws BadInputException if anything in it is not as it was written
   */
  public static DraftRecoveryFile read(Path file) {
    JsonFields f =
        JsonFile.read(file).file(FORMAT, VERSION, "format", "version", "file", "draft", "saved");
    return new DraftRecoveryFile(
        Draft.of(DemonstrationFile.unplayed(f.get("draft"))),
        Draft.of(DemonstrationFile.unplayed(f.get("saved"))),
        f.orNull("file", JsonValue::place));
  }

  /** The text of the file. */
  public String text() {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", FORMAT)
        .put("version", VERSION)
        .put("file", file == null ? null : file.toString());
    root.set("draft", DemonstrationText.node(draft.demonstration()));
    root.set("saved", DemonstrationText.node(saved.demonstration()));
    return root.toPrettyString() + "\n";
  }
}
