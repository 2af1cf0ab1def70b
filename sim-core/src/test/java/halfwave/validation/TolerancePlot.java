package halfwave.validation;

import halfwave.picture.Picture;
import java.util.Arrays;
import java.util.List;

/** One lane for each area, one dot for each line, as far to the right as its tolerance is used. */
final class TolerancePlot {

  private static final double LEFT = 390;
  private static final double WIDTH = 600;
  private static final double LANE = 46;
  private static final double DOT = 3.6;

  private TolerancePlot() {}

  static Picture picture(List<Row> rows) {
    List<Area> areas =
        Arrays.stream(Area.values())
            .filter(a -> rows.stream().anyMatch(r -> r.area() == a && shown(r)))
            .toList();
    double bottom = 20 + LANE * areas.size();
    return PlotPen.picture(
        LEFT + WIDTH + 40,
        bottom + 56,
        pen -> {
          for (int percent = 0; percent <= 100; percent += 20) {
            double x = x(percent);
            pen.line(x, 12, x, bottom, PlotPen.COLOURS.hairline(), 1);
            pen.words(percent + " %", x, bottom + 20, 0.5, PlotPen.COLOURS.ink());
          }
          pen.words("below 1 %", LEFT - 30, bottom + 20, 1, PlotPen.COLOURS.softInk());
          pen.line(x(100), 12, x(100), bottom, PlotPen.COLOURS.danger(), 1.5);
          pen.words(
              "share of the tolerance used", x(50), bottom + 44, 0.5, PlotPen.COLOURS.softInk());
          for (int k = 0; k < areas.size(); k++) {
            lane(pen, areas.get(k), 20 + LANE * (k + 0.5), rows);
          }
        });
  }

  private static boolean shown(Row r) {
    return !r.disagreement() && r.kind() != Kind.SAME;
  }

  private static double x(double percent) {
    return LEFT + WIDTH * percent / 100;
  }

  private static void lane(PlotPen pen, Area area, double y, List<Row> rows) {
    pen.words(area.title(), LEFT - 110, y + 5, 1, PlotPen.COLOURS.ink());
    pen.line(LEFT, y + 0.5 * LANE, x(100), y + 0.5 * LANE, PlotPen.COLOURS.hairline(), 0.6);
    List<Row> shown = rows.stream().filter(r -> r.area() == area && shown(r)).toList();
    long none = shown.stream().filter(r -> r.usedPercent() == 0).count();
    if (none > 0) {
      pen.words("and " + none, LEFT - 16, y + 5, 1, PlotPen.COLOURS.softInk());
    }
    int[] stacked = new int[51];
    for (Row r : shown) {
      if (r.usedPercent() > 0) {
        // dots that would hide each other go up and down in turn
        int step = stacked[r.usedPercent() / 2]++;
        double up = (step % 2 == 0 ? 1 : -1) * ((step + 1) / 2) * 7;
        pen.dot(
            x(r.usedPercent()),
            y + up,
            DOT,
            r.practice() ? PlotPen.COLOURS.microamps() : PlotPen.COLOURS.accent(),
            r.practice());
      }
    }
  }
}
