package halfwave.io.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import halfwave.bench.Bench;
import halfwave.bench.ShippedBenches;
import halfwave.bench.Trigger;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import halfwave.io.AtomicFile;
import halfwave.io.BadInputException;
import halfwave.io.JsonFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bench files come back as they went out; reader and schema refuse the same things. */
class BenchFileContractTest {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private static final Path SCHEMA = Path.of("..", "docs", "schemas", "bench.schema.json");

  private static final String TEXT = BenchText.of(ShippedBenches.standard());

  @TempDir Path folder;

  private static List<Error> errors(String text) throws IOException {
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(SCHEMA), InputFormat.JSON);
    return schema.validate(MAPPER.readTree(text));
  }

  private static Bench read(String text) {
    return BenchFile.of(JsonFile.parse("b.json", text.getBytes(StandardCharsets.UTF_8)));
  }

  static Stream<Bench> shipped() {
    return ShippedBenches.all().stream();
  }

  /** Faulty benches too, those with what comes and goes included. */
  @ParameterizedTest
  @EnumSource(FaultKind.class)
  void faultyBenchesComeBackEqualAndAreValid(FaultKind kind) throws IOException {
    Fault fault = Fault.typical(kind);
    for (Fault form : List.of(fault, fault.during(Trigger.VIBRATION))) {
      Bench bench = form.on(ShippedBenches.standard());
      String text = BenchText.of(bench);

      assertThat(errors(text)).isEmpty();
      assertThat(read(text)).isEqualTo(bench);
    }
  }

  @ParameterizedTest
  @MethodSource("shipped")
  void shippedBenchesComeBackEqualAndAreValid(Bench bench) throws IOException {
    Path file = folder.resolve("bench.json");

    AtomicFile.write(file, BenchText.of(bench));

    assertThat(BenchFile.read(file)).isEqualTo(bench);
    assertThat(errors(BenchText.of(bench))).isEmpty();
  }

  @Test
  void aWornBenchComesBackEqualAndIsValid() throws IOException {
    Bench standard = ShippedBenches.standard();
    Bench worn =
        standard.with(
            standard
                .condition()
                .withConnector(Double.POSITIVE_INFINITY)
                .withBurnerScale(1.234567890123e6, 3e-11)
                .withLeakage(2e6)
                .withGroundExtra(Double.POSITIVE_INFINITY));

    assertThat(read(BenchText.of(worn))).isEqualTo(worn);
    assertThat(errors(BenchText.of(worn))).isEmpty();
  }

  /** Field by its JSON pointer, what stands there instead, and the place that the refusal names. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/name|7|name",
        "/name|\"Bad Name\"|name",
        "/format|\"another\"|format",
        "/version|2|version",
        "/design/ignition|\"match\"|design.ignition",
        "/design/manifoldPascals|\"high\"|design.manifoldPascals",
        "/design/groundOhms|-1|design.groundOhms",
        "/design/siliconKilogramsPerCubicMeter|1|design.siliconKilogramsPerCubicMeter",
        "/design/burner/portRadiusMeters|0|design.burner.portRadiusMeters",
        "/design/source/resistanceOhms|-5|design.source.resistanceOhms",
        "/design/source/frequencyHz|0|design.source.frequencyHz",
        "/design/lead|null|design.lead",
        "/design/rod/path|[]|design.rod.path",
        "/design/rod/radiusMeters|-0.001|design.rod.radiusMeters",
        "/condition/connectorOhms|-1|condition.connectorOhms",
        "/condition/connectorOhms|\"shut\"|condition.connectorOhms",
        "/condition/airRatio|3|condition.airRatio",
        "/condition/rodPosition/upMeters|1|condition.rodPosition.upMeters",
        "/condition/rodCoat|[]|condition.rodCoat",
        "/condition/surprise|1|condition.surprise",
        "/surprise|1|surprise"
      })
  void whatIsWrongIsRefusedByReaderAndSchema(String pointer, String value, String place)
      throws IOException {
    ObjectNode root = (ObjectNode) MAPPER.readTree(TEXT);
    int cut = pointer.lastIndexOf('/');
    ((ObjectNode) root.at(pointer.substring(0, cut)))
        .set(pointer.substring(cut + 1), MAPPER.readTree(value));
    String wrong = root.toString();

    assertThat(errors(wrong)).isNotEmpty();
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> read(wrong))
        .satisfies(e -> assertThat(e.field()).isEqualTo(place))
        .withMessageContaining("b.json");
  }

  /** Taken away one by one, each field is missed by both. */
  @Test
  void everyFieldIsRequired() throws IOException {
    List<String> objects = new ArrayList<>();
    objectsOf("", MAPPER.readTree(TEXT), objects);
    assertThat(objects).hasSizeGreaterThan(8);
    for (String pointer : objects) {
      for (String name : names(MAPPER.readTree(TEXT).at(pointer))) {
        JsonNode root = MAPPER.readTree(TEXT);
        ((ObjectNode) root.at(pointer)).remove(name);
        assertThat(errors(root.toString())).as(pointer + "/" + name).isNotEmpty();
        assertThatExceptionOfType(BadInputException.class)
            .as(pointer + "/" + name)
            .isThrownBy(() -> read(root.toString()));
      }
    }
  }

  private static void objectsOf(String pointer, JsonNode node, List<String> found) {
    if (node.isObject()) {
      found.add(pointer);
      names(node).forEach(name -> objectsOf(pointer + "/" + name, node.get(name), found));
    }
  }

  private static List<String> names(JsonNode node) {
    List<String> names = new ArrayList<>();
    node.fieldNames().forEachRemaining(names::add);
    return names;
  }

  /** Every field says what it is, a number also its unit. */
  @Test
  void schemaDescribesEveryField() throws IOException {
    JsonNode schema = MAPPER.readTree(Files.readString(SCHEMA));
    List<JsonNode> fields = new ArrayList<>();
    schema.findValues("properties").forEach(group -> group.forEach(fields::add));
    assertThat(fields).hasSizeGreaterThan(50);
    for (JsonNode field : fields) {
      JsonNode told =
          field.has("description") ? field : schema.at(field.get("$ref").textValue().substring(1));
      assertThat(told.path("description").asText()).as(field.toString()).isNotBlank();
      if (field.path("type").asText().equals("number")) {
        assertThat(told.get("description").textValue()).matches(".*\\([A-Za-z0-9/ ]+\\).*");
      }
    }
  }

  /** What only the reader can see. */
  @Test
  void rodInTheTubeIsRefusedByTheReader() throws IOException {
    ObjectNode root = (ObjectNode) MAPPER.readTree(TEXT);
    ((ObjectNode) root.at("/condition/rodPosition")).put("alongMeters", -0.03);

    assertThat(errors(root.toString())).isEmpty();
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> read(root.toString()))
        .withMessageContaining("metal of the burner");
  }

  @ParameterizedTest
  @ValueSource(strings = {"NaN", "Infinity", "-Infinity", "1e999"})
  void whatIsNoNumberIsRefused(String number) {
    String wrong =
        TEXT.replaceFirst("\"connectorOhms\" : [0-9.]+", "\"connectorOhms\" : " + number);

    assertThat(wrong).isNotEqualTo(TEXT);
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> read(wrong))
        .satisfies(e -> assertThat(e.field()).isEqualTo("condition.connectorOhms"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"[]", "{}", "7", "null", "\"bench\"", ""})
  void othersThanBenchesAreRefused(String text) {
    assertThatExceptionOfType(BadInputException.class).isThrownBy(() -> read(text));
  }

  /** A file may break off anywhere. */
  @Test
  void truncatedFilesAreRefused() {
    String whole = TEXT.stripTrailing();
    for (int length = 0; length < whole.length(); length += 7) {
      String part = whole.substring(0, length);
      assertThatExceptionOfType(BadInputException.class)
          .as("cut at " + length)
          .isThrownBy(() -> read(part));
    }
  }

  @Test
  void foldersAndMissingFilesAreRefused() {
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> BenchFile.read(folder))
        .withMessageContaining("not a folder");
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> BenchFile.read(folder.resolve("none.json")))
        .withMessageContaining("a file that exists");
  }

  @Test
  void targetsThatCannotBeWrittenAreRefused() {
    for (Path target : List.of(folder, folder.resolve("none").resolve("bench.json"))) {
      assertThatExceptionOfType(BadInputException.class)
          .isThrownBy(() -> AtomicFile.write(target, TEXT));
      assertThatExceptionOfType(BadInputException.class).isThrownBy(() -> AtomicFile.check(target));
    }
    assertThat(folder).isEmptyDirectory();
  }
}
