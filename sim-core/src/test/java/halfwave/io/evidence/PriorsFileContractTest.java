package halfwave.io.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.fasterxml.jackson.databind.JsonNode;
import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Priors;
import halfwave.fault.FaultKind;
import halfwave.io.AtomicFile;
import halfwave.io.BadInputException;
import halfwave.io.SchemaFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The judgement that comes with the program is valid, and reader and schema refuse the same. */
class PriorsFileContractTest {

  private static final SchemaFile SCHEMA = new SchemaFile("priors.schema.json");
  private static final String TEXT = new String(PriorsFile.shippedBytes(), StandardCharsets.UTF_8);

  @TempDir Path folder;

  @Test
  void shippedJudgementIsValidAndCoversEveryKind() throws IOException {
    Path file = folder.resolve("priors.json");
    AtomicFile.write(file, TEXT);
    Priors priors = PriorsFile.read(file);

    assertThat(SCHEMA.errors(TEXT)).isEmpty();
    assertThat(priors).isEqualTo(PriorsFile.shipped());
    assertThat(priors.causes())
        .startsWith(Cause.HEALTHY)
        .hasSize(1 + FaultKind.values().length + priors.pairs().size())
        .allSatisfy(c -> assertThat(priors.weight(c)).isPositive());
  }

  @Test
  void schemaNamesEveryKind() throws IOException {
    JsonNode schema = SCHEMA.root();
    assertThat(schema.at("/$defs/kind/enum"))
        .extracting(JsonNode::textValue)
        .as("$defs.kind.enum in docs/schemas/priors.schema.json")
        .containsExactlyInAnyOrderElementsOf(
            Stream.of(FaultKind.values()).map(FaultKind::id).toList());
    assertThat(schema.at("/properties/kinds/minProperties").intValue())
        .as("properties.kinds.minProperties in docs/schemas/priors.schema.json")
        .isEqualTo(FaultKind.values().length);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/format|\"halfwave-board\"|format",
        "/version|2|version",
        "/label|3|label",
        "/healthy|0|healthy",
        "/kinds/rod-fouled|-1|kinds.rod-fouled",
        "/kinds/rod-fouled|\"often\"|kinds.rod-fouled",
        "/kinds/surprise|1|kinds.surprise",
        "/pairs|3|pairs",
        "/pairs/0/kinds|[\"rod-fouled\"]|pairs[0].kinds",
        "/pairs/0/kinds|[\"rod-fouled\",\"rod-fouled\"]|pairs[0].kinds",
        "/pairs/0/kinds|[\"rod-fouled\",\"moon\"]|pairs[0].kinds[1]",
        "/pairs/0/surprise|1|pairs[0].surprise",
        "/hazardMinutes/flame|-1|hazardMinutes.flame",
        "/costUnitSeconds|-1|costUnitSeconds",
        "/misreadProbability|0|misreadProbability",
        "/outlierProbability|0.6|outlierProbability",
        "/mishapProbability|\"never\"|mishapProbability",
        "/surprise|1|surprise"
      })
  void whatIsWrongIsRefusedByReaderAndSchema(String pointer, String value, String place)
      throws IOException {
    String wrong = SchemaFile.spoiled(TEXT, pointer, value);
    Path file = folder.resolve("priors.json");
    AtomicFile.write(file, wrong);

    assertThat(SCHEMA.errors(wrong)).isNotEmpty();
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> PriorsFile.read(file))
        .satisfies(e -> assertThat(e.field()).isEqualTo(place))
        .satisfies(e -> assertThat(e.file()).isEqualTo(file.toString()));
  }
}
