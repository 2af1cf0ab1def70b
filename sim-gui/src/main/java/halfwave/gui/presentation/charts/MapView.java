package halfwave.gui.presentation.charts;

import halfwave.bench.Parameter;
import halfwave.bench.RodPosition;
import halfwave.board.Sensing;
import halfwave.display.DisplayUnit;
import halfwave.display.QuantityText;
import halfwave.explain.Sweep;
import halfwave.explain.SweepRow.Taken;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.RodGesture;
import halfwave.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The DC reading over the place of the rod, as seen from above: along the burner's axis from left
 * to right, sideways upwards as in the drawing.
 *
 * @param along the axis across
 * @param across the upright axis; it runs backwards
 * @param microamps DC by column and line, the first line at the top (µA); NaN where the rod cannot
 *     be
 * @param full the reading at the deep end of the colours (µA)
 * @param contours lines of equal reading
 * @param rod where the rod is
 * @param fitted where it was fitted
 * @param summary the chart in a sentence
 * @param spoken the same for who hears the screen
 */
public record MapView(
    ChartAxis along,
    ChartAxis across,
    double[][] microamps,
    double full,
    List<Contour> contours,
    Spot rod,
    Spot fitted,
    String summary,
    String spoken) {

  /**
   * A line of equal reading.
   *
   * @param words its number
   * @param kind how it is drawn
   * @param level height on the scale of colours, 0 to 1
   * @param pieces its pieces, each as places, x and y for each, 0 to 1 of the axes
   */
  public record Contour(String words, Kind kind, double level, List<double[]> pieces) {
    /** Takes a copy. */
    public Contour {
      pieces = List.copyOf(pieces);
    }
  }

  /** How a line is drawn. */
  public enum Kind {
    /** A round number. */
    ROUND,
    /** Where the board loses the flame. */
    DROP_OUT,
    /** The same on the healthy bench. */
    HEALTHY_DROP_OUT
  }

  /**
   * A place in the map.
   *
   * @param at place along the axis across, 0 to 1
   * @param level height, 0 to 1
   * @param inside whether it is in the map
   * @param words what it is
   */
  public record Spot(double at, double level, boolean inside, String words) {}

  private static final int LINES = 9;
  private static final double LEAST_MICROAMPS = 0.5;

  /** The view of an answer, with the rod where it is now. */
  public static MapView of(RodMap.Answer answer, RodPosition rod, Sensing sensing, Wording words) {
    QuantityText numbers = words.sentences().quantities();
    DisplayUnit unit = numbers.unit(RodMap.ALONG_TO, Dimension.LENGTH);
    ChartAxis along =
        ChartAxis.linear(
            ChartAxis.title(words.heading(Parameter.ROD_ALONG), unit, words),
            unit.fromSi(RodMap.ALONG_FROM),
            unit.fromSi(RodMap.ALONG_TO),
            8,
            numbers);
    ChartAxis across =
        ChartAxis.linear(
            ChartAxis.title(words.heading(Parameter.ROD_ACROSS), unit, words),
            unit.fromSi(RodMap.ACROSS),
            unit.fromSi(-RodMap.ACROSS),
            4,
            numbers);
    double[][] grid = grid(answer.map());
    double most = LEAST_MICROAMPS;
    for (double[] column : grid) {
      for (double v : column) {
        most = v > most ? v : most;
      }
    }
    List<Contour> contours = new ArrayList<>();
    double step = ChartAxis.step(most, LINES);
    double limit = DisplayUnit.MICROAMP.fromSi(sensing.dropOutAmps());
    for (int k = 1; k * step < most; k++) {
      if (Math.abs(k * step - limit) < 0.05 * step) {
        continue;
      }
      String text = numbers.fixed(k * step, ChartAxis.decimals(step));
      contours.add(contour(grid, k * step, most, text, Kind.ROUND));
    }
    String limitText = numbers.text(sensing.dropOutAmps(), DisplayUnit.MICROAMP, 2);
    contours.add(
        contour(grid, limit, most, words.text("board.drop-out", limitText), Kind.DROP_OUT));
    Sweep healthy = answer.healthy();
    if (healthy != null) {
      String text = words.text("map.healthy-drop-out");
      contours.add(contour(grid(healthy), limit, most, text, Kind.HEALTHY_DROP_OUT));
    }
    Spot here = spot(rod, along, across, unit, words.text("map.rod"));
    Spot fitted = spot(RodPosition.FITTED, along, across, unit, words.text("map.fitted"));
    MapView view = new MapView(along, across, grid, most, contours, here, fitted, "", "");
    String now = here.inside ? view.probe(here.at, here.level, words).words() : here.words;
    String summary = here.inside ? words.text("map.summary", now) : words.text("map.outside");
    return new MapView(
        along,
        across,
        grid,
        most,
        contours,
        here,
        fitted,
        summary,
        words.text("map.spoken", now, numbers.fixed(1e-6 * most, DisplayUnit.MICROAMP, 1)));
  }

  /** The sweep's last axis runs fastest, from negative to positive: from top to bottom. */
  private static double[][] grid(Sweep sweep) {
    int columns = sweep.axes().get(0).count();
    int lines = sweep.axes().get(1).count();
    double[][] grid = new double[columns][lines];
    for (int n = 0; n < columns * lines; n++) {
      grid[n / lines][n % lines] =
          sweep
              .rows()
              .get(n)
              .taken()
              .map(Taken::seriesMeanAmps)
              .map(DisplayUnit.MICROAMP::fromSi)
              .orElse(Double.NaN);
    }
    return grid;
  }

  private static Contour contour(
      double[][] grid, double level, double most, String text, Kind kind) {
    double lastColumn = grid.length - 1;
    double lastLine = grid[0].length - 1;
    List<double[]> pieces = new ArrayList<>();
    for (double[] line : ContourLines.at(grid, level)) {
      double[] places = new double[line.length];
      for (int k = 0; k < line.length; k += 2) {
        places[k] = line[k] / lastColumn;
        places[k + 1] = 1 - line[k + 1] / lastLine;
      }
      pieces.add(places);
    }
    return new Contour(text, kind, level / most, pieces);
  }

  private static Spot spot(
      RodPosition p, ChartAxis along, ChartAxis across, DisplayUnit unit, String text) {
    double at = along.place(unit.fromSi(p.alongMeters()));
    double level = across.place(unit.fromSi(p.acrossMeters()));
    return new Spot(at, level, at >= 0 && at <= 1 && level >= 0 && level <= 1, text);
  }

  /** What the map says at a place, 0 to 1 of both axes. */
  public Probe probe(double at, double level, Wording words) {
    QuantityText numbers = words.sentences().quantities();
    DisplayUnit unit = numbers.unit(RodMap.ALONG_TO, Dimension.LENGTH);
    int decimals = unit == DisplayUnit.INCH ? 2 : 1;
    String x = numbers.fixed(unit.toSi(along.value(at)), unit, decimals);
    String y = numbers.fixed(unit.toSi(across.value(level)), unit, decimals);
    double there = between(at, level);
    String said =
        Double.isNaN(there)
            ? words.text("map.probe-none", x, y)
            : words.text("map.probe", x, y, numbers.fixed(1e-6 * there, DisplayUnit.MICROAMP, 1));
    return new Probe(at, List.of(level), said);
  }

  /** The reading between the four nearest places; NaN where one of them has none. */
  private double between(double at, double level) {
    double x = Math.max(0, Math.min(1, at)) * (microamps.length - 1);
    double y = (1 - Math.max(0, Math.min(1, level))) * (microamps[0].length - 1);
    int i = (int) Math.min(microamps.length - 2, Math.floor(x));
    int j = (int) Math.min(microamps[0].length - 2, Math.floor(y));
    double above = mixed(microamps[i][j], microamps[i + 1][j], x - i);
    double below = mixed(microamps[i][j + 1], microamps[i + 1][j + 1], x - i);
    return mixed(above, below, y - j);
  }

  /** With nothing of the other end, the other end does not matter. */
  private static double mixed(double a, double b, double share) {
    return share <= 0 ? a : share >= 1 ? b : a + share * (b - a);
  }

  /** The rod put at a place of the map, 0 to 1 of both axes, to a tenth of a millimeter. */
  public RodPosition moved(RodPosition from, double at, double level, Wording words) {
    DisplayUnit unit = words.sentences().quantities().unit(RodMap.ALONG_TO, Dimension.LENGTH);
    return from.withAlong(tenth(unit.toSi(along.value(at))))
        .withAcross(tenth(unit.toSi(across.value(level))));
  }

  private static double tenth(double meters) {
    return Math.rint(meters * 1e4) / 1e4;
  }

  /** The numbers, for a spreadsheet: one line for each place along, one column for each across. */
  public String table(Wording words) {
    int lines = microamps[0].length;
    String[] titles = new String[lines + 1];
    titles[0] = words.text("map.table", along.title(), across.title());
    for (int j = 0; j < lines; j++) {
      titles[j + 1] = DataTable.number(across.value(1 - j / (lines - 1.0)));
    }
    DataTable table = new DataTable(titles);
    for (int i = 0; i < microamps.length; i++) {
      double x = along.value(i / (microamps.length - 1.0));
      table.row(DataTable.number(x), microamps[i]);
    }
    return table.toString();
  }

  /** The intent that moves the rod to a place of the map. */
  public @Nullable Intent click(RodPosition from, double at, double level, Wording words) {
    RodPosition to = moved(from, at, level, words);
    return Double.isNaN(between(at, level)) || to.equals(from)
        ? null
        : new RodGesture(from, 0).to(to);
  }
}
