package halfwave.io.bench;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.bench.Bench;
import halfwave.io.BadInputException;
import halfwave.io.JsonFields;
import halfwave.io.JsonFile;
import halfwave.io.JsonValue;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * What is kept of a bench that somebody works on, in case the program does not end as it should:
 * {@code "format": "halfwave-recovery", "version": 1}. The program writes it for itself and removes
 * it; nobody makes or keeps one, so there is no published schema of it. Its benches are as in
 * {@link BenchFile}.
 *
 * @param bench the bench as it is
 * @param saved the bench as it was last saved, or shipped
 * @param board name of its control board
 * @param file where it was last saved, or null
 */
public record RecoveryFile(Bench bench, Bench saved, String board, @Nullable Path file) {

  private static final String FORMAT = "halfwave-recovery";
  private static final int VERSION = 1;

  /**
   * Reads a file.
   *
   * @throws BadInputException if anything in it is not as it was written
   */
  public static RecoveryFile read(Path file) {
    JsonFields f =
        JsonFile.read(file)
            .file(FORMAT, VERSION, "format", "version", "board", "file", "bench", "saved");
    return new RecoveryFile(
        BenchFile.of(f.get("bench")),
        BenchFile.of(f.get("saved")),
        f.get("board").text(),
        f.orNull("file", JsonValue::place));
  }

  /** The text of the file. */
  public String text() {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", FORMAT)
        .put("version", VERSION)
        .put("board", board)
        .put("file", file == null ? null : file.toString());
    root.set("bench", BenchText.node(bench));
    root.set("saved", BenchText.node(saved));
    return root.toPrettyString() + "\n";
  }
}
