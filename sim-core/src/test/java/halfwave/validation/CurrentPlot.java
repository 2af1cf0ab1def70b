package halfwave.validation;

import halfwave.picture.Picture;
import java.util.List;

/** Currents with one expected value: both axes logarithmic, the diagonal is agreement. */
final class CurrentPlot {

  private static final double LEFT = 110;
  private static final double SIZE = 560;
  private static final int LOW = -10;
  private static final int HIGH = -4;

  private CurrentPlot() {}

  static Picture picture(List<Checked> checks) {
    List<Checked> currents =
        checks.stream()
            .filter(c -> c.unit() == Unit.MICROAMPS)
            .filter(c -> c.kind() == Kind.CLOSE || c.kind() == Kind.CLOSE_BY_SHARE)
            .filter(c -> shown(c.expected()) && shown(c.computed()))
            .toList();
    return PlotPen.picture(
        LEFT + SIZE + 40,
        SIZE + 90,
        pen -> {
          axes(pen);
          for (Checked c : currents) {
            pen.dot(
                LEFT + along(c.expected()),
                20 + SIZE - along(c.computed()),
                3,
                c.reference().live() ? PlotPen.COLOURS.volts() : PlotPen.COLOURS.microamps(),
                c.reference().live());
          }
          key(pen, 74, false, "files and closed forms");
          key(pen, 98, true, "a circuit simulator, run anew");
        });
  }

  private static boolean shown(double amps) {
    double power = StrictMath.log10(Math.abs(amps));
    return power >= LOW && power <= HIGH;
  }

  private static double along(double amps) {
    return SIZE * (StrictMath.log10(Math.abs(amps)) - LOW) / (HIGH - LOW);
  }

  private static void axes(PlotPen pen) {
    for (int power = LOW; power <= HIGH; power++) {
      double at = SIZE * (power - LOW) / (HIGH - LOW);
      String words = Unit.MICROAMPS.text(StrictMath.pow(10, power), 0);
      pen.line(LEFT + at, 20, LEFT + at, 20 + SIZE, PlotPen.COLOURS.hairline(), 1);
      pen.line(LEFT, 20 + at, LEFT + SIZE, 20 + at, PlotPen.COLOURS.hairline(), 1);
      pen.words(words, LEFT + at, SIZE + 42, 0.5, PlotPen.COLOURS.ink());
      pen.words(words, LEFT - 10, 25 + SIZE - at, 1, PlotPen.COLOURS.ink());
    }
    pen.line(LEFT, 20 + SIZE, LEFT + SIZE, 20, PlotPen.COLOURS.softInk(), 1);
    pen.words(
        "expected, without sign", LEFT + 0.5 * SIZE, SIZE + 68, 0.5, PlotPen.COLOURS.softInk());
    pen.words("computed, upwards", LEFT + 16, 44, 0, PlotPen.COLOURS.softInk());
  }

  private static void key(PlotPen pen, double y, boolean live, String words) {
    double x = LEFT + 16;
    pen.dot(x, y, 4, live ? PlotPen.COLOURS.volts() : PlotPen.COLOURS.microamps(), live);
    pen.words(words, x + 14, y + 5, 0, PlotPen.COLOURS.ink());
  }
}
