package halfwave.notebook.kernel;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/** A notebook's file: what its cells have shown, without when and for how long they ran. */
final class NotebookFile {

  private static final ObjectMapper JSON =
      new ObjectMapper().enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS);

  private final ObjectNode root;

  private NotebookFile(ObjectNode root) {
    this.root = root;
  }

  static NotebookFile read(Path file) throws IOException {
    return new NotebookFile((ObjectNode) JSON.readTree(file.toFile()));
  }

  /** All cells, in order. */
  List<JsonNode> cells() {
    return StreamSupport.stream(root.get("cells").spliterator(), false).toList();
  }

  /**
   * What a cell has shown, a line each: texts as they are, of pictures their kind and size, of
   * errors all that is said.
   */
  static List<String> shown(JsonNode cell) {
    List<String> lines = new ArrayList<>();
    for (JsonNode output : cell.path("outputs")) {
      switch (output.get("output_type").asText()) {
        case "stream" -> lines.addAll(text(output.get("text")).lines().toList());
        case "error" -> lines.add("error: " + output.get("evalue").asText());
        default -> {
          JsonNode data = output.get("data");
          data.fieldNames()
              .forEachRemaining(
                  type -> {
                    if (type.startsWith("image/")) {
                      lines.add(type);
                    }
                  });
          lines.addAll(text(data.path("text/plain")).lines().toList());
        }
      }
    }
    return lines;
  }

  /** Texts are kept whole or line by line. */
  static String text(JsonNode text) {
    return text.isArray()
        ? StreamSupport.stream(text.spliterator(), false)
            .map(JsonNode::asText)
            .collect(Collectors.joining())
        : text.asText();
  }

  /** Writes the file anew with the outputs of another run of the same cells. */
  void writeWithOutputsOf(NotebookFile run, Path file) throws IOException {
    for (int k = 0; k < cells().size(); k++) {
      if (cells().get(k) instanceof ObjectNode cell && cell.has("outputs")) {
        cell.set("outputs", run.cells().get(k).get("outputs"));
        cell.set("execution_count", run.cells().get(k).get("execution_count"));
        ((ObjectNode) cell.get("metadata")).remove("execution");
      }
    }
    DefaultIndenter step = new DefaultIndenter(" ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter(
            Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                .withObjectEmptySeparator("")
                .withArrayEmptySeparator(""));
    printer.indentObjectsWith(step);
    printer.indentArraysWith(step);
    // a tree keeps the order it was read in; a map is written in the order of its keys
    Object ordered = JSON.treeToValue(root, Object.class);
    Files.writeString(file, JSON.writer(printer).writeValueAsString(ordered) + "\n");
  }
}
