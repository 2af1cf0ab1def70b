package halfwave.picture.chart;

import halfwave.display.Sentences;
import halfwave.picture.PaperLook;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Lines of equal value over a grid, each with its number; marching squares. */
final class Contours {

  /** About so many lines. */
  private static final int LINES = 5;

  private final double[][] values;
  private final double[] x;
  private final double[] y;

  Contours(double[][] values, double[] x, double[] y) {
    this.values = values;
    this.x = x;
    this.y = y;
  }

  /** Draws all lines: zero strong, the others thin; a number on each that is long enough. */
  void draw(Graphics2D g, CurrentScale scale, Sentences sentences) {
    double low = scale.getLowerBound();
    double high = scale.getUpperBound();
    double step = round((high - low) / LINES);
    int decimals = step >= 1 ? 0 : step >= 0.1 ? 1 : 2;
    List<Point2D> taken = new ArrayList<>();
    for (long k = (long) Math.ceil(low / step); k * step < high; k++) {
      List<Line2D> line = at(k == 0 ? -CurrentScale.NOTHING : k * step);
      boolean dark = k * step > 0.45 * high;
      Color ink = dark ? PaperLook.SHEET : PaperLook.INK;
      g.setPaint(ink);
      g.setStroke(PaperLook.solid(k == 0 ? 2.6f : 1));
      line.forEach(g::draw);
      if (line.size() >= 6) {
        String text = sentences.quantities().fixed(k * step, decimals);
        Point2D place = free(line, taken);
        if (place != null) {
          taken.add(place);
          double width = PaperLook.width(g, text, PaperLook.NOTE);
          PaperLook.words(
              g, text, PaperLook.NOTE, PaperLook.INK, place.getX() - width / 2, place.getY() + 6);
        }
      }
    }
  }

  /** The middle of the line, or the place nearest to it that keeps clear of other numbers. */
  private @Nullable Point2D free(List<Line2D> line, List<Point2D> taken) {
    double left = Math.min(x[0], x[x.length - 1]) + 24;
    double right = Math.max(x[0], x[x.length - 1]) - 24;
    double top = Math.min(y[0], y[y.length - 1]) + 20;
    double bottom = Math.max(y[0], y[y.length - 1]) - 20;
    for (int k = 0; k < line.size(); k++) {
      int index = line.size() / 2 + (k % 2 == 0 ? k / 2 : -(k + 1) / 2);
      if (index < 0 || index >= line.size()) {
        continue;
      }
      Line2D piece = line.get(index);
      Point2D p = piece.getP1();
      boolean inside = p.getX() > left && p.getX() < right && p.getY() > top && p.getY() < bottom;
      if (inside && taken.stream().allMatch(t -> t.distance(p) > 46)) {
        return p;
      }
    }
    return null;
  }

  private List<Line2D> at(double level) {
    List<Line2D> pieces = new ArrayList<>();
    for (int i = 0; i + 1 < x.length; i++) {
      for (int j = 0; j + 1 < y.length; j++) {
        square(pieces, level, i, j);
      }
    }
    return pieces;
  }

  private void square(List<Line2D> pieces, double level, int i, int j) {
    List<Point2D> cuts = new ArrayList<>();
    cut(cuts, level, i, j, i + 1, j);
    cut(cuts, level, i + 1, j, i + 1, j + 1);
    cut(cuts, level, i + 1, j + 1, i, j + 1);
    cut(cuts, level, i, j + 1, i, j);
    boolean whole =
        !Double.isNaN(values[i][j] + values[i + 1][j] + values[i][j + 1] + values[i + 1][j + 1]);
    for (int k = 0; whole && k + 1 < cuts.size(); k += 2) {
      pieces.add(new Line2D.Double(cuts.get(k), cuts.get(k + 1)));
    }
  }

  private void cut(List<Point2D> cuts, double level, int i, int j, int i2, int j2) {
    double a = values[i][j] - level;
    double b = values[i2][j2] - level;
    if (a < 0 != b < 0) {
      double t = a / (a - b);
      cuts.add(new Point2D.Double(x[i] + t * (x[i2] - x[i]), y[j] + t * (y[j2] - y[j])));
    }
  }

  /** The nearest of 1, 2, 5 times a power of ten. */
  private static double round(double step) {
    double power = Math.pow(10, Math.floor(Math.log10(Math.max(step, 1e-6))));
    double digit = step / power;
    return power * (digit < 1.5 ? 1 : digit < 3.5 ? 2 : digit < 7.5 ? 5 : 10);
  }
}
