package halfwave.gui.swing.charts;

import halfwave.gui.presentation.charts.Trace;
import halfwave.gui.swing.widget.Theme;
import halfwave.picture.Palette;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.jspecify.annotations.Nullable;

/** A pen for charts: axes, curves and words, in the colours and type of the window. */
public final class ChartInk {

  /** A curve of the present bench is this wide, in pixels at 100 %. */
  static final double CURVE = 1.9;

  private static final double GHOST = 1.2;
  private static final double HATCH = 5;

  /** Where a curve is best named, as a share of the plot. */
  private static final double NAMED = 0.66;

  final Graphics2D g;
  final Theme theme;
  final Palette palette;
  private final FontMetrics metrics;

  ChartInk(Graphics2D g, Theme theme) {
    this.g = g;
    this.theme = theme;
    palette = theme.palette();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    metrics = g.getFontMetrics(theme.note());
  }

  /** Height of a line of notes. */
  double line() {
    return metrics.getHeight();
  }

  /** How far letters rise above their line. */
  double ascent() {
    return metrics.getAscent();
  }

  double width(String text) {
    return metrics.stringWidth(text);
  }

  double boldWidth(String text) {
    return g.getFontMetrics(theme.note().deriveFont(Font.BOLD)).stringWidth(text);
  }

  static double x(Rectangle2D a, double at) {
    return a.getX() + at * a.getWidth();
  }

  static double y(Rectangle2D a, double level) {
    return a.getMaxY() - level * a.getHeight();
  }

  void hairline(double x0, double y0, double x1, double y1) {
    g.setColor(palette.hairline());
    g.setStroke(new BasicStroke(1f));
    g.draw(new Line2D.Double(x0, y0, x1, y1));
  }

  /** The curve as a path; what is not there is left out. */
  public static Path2D path(Rectangle2D a, Trace trace) {
    Path2D path = new Path2D.Double();
    boolean on = false;
    for (int k = 0; k < trace.at().length; k++) {
      double y = y(a, trace.levels()[k]);
      if (Double.isNaN(y)) {
        on = false;
      } else if (on) {
        path.lineTo(x(a, trace.at()[k]), y);
      } else {
        path.moveTo(x(a, trace.at()[k]), y);
        on = true;
      }
    }
    return path;
  }

  void curve(Rectangle2D a, Trace trace, Color ink, Stroke stroke) {
    clipped(a, path(a, trace), ink, stroke);
  }

  void curve(Rectangle2D a, Trace trace, Color ink) {
    curve(a, trace, ink, solid(CURVE));
  }

  /** The healthy bench: thin and dashed. */
  void ghost(Rectangle2D a, Trace trace) {
    curve(a, trace, palette.softInk(), ghostStroke());
  }

  Stroke ghostStroke() {
    return dashed(GHOST, 5, 4);
  }

  Stroke solid(double width) {
    return new BasicStroke(
        (float) (width * theme.ratio()), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
  }

  Stroke dashed(double width, double dash, double gap) {
    float[] pattern = {(float) (dash * theme.ratio()), (float) (gap * theme.ratio())};
    return new BasicStroke(
        (float) (width * theme.ratio()),
        BasicStroke.CAP_BUTT,
        BasicStroke.JOIN_ROUND,
        1,
        pattern,
        0);
  }

  /** A line that ends with the plot. */
  void clipped(Rectangle2D a, Shape shape, Color ink, Stroke stroke) {
    Graphics2D inside = (Graphics2D) g.create();
    inside.clip(new Rectangle2D.Double(a.getX(), a.getY() - 2, a.getWidth(), a.getHeight() + 4));
    inside.setColor(ink);
    inside.setStroke(stroke);
    inside.draw(shape);
    inside.dispose();
  }

  /** A level line over the whole plot. */
  void level(Rectangle2D a, double level, Color ink, Stroke stroke) {
    double y = y(a, level);
    clipped(a, new Line2D.Double(a.getX(), y, a.getMaxX(), y), ink, stroke);
  }

  void hatch(Shape shape, Color ink) {
    Graphics2D inside = (Graphics2D) g.create();
    inside.clip(shape);
    inside.setColor(ink);
    inside.setStroke(new BasicStroke((float) (0.9 * theme.ratio())));
    Rectangle2D r = shape.getBounds2D();
    double pitch = HATCH * theme.ratio();
    // on a fixed grid, so that the lines stand still while the shape moves
    double first = Math.floor((r.getX() - r.getHeight()) / pitch) * pitch;
    for (double x = first; x < r.getMaxX(); x += pitch) {
      inside.draw(new Line2D.Double(x, r.getMaxY(), x + r.getHeight(), r.getY()));
    }
    inside.dispose();
  }

  void dot(double x, double y, Color ink) {
    double r = theme.px(4);
    g.setColor(palette.sheet());
    g.fill(new Ellipse2D.Double(x - r - 1.5, y - r - 1.5, 2 * r + 3, 2 * r + 3));
    g.setColor(ink);
    g.fill(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
  }

  void plain(String text, Color ink, double x, double y) {
    g.setFont(theme.note());
    g.setColor(ink);
    g.drawString(text, (float) x, (float) y);
  }

  void bold(String text, Color ink, double x, double y) {
    g.setFont(theme.note().deriveFont(Font.BOLD));
    g.setColor(ink);
    g.drawString(text, (float) x, (float) y);
  }

  /** Words on paper of their own, held within a frame; the place is the left of the base line. */
  void words(String text, Color ink, double x, double y, @Nullable Rectangle2D within) {
    double left = x;
    double base = y;
    if (within != null) {
      left = Math.max(within.getX() + 2, Math.min(left, within.getMaxX() - width(text) - 2));
      base =
          Math.max(
              within.getY() + metrics.getAscent(),
              Math.min(base, within.getMaxY() - metrics.getDescent()));
    }
    Font font = theme.note();
    Shape outline =
        font.createGlyphVector(g.getFontRenderContext(), text)
            .getOutline((float) left, (float) base);
    g.setColor(palette.sheet());
    g.setStroke(solid(4));
    g.draw(outline);
    plain(text, ink, left, base);
  }

  /** Names a curve where it is farthest from another. */
  void name(Rectangle2D a, Trace trace, @Nullable Trace from, String text, Color ink) {
    name(a, trace, from, text, ink, 1);
  }

  /** The same left of a place, 0 to 1. */
  void name(
      Rectangle2D a, Trace trace, @Nullable Trace from, String text, Color ink, double until) {
    int best = -1;
    double most = -1;
    double half = width(text) / 2 + theme.px(4);
    for (int k = 0; k < trace.at().length; k++) {
      double level = trace.levels()[k];
      double x = x(a, trace.at()[k]);
      boolean fits = x - half > a.getX() && x + half < x(a, until) && level >= 0 && level <= 1;
      boolean both = from != null && k < from.levels().length;
      double apart = both && from != null ? Math.abs(level - from.levels()[k]) : level;
      // where all places are as good, to the right of the middle
      double away = apart * (1 - 0.6 * Math.abs(trace.at()[k] - NAMED));
      if (fits && away > most) {
        most = away;
        best = k;
      }
    }
    if (best >= 0) {
      boolean above = from == null || trace.levels()[best] >= from.levels()[best];
      double y = y(a, trace.levels()[best]) + (above ? -theme.px(5) : theme.px(4) + line() * 0.7);
      words(text, ink, x(a, trace.at()[best]) - width(text) / 2, y, a);
    }
  }

  static Color faint(Color colour, double alpha) {
    return new Color(
        colour.getRed(), colour.getGreen(), colour.getBlue(), (int) Math.round(255 * alpha));
  }

  static Color mixed(Color a, Color b, double share) {
    double s = Math.max(0, Math.min(1, share));
    return new Color(
        (int) Math.round(a.getRed() + s * (b.getRed() - a.getRed())),
        (int) Math.round(a.getGreen() + s * (b.getGreen() - a.getGreen())),
        (int) Math.round(a.getBlue() + s * (b.getBlue() - a.getBlue())));
  }
}
