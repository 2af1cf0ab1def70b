package halfwave.validation;

import halfwave.picture.Picture;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One lane for each band of practice: where the model's numbers lie in it. */
final class BandPlot {

  private static final double LEFT = 520;
  private static final double WIDTH = 400;
  private static final double LANE = 28;

  private BandPlot() {}

  static Picture picture(List<Checked> checks) {
    Map<String, double[]> lanes = new LinkedHashMap<>();
    Map<String, Checked> firsts = new LinkedHashMap<>();
    for (Checked c : checks) {
      if (c.kind() == Kind.BAND && c.reference().label() == Label.PRACTICE) {
        double share = (c.computed() - c.low()) / (c.high() - c.low());
        double[] ends = lanes.computeIfAbsent(c.subject(), s -> new double[] {1, 0});
        ends[0] = Math.min(ends[0], share);
        ends[1] = Math.max(ends[1], share);
        firsts.putIfAbsent(c.subject(), c);
      }
    }
    double bottom = 20 + LANE * lanes.size();
    return PlotPen.picture(
        LEFT + WIDTH + 130,
        bottom + 20,
        pen -> {
          pen.fill(LEFT, 16, WIDTH, bottom - 16, PlotPen.COLOURS.ground());
          double y = 20 + 0.5 * LANE;
          for (Map.Entry<String, double[]> lane : lanes.entrySet()) {
            Checked c = firsts.get(lane.getKey());
            pen.words(lane.getKey(), LEFT - 80, y + 5, 1, PlotPen.COLOURS.ink());
            pen.words(c.unit().number(c.low(), 0), LEFT - 8, y + 5, 1, PlotPen.COLOURS.softInk());
            pen.words(
                c.unit().text(c.high(), 0), LEFT + WIDTH + 8, y + 5, 0, PlotPen.COLOURS.softInk());
            pen.line(LEFT, y, LEFT + WIDTH, y, PlotPen.COLOURS.hairline(), 1);
            double from = LEFT + WIDTH * lane.getValue()[0];
            double to = LEFT + WIDTH * lane.getValue()[1];
            pen.line(from, y, to, y, PlotPen.COLOURS.microamps(), 7);
            pen.dot(from, y, 4, PlotPen.COLOURS.microamps(), false);
            pen.dot(to, y, 4, PlotPen.COLOURS.microamps(), false);
            y += LANE;
          }
          pen.line(LEFT, 16, LEFT, bottom, PlotPen.COLOURS.softInk(), 1);
          pen.line(LEFT + WIDTH, 16, LEFT + WIDTH, bottom, PlotPen.COLOURS.softInk(), 1);
        });
  }
}
