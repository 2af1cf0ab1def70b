package halfwave.validation;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.StringJoiner;

/** The lines of the report as data, one to a line of the file, so that a change can be read. */
final class RowFile {

  static final Path DOCUMENTS = Path.of("..", "docs");
  static final Path FOLDER = DOCUMENTS.resolve("validation");
  private static final Path FILE = FOLDER.resolve("checks.json");
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private RowFile() {}

  static List<Row> read() {
    try {
      return Files.exists(FILE) ? List.of(MAPPER.readValue(FILE.toFile(), Row[].class)) : List.of();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<Row> of(String test) {
    return read().stream().filter(r -> r.test().equals(test)).toList();
  }

  static void write(List<Row> rows) throws IOException {
    StringJoiner lines = new StringJoiner(",\n", "[\n", "\n]\n");
    for (Row row : rows) {
      lines.add(MAPPER.writeValueAsString(row));
    }
    Files.createDirectories(FOLDER);
    Files.writeString(FILE, lines.toString());
  }
}
