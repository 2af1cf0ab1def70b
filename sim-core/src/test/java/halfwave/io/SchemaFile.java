package halfwave.io;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A published schema, and ways to spoil a file that follows it. */
public final class SchemaFile {

  public static final ObjectMapper MAPPER = new ObjectMapper();

  private final Path file;

  public SchemaFile(String name) {
    file = Path.of("..", "docs", "schemas", name);
  }

  public List<Error> errors(String text) throws IOException {
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(file), InputFormat.JSON);
    return schema.validate(MAPPER.readTree(text));
  }

  /** The schema itself. */
  public JsonNode root() throws IOException {
    return MAPPER.readTree(Files.readString(file));
  }

  /** Every field that the schema describes anywhere. */
  public List<JsonNode> fields() throws IOException {
    List<JsonNode> fields = new ArrayList<>();
    JsonNode schema = root();
    collect(schema, schema, fields);
    return fields;
  }

  private static void collect(JsonNode schema, JsonNode node, List<JsonNode> fields) {
    for (JsonNode field : node.path("properties")) {
      fields.add(
          field.has("description") ? field : schema.at(field.get("$ref").textValue().substring(1)));
    }
    node.forEach(inner -> collect(schema, inner, fields));
  }

  public static JsonValue value(String text) {
    return JsonFile.parse("f.json", text.getBytes(StandardCharsets.UTF_8));
  }

  /** The text with another value at that pointer. */
  public static String spoiled(String text, String pointer, String value) throws IOException {
    JsonNode root = MAPPER.readTree(text);
    int cut = pointer.lastIndexOf('/');
    ((ObjectNode) root.at(pointer.substring(0, cut)))
        .set(pointer.substring(cut + 1), MAPPER.readTree(value));
    return root.toString();
  }

  /** The text without each of its fields, one at a time, by the pointer of what is missing. */
  public static List<String> bereft(String text) throws IOException {
    List<String> all = new ArrayList<>();
    objects(text, "", MAPPER.readTree(text), all);
    return all;
  }

  private static void objects(String text, String pointer, JsonNode node, List<String> all)
      throws IOException {
    if (!node.isObject()) {
      return;
    }
    List<String> names = new ArrayList<>();
    node.fieldNames().forEachRemaining(names::add);
    for (String name : names) {
      JsonNode root = MAPPER.readTree(text);
      ((ObjectNode) root.at(pointer)).remove(name);
      all.add(root.toString());
      objects(text, pointer + "/" + name, node.get(name), all);
    }
  }
}
