package halfwave.gui.swing.charts;

import halfwave.gui.presentation.charts.ChartAxis;
import halfwave.gui.presentation.charts.ChartAxis.Mark;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Draws axes with their numbers and titles. */
final class ChartAxes {

  private final ChartInk ink;

  ChartAxes(ChartInk ink) {
    this.ink = ink;
  }

  /** Where curves go when axes with these marks stand around them. */
  Rectangle2D plot(Rectangle2D outer, ChartAxis up, boolean acrossTitle) {
    double left = 0;
    for (Mark mark : up.marks()) {
      left = Math.max(left, ink.width(mark.words()));
    }
    left += ink.theme.px(10);
    double top = ink.line() + ink.theme.px(4);
    double bottom = ink.line() * (acrossTitle ? 2 : 1) + ink.theme.px(4);
    return new Rectangle2D.Double(
        outer.getX() + left,
        outer.getY() + top,
        Math.max(10, outer.getWidth() - left - ink.theme.px(10)),
        Math.max(10, outer.getHeight() - top - bottom));
  }

  /** Both axes, with fine lines across the plot. */
  void axes(Rectangle2D outer, Rectangle2D a, ChartAxis across, ChartAxis up, Color upInk) {
    ink.g.setFont(ink.theme.note());
    double free = Double.POSITIVE_INFINITY;
    List<Mark> upwards = new ArrayList<>(up.marks());
    upwards.sort(Comparator.comparingDouble(Mark::at));
    for (Mark mark : upwards) {
      double y = Math.rint(ChartInk.y(a, mark.at())) + 0.5;
      if (y > free) {
        continue;
      }
      free = y - 0.95 * ink.line();
      ink.hairline(a.getX(), y, a.getMaxX(), y);
      ink.plain(
          mark.words(),
          ink.palette.softInk(),
          a.getX() - ink.theme.px(6) - ink.width(mark.words()),
          y + 0.36 * ink.ascent());
    }
    ink.bold(up.title(), upInk, outer.getX() + ink.theme.px(3), a.getY() - ink.theme.px(7));
    across(a, across);
  }

  /** The axis below a plot. */
  void across(Rectangle2D a, ChartAxis across) {
    double base = a.getMaxY() + ink.theme.px(3) + ink.ascent();
    double free = Double.NEGATIVE_INFINITY;
    for (Mark mark : across.marks()) {
      double x = Math.rint(ChartInk.x(a, mark.at())) + 0.5;
      ink.g.setColor(ink.palette.hairline());
      ink.g.setStroke(new BasicStroke(1f));
      double tick = mark.words().isEmpty() ? ink.theme.px(2) : ink.theme.px(4);
      ink.g.draw(new Line2D.Double(x, a.getMaxY(), x, a.getMaxY() + tick));
      double left = x - ink.width(mark.words()) / 2;
      if (!mark.words().isEmpty() && left > free) {
        ink.plain(mark.words(), ink.palette.softInk(), left, base + ink.theme.px(1));
        free = left + ink.width(mark.words()) + ink.theme.px(6);
      }
    }
    if (base + ink.line() <= a.getMaxY() + 2 * ink.line() + ink.theme.px(6)) {
      ink.plain(
          across.title(),
          ink.palette.softInk(),
          a.getCenterX() - ink.width(across.title()) / 2,
          base + ink.line());
    }
    ink.hairline(a.getX(), a.getMaxY() + 0.5, a.getMaxX(), a.getMaxY() + 0.5);
  }
}
