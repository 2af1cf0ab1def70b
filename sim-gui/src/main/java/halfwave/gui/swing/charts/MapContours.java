package halfwave.gui.swing.charts;

import halfwave.gui.presentation.charts.MapView;
import halfwave.gui.presentation.charts.MapView.Contour;
import halfwave.gui.presentation.charts.MapView.Kind;
import halfwave.gui.presentation.charts.MapView.Spot;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Lines of equal current, each with its number where that is free. */
final class MapContours {

  private final Rectangle2D plot;

  MapContours(Rectangle2D plot) {
    this.plot = plot;
  }

  void draw(ChartInk ink, MapView v) {
    List<Rectangle2D> taken = new ArrayList<>();
    taken.add(room(ink, v.rod()));
    taken.add(room(ink, v.fitted()));
    for (Contour c : v.contours()) {
      Path2D path = new Path2D.Double();
      double[] longest = {};
      for (double[] piece : c.pieces()) {
        longest = piece.length > longest.length ? piece : longest;
        for (int k = 0; k < piece.length; k += 2) {
          double x = ChartInk.x(plot, piece[k]);
          double y = ChartInk.y(plot, piece[k + 1]);
          if (k == 0) {
            path.moveTo(x, y);
          } else {
            path.lineTo(x, y);
          }
        }
      }
      switch (c.kind()) {
        case ROUND ->
            ink.clipped(plot, path, ChartInk.faint(ink.palette.ink(), 0.75), ink.solid(0.9));
        case DROP_OUT -> ink.clipped(plot, path, ink.palette.ink(), ink.solid(2.2));
        case HEALTHY_DROP_OUT -> ink.clipped(plot, path, ink.palette.ink(), ink.ghostStroke());
      }
      label(ink, c, longest, taken);
    }
  }

  /** What a mark and its name cover. */
  private Rectangle2D room(ChartInk ink, Spot spot) {
    double r = ink.theme.px(9);
    double x = ChartInk.x(plot, spot.at());
    double y = ChartInk.y(plot, spot.level());
    return new Rectangle2D.Double(x - r, y - r, 2 * r + ink.width(spot.words()) + r, 2 * r);
  }

  /** At the place nearest to the middle of the longest piece that is free. */
  private void label(ChartInk ink, Contour c, double[] line, List<Rectangle2D> taken) {
    int points = line.length / 2;
    double wide = ink.width(c.words());
    double tall = ink.line();
    if (points < (c.kind() == Kind.ROUND ? 5 : 2)) {
      return;
    }
    for (int k = 0; k < points; k++) {
      int n = points / 2 + (k % 2 == 0 ? k / 2 : -(k + 1) / 2);
      if (n < 0 || n >= points) {
        continue;
      }
      double x = ChartInk.x(plot, line[2 * n]);
      double y = ChartInk.y(plot, line[2 * n + 1]);
      Rectangle2D box =
          new Rectangle2D.Double(x - wide / 2 - 6, y - tall / 2 - 2, wide + 12, tall + 4);
      if (plot.contains(box) && taken.stream().noneMatch(box::intersects)) {
        taken.add(box);
        ink.words(c.words(), ink.palette.ink(), x - wide / 2, y + 0.3 * tall, plot);
        return;
      }
    }
  }
}
