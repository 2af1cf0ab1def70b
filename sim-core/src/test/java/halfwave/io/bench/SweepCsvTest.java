package halfwave.io.bench;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import halfwave.bench.Parameter;
import halfwave.bench.ShippedBenches;
import halfwave.explain.Axis;
import halfwave.explain.Sweep;
import halfwave.explain.SweepRow.Taken;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A sweep as CSV and as JSON. */
class SweepCsvTest {

  private static final Sweep SWEEP =
      Sweep.of(
          ShippedBenches.standard(),
          List.of(
              Axis.linear(Parameter.ROD_ALONG, -0.02, 0.02, 3),
              Axis.logarithmic(Parameter.CONNECTOR, 1e3, 1e7, 2)));

  @Test
  void linesEndAndCellsCountAsTheStandardSays() {
    String text = SweepCsv.of(SWEEP);

    assertThat(text).endsWith("\r\n");
    String[] lines = text.split("\r\n");
    assertThat(lines).hasSize(7);
    assertThat(lines[0])
        .isEqualTo(
            "rodAlongMeters,connectorOhms,seriesDcAmps,seriesAcAmpsRms,terminalAcVoltsRms,failure");
    assertThat(lines[1]).isEqualTo("-0.02,1000.0,,,,clear-of-burner");
    assertThat(lines).allSatisfy(line -> assertThat(line.split(",", -1)).hasSize(6));
  }

  /** Every digit: the numbers come back to the last bit. */
  @Test
  void numbersComeBack() {
    String[] cells = SweepCsv.of(SWEEP).split("\r\n")[3].split(",", -1);

    Taken taken = SWEEP.rows().get(2).taken().orElseThrow();
    assertThat(Double.parseDouble(cells[2])).isEqualTo(taken.seriesMeanAmps());
    assertThat(Double.parseDouble(cells[3])).isEqualTo(taken.seriesAlternatingRmsAmps());
    assertThat(Double.parseDouble(cells[4])).isEqualTo(taken.terminalAlternatingRmsVolts());
    assertThat(cells[5]).isEmpty();
  }

  @Test
  void columnsNameTheirUnitOnce() {
    List<String> columns = Stream.of(Parameter.values()).map(SweepCsv::column).toList();

    assertThat(columns)
        .doesNotHaveDuplicates()
        .contains("sourceVolts", "sourceOhms", "gasPressureRatio", "cableFarads")
        .allMatch(
            c ->
                c.matches(
                    "[a-zA-Z]+(Volts|Amps|Ohms|Ratio|Meters|Kelvin|Farads|Radians|KilogramsPerCubicMeter)"));
  }

  @Test
  void jsonSaysTheSame() throws IOException {
    JsonNode root = new ObjectMapper().readTree(SweepJson.of(SWEEP));

    assertThat(root.get("bench").textValue()).isEqualTo("hot-surface-natural-gas");
    assertThat(root.get("axes")).hasSize(2);
    assertThat(root.at("/axes/1/logarithmic").booleanValue()).isTrue();
    assertThat(root.get("rows")).hasSize(6);
    assertThat(root.at("/rows/0/seriesDcAmps").isNull()).isTrue();
    assertThat(root.at("/rows/0/failure").textValue()).isEqualTo("clear-of-burner");
    assertThat(root.at("/rows/2/failure").isNull()).isTrue();
    assertThat(root.at("/rows/2/seriesDcAmps").doubleValue())
        .isEqualTo(SWEEP.rows().get(2).taken().orElseThrow().seriesMeanAmps());
  }
}
