package halfwave.io.bench;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import halfwave.io.JsonFile;
import halfwave.io.bench.CircuitFiles.Wrong;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The published schema accepts and refuses what the reader does. */
class CircuitSchemaContractTest {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private static List<Error> errors(JsonNode node) {
    try {
      String text = Files.readString(Path.of("..", "docs", "schemas", "circuit.schema.json"));
      Schema schema =
          SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
              .getSchema(text, InputFormat.JSON);
      return schema.validate(node);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<Error> errors(String text) throws JsonProcessingException {
    return errors(MAPPER.readTree(text));
  }

  @Test
  void referenceCircuitsAreValid() throws IOException {
    try (InputStream in = getClass().getResourceAsStream("/halfwave/circuit/circuits.json")) {
      JsonNode all = MAPPER.readTree(in);
      assertThat(all).hasSize(12);
      assertThat(errors(all)).isEmpty();
    }
  }

  @Test
  void goodFilesAreValid() throws JsonProcessingException {
    assertThat(errors(CircuitFiles.GOOD)).isEmpty();
    for (Map.Entry<String, String> edit : CircuitFiles.FINE.entrySet()) {
      String text = CircuitFiles.GOOD.replace(edit.getKey(), edit.getValue());
      assertThat(text).isNotEqualTo(CircuitFiles.GOOD);
      assertThat(errors(text)).as(edit.getValue()).isEmpty();
      assertThat(LumpedCircuitFile.of(JsonFile.parse("c", text.getBytes()))).hasSize(1);
    }
  }

  static Stream<Wrong> wrong() {
    return CircuitFiles.WRONG.stream();
  }

  @ParameterizedTest
  @MethodSource("wrong")
  void wrongFilesAreInvalid(Wrong wrong) throws JsonProcessingException {
    assertThat(errors(wrong.text())).isNotEmpty();
    assertThat(errors("[{\"circuit\": " + wrong.text() + "}]")).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"[]", "7", "null", "[3]", "[{}]", "{}"})
  void othersThanCircuitsAreInvalid(String text) throws JsonProcessingException {
    assertThat(errors(text)).isNotEmpty();
  }
}
