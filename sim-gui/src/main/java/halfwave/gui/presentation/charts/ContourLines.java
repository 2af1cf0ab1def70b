package halfwave.gui.presentation.charts;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Lines of equal value over a grid, by marching squares. */
final class ContourLines {

  private ContourLines() {}

  /** A place on an edge of the grid; equal for the two squares that share the edge. */
  private record Place(double x, double y) {}

  /**
   * The lines of one value.
   *
   * @param values by column, then line of the grid; NaN where there is none
   * @param level the value
   * @return each line as places in steps of the grid, x then y for each
   */
  static List<double[]> at(double[][] values, double level) {
    Map<Place, List<Place>> joins = new HashMap<>();
    for (int i = 0; i + 1 < values.length; i++) {
      for (int j = 0; j + 1 < values[i].length; j++) {
        square(joins, values, level, i, j);
      }
    }
    List<double[]> lines = new ArrayList<>();
    // open lines from their ends, then those that are closed
    List<Place> starts = new ArrayList<>();
    joins.forEach(
        (place, to) -> {
          if (to.size() == 1) {
            starts.add(place);
          }
        });
    starts.sort(ContourLines::order);
    List<Place> rest = new ArrayList<>(joins.keySet());
    rest.sort(ContourLines::order);
    starts.addAll(rest);
    for (Place start : starts) {
      if (!joins.getOrDefault(start, List.of()).isEmpty()) {
        lines.add(walked(joins, start));
      }
    }
    return lines;
  }

  private static int order(Place a, Place b) {
    int byX = Double.compare(a.x, b.x);
    return byX != 0 ? byX : Double.compare(a.y, b.y);
  }

  private static double[] walked(Map<Place, List<Place>> joins, Place start) {
    Deque<Place> line = new ArrayDeque<>();
    Place here = start;
    line.add(here);
    while (true) {
      List<Place> to = joins.getOrDefault(here, List.of());
      if (to.isEmpty()) {
        break;
      }
      Place next = to.remove(0);
      List<Place> back = joins.getOrDefault(next, List.of());
      back.remove(here);
      line.add(next);
      here = next;
    }
    double[] places = new double[2 * line.size()];
    int k = 0;
    for (Place p : line) {
      places[k++] = p.x;
      places[k++] = p.y;
    }
    return places;
  }

  private static void square(
      Map<Place, List<Place>> joins, double[][] values, double level, int i, int j) {
    double sum = values[i][j] + values[i + 1][j] + values[i][j + 1] + values[i + 1][j + 1];
    if (Double.isNaN(sum)) {
      return;
    }
    List<Place> cuts = new ArrayList<>();
    cut(cuts, values, level, i, j, i + 1, j);
    cut(cuts, values, level, i + 1, j, i + 1, j + 1);
    cut(cuts, values, level, i, j + 1, i + 1, j + 1);
    cut(cuts, values, level, i, j, i, j + 1);
    for (int k = 0; k + 1 < cuts.size(); k += 2) {
      Place a = cuts.get(k);
      Place b = cuts.get(k + 1);
      joins.computeIfAbsent(a, p -> new ArrayList<>()).add(b);
      joins.computeIfAbsent(b, p -> new ArrayList<>()).add(a);
    }
  }

  /** Always from the lower to the higher corner, so that neighbours find the very same place. */
  private static void cut(
      List<Place> cuts, double[][] values, double level, int i, int j, int i2, int j2) {
    double a = values[i][j] - level;
    double b = values[i2][j2] - level;
    if (a < 0 != b < 0) {
      double t = a / (a - b);
      cuts.add(new Place(i + t * (i2 - i), j + t * (j2 - j)));
    }
  }
}
