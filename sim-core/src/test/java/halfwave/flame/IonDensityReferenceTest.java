package halfwave.flame;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Unit;
import halfwave.validation.Validated;
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
@Validated(Area.FLAME)
class IonDensityReferenceTest {

  private static final Reference FLAMES =
      Reference.calc("flame-ions.csv: computed flames, Cantera 3.2.0 with GRI-Mech 3.0");
  private static final String STATED = "what the model says of its own formula, to half a digit";

  private static final double[] METERS = {0.5e-3, 1e-3, 2e-3, 5e-3, 10e-3};
  private static final int FIRST_DENSITY = 9;

  @Test
  void allRowsWithinTheStatedRange() throws IOException {
    List<String[]> rows = rows();
    assertThat(rows).hasSize(19);
    for (String[] row : rows) {
      for (int k = 0; k < METERS.length; k++) {
        FLAMES
            .check("ion density downstream, formula over computed flame", Unit.RATIO, ratio(row, k))
            .at(point(row, k))
            .isBetween(0.695, 1.855, STATED);
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
        FLAMES
            .check(
                "ion density downstream, equivalence ratios 0.8 to 1.3", Unit.RATIO, ratio(row, k))
            .at(point(row, k))
            .isBetween(0.725, 1.685, STATED);
      }
    }
  }

  private static String point(String[] row, int k) {
    return row[0] + " " + row[1] + ", " + 1000 * METERS[k] + " mm";
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
