package halfwave.flame;

import halfwave.quantity.Guard;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The one-dimensional flames of one fuel, read from {@code flame-ions.csv}, linear in equivalence
 * ratio between its rows.
 *
 * <p>Beyond the richest row temperature and burnt-gas speed stay, the burning velocity goes on with
 * its last slope to zero, and the ion source ends: at once for methane; for propane linearly from
 * 0.072 A/m² at 1.5 through 0.03 at 1.6 to 0 at 1.75. Below the leanest row burning velocity and
 * ion source go on with their first slope to zero. The peak ion density there follows the source.
 */
public final class FlameTable {

  private static final String RESOURCE = "flame-ions.csv";
  private static final double[] PROPANE_RICH_RATIO = {1.5, 1.6, 1.75};
  private static final double[] PROPANE_RICH_AMPS_PER_SQUARE_METER = {0.072, 0.03, 0};

  private final List<FlameRow> rows;
  private final boolean fadesSlowly;

  private FlameTable(List<FlameRow> rows, boolean fadesSlowly) {
    this.rows = List.copyOf(rows);
    this.fadesSlowly = fadesSlowly;
  }

  /**
   * Reads the rows of one fuel.
   *
   * @param formula the fuel's name in the file
   * @param largestBurningVelocity what the burning velocities are scaled to (m/s), NaN for no scale
   * @return the table
   */
  static FlameTable read(String formula, double largestBurningVelocity) {
    List<FlameRow> raw = new ArrayList<>();
    try (InputStream in = FlameTable.class.getResourceAsStream(RESOURCE)) {
      if (in == null) {
        throw new IllegalStateException(RESOURCE + " is missing from the class path");
      }
      BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        if (line.startsWith(formula + ",")) {
          raw.add(parse(line.split(",", -1)));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    raw.sort(Comparator.comparingDouble(FlameRow::equivalenceRatio));
    double largest = raw.stream().mapToDouble(FlameRow::burningMetersPerSecond).max().orElseThrow();
    double scale = largestBurningVelocity > 0 ? largestBurningVelocity / largest : 1;
    return new FlameTable(
        raw.stream().map(row -> scaled(row, scale)).toList(), formula.equals("C3H8"));
  }

  private static FlameRow parse(String[] cell) {
    return new FlameRow(
        Double.parseDouble(cell[1]),
        Double.parseDouble(cell[2]),
        Double.parseDouble(cell[3]),
        Double.parseDouble(cell[4]),
        Double.parseDouble(cell[5]),
        Double.parseDouble(cell[7]));
  }

  private static FlameRow scaled(FlameRow row, double burning) {
    return new FlameRow(
        row.equivalenceRatio(),
        row.burningMetersPerSecond() * burning,
        row.hottestKelvin(),
        row.burntGasMetersPerSecond(),
        row.peakIonsPerCubicMeter(),
        row.saturationAmpsPerSquareMeter());
  }

  /** The rows as tabulated, leanest first. */
  public List<FlameRow> rows() {
    return rows;
  }

  /**
   * The flame of a mixture.
   *
   * @param equivalenceRatio fuel over stoichiometric fuel (1); above zero
   * @return interpolated row, by the rules of this class beyond the table
   */
  public FlameRow at(double equivalenceRatio) {
    Guard.positive("equivalenceRatio", equivalenceRatio);
    FlameRow first = rows.get(0);
    FlameRow last = rows.get(rows.size() - 1);
    if (equivalenceRatio < first.equivalenceRatio()) {
      FlameRow line = line(first, rows.get(1), equivalenceRatio);
      return beyond(line, first, line.saturationAmpsPerSquareMeter());
    }
    if (equivalenceRatio > last.equivalenceRatio()) {
      FlameRow line = line(rows.get(rows.size() - 2), last, equivalenceRatio);
      return beyond(line, last, fadesSlowly ? propaneFade(equivalenceRatio) : 0);
    }
    int k = 1;
    while (k < rows.size() - 1 && rows.get(k).equivalenceRatio() < equivalenceRatio) {
      k++;
    }
    return line(rows.get(k - 1), rows.get(k), equivalenceRatio);
  }

  private static FlameRow line(FlameRow a, FlameRow b, double x) {
    return a.towards(b, (x - a.equivalenceRatio()) / (b.equivalenceRatio() - a.equivalenceRatio()));
  }

  private static FlameRow beyond(FlameRow line, FlameRow edge, double saturation) {
    double j = Math.max(0, saturation);
    return new FlameRow(
        line.equivalenceRatio(),
        Math.max(0, line.burningMetersPerSecond()),
        edge.hottestKelvin(),
        edge.burntGasMetersPerSecond(),
        edge.peakIonsPerCubicMeter() * Math.min(1, j / edge.saturationAmpsPerSquareMeter()),
        j);
  }

  private static double propaneFade(double equivalenceRatio) {
    for (int k = 1; k < PROPANE_RICH_RATIO.length; k++) {
      double x1 = PROPANE_RICH_RATIO[k];
      if (equivalenceRatio <= x1) {
        double x0 = PROPANE_RICH_RATIO[k - 1];
        double j0 = PROPANE_RICH_AMPS_PER_SQUARE_METER[k - 1];
        double j1 = PROPANE_RICH_AMPS_PER_SQUARE_METER[k];
        return j0 + (equivalenceRatio - x0) / (x1 - x0) * (j1 - j0);
      }
    }
    return 0;
  }
}
