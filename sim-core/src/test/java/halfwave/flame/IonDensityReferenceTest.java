package halfwave.flame;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The downstream density formula against {@code flame-ions.csv}, whose header names tool, version
 * and chemistry (computed, no measurement). The ranges are the model's own statement of how far the
 * formula is from the full computation.
 */
class IonDensityReferenceTest {

  private static final double[] METERS = {0.5e-3, 1e-3, 2e-3, 5e-3, 10e-3};
  private static final int FIRST_DENSITY = 9;

  @Test
  void allRowsWithinTheStatedRange() throws IOException {
    List<String[]> rows = rows();
    assertThat(rows).hasSize(19);
    for (String[] row : rows) {
      for (int k = 0; k < METERS.length; k++) {
        assertThat(ratio(row, k)).as(String.join(",", row)).isBetween(0.695, 1.855);
      }
    }
  }

  @Test
  void usualMixturesWithinTheNarrowerRange() throws IOException {
    List<String[]> rows =
        rows().stream()
            .filter(row -> Double.parseDouble(row[1]) >= 0.8 && Double.parseDouble(row[1]) <= 1.3)
            .toList();
    assertThat(rows).hasSize(12);
    for (String[] row : rows) {
      for (int k = 0; k < METERS.length; k++) {
        assertThat(ratio(row, k)).as(String.join(",", row)).isBetween(0.725, 1.685);
      }
    }
  }

  private static double ratio(String[] row, int k) {
    double hottest = Double.parseDouble(row[3]);
    double speed = Double.parseDouble(row[4]);
    double peak = Double.parseDouble(row[5]);
    double n =
        IonGas.downstreamPerCubicMeter(
            peak,
            IonGas.recombinationCubicMetersPerSecond(0.95 * hottest),
            0.93 * speed,
            METERS[k]);
    return n / Double.parseDouble(row[FIRST_DENSITY + k]);
  }

  private static List<String[]> rows() throws IOException {
    try (InputStream in = FlameTable.class.getResourceAsStream("flame-ions.csv")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> line.startsWith("CH4,") || line.startsWith("C3H8,"))
          .map(line -> line.split(","))
          .toList();
    }
  }
}
