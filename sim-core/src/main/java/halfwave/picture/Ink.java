package halfwave.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/**
 * A pen on a sheet: the few strokes and signs that everything is drawn with. Places and widths are
 * in units of the sheet.
 */
public final class Ink {

  /** Width of lines that only help, such as dimensions. */
  public static final float FINE = 0.8f;

  /** Width of outlines. */
  public static final float THIN = 1.2f;

  /** Width of wires. */
  public static final float WIRE = 1.7f;

  private final Graphics2D g;
  private final Palette palette;

  /** No line is finer than this. */
  private final double least;

  /**
   * A pen.
   *
   * @param g what it draws on
   * @param palette the colours
   * @param least no line is finer than this; zero lets all be as they are
   */
  public Ink(Graphics2D g, Palette palette, double least) {
    this.g = g;
    this.palette = palette;
    this.least = least;
  }

  /** What it draws on. */
  public Graphics2D graphics() {
    return g;
  }

  /** The colours. */
  public Palette palette() {
    return palette;
  }

  /** A colour that lets shine through what is under it (1); 0 for nothing of it, 1 for all. */
  public static Color faint(Color colour, double alpha) {
    return new Color(
        colour.getRed(),
        colour.getGreen(),
        colour.getBlue(),
        (int) Math.round(255 * PaperLook.share(alpha)));
  }

  private static Stroke round(double width) {
    return new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
  }

  /** Dashes and gaps of those lengths. */
  public static Stroke dashed(double width, float dash, float gap) {
    return new BasicStroke(
        (float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {dash, gap}, 0);
  }

  /** A line with round ends and corners. */
  public void line(Shape shape, Paint paint, double width) {
    line(shape, paint, round(width));
  }

  /** A line of another kind. */
  public void line(Shape shape, Paint paint, Stroke stroke) {
    g.setPaint(paint);
    g.setStroke(stroke instanceof BasicStroke line ? thickened(line) : stroke);
    g.draw(shape);
  }

  private Stroke thickened(BasicStroke line) {
    return line.getLineWidth() >= least
        ? line
        : new BasicStroke(
            (float) least,
            line.getEndCap(),
            line.getLineJoin(),
            line.getMiterLimit(),
            line.getDashArray(),
            line.getDashPhase());
  }

  /** A straight line. */
  public void line(double x0, double y0, double x1, double y1, Paint paint, double width) {
    line(new Line2D.Double(x0, y0, x1, y1), paint, width);
  }

  /** A surface without an outline. */
  public void fill(Shape shape, Paint paint) {
    g.setPaint(paint);
    g.fill(shape);
  }

  /** Filled, with an outline. */
  public void solid(Shape shape, Paint inside, Paint outline, double width) {
    fill(shape, inside);
    line(shape, outline, width);
  }

  /** Where wires join. */
  public void dot(Point2D at) {
    fill(disc(at, 3), palette.ink());
  }

  /** An end that can be clipped to. */
  public void ring(Point2D at, double radius) {
    solid(disc(at, radius), palette.sheet(), palette.ink(), THIN);
  }

  /** A circle. */
  public static Ellipse2D disc(Point2D middle, double radius) {
    return new Ellipse2D.Double(
        middle.getX() - radius, middle.getY() - radius, 2 * radius, 2 * radius);
  }

  /** A box with round corners. */
  public static Shape rounded(Rectangle2D box, double radius) {
    return new RoundRectangle2D.Double(
        box.getX(), box.getY(), box.getWidth(), box.getHeight(), 2 * radius, 2 * radius);
  }

  /** A resistance that stands upright, with its ends in the middle of its upper and lower edge. */
  public static Path2D zigzag(Rectangle2D box) {
    Path2D path = new Path2D.Double();
    double x = box.getCenterX();
    double half = 0.5 * box.getWidth();
    int teeth = 6;
    path.moveTo(x, box.getMinY());
    for (int k = 0; k < teeth; k++) {
      double y = box.getMinY() + (k + 0.5) / teeth * box.getHeight();
      path.lineTo(k % 2 == 0 ? x + half : x - half, y);
    }
    path.lineTo(x, box.getMaxY());
    return path;
  }

  /** A piece of chassis: a line, and slanted lines under it. */
  public void chassis(double from, double to, double y, double pitch) {
    line(from, y, to, y, palette.ink(), THIN);
    Path2D slants = new Path2D.Double();
    for (double x = from + pitch; x <= to; x += pitch) {
      slants.moveTo(x, y);
      slants.lineTo(x - 0.55 * pitch, y + 0.55 * pitch);
    }
    line(slants, palette.softInk(), new BasicStroke(FINE));
  }

  /** A dimension line with its end marks and, where they are wanted, its help lines. */
  public void dimension(double x0, double y0, double x1, double y1) {
    line(x0, y0, x1, y1, palette.softInk(), FINE);
    double length = Math.max(1e-9, Math.hypot(x1 - x0, y1 - y0));
    double across = 4 / length;
    double nx = -(y1 - y0) * across;
    double ny = (x1 - x0) * across;
    line(x0 - nx, y0 - ny, x0 + nx, y0 + ny, palette.softInk(), FINE);
    line(x1 - nx, y1 - ny, x1 + nx, y1 + ny, palette.softInk(), FINE);
  }

  /** A broad soft glow around a shape that is spoken about. */
  public void glow(Shape shape) {
    int[] widths = {20, 14, 9, 5};
    for (int width : widths) {
      line(shape, faint(palette.accent(), palette.dark() ? 0.15 : 0.11), width);
    }
    fill(shape, faint(palette.accent(), 0.12));
  }

  /** The outline of the part that the keyboard is on. */
  public void focus(Shape shape) {
    Rectangle2D b = shape.getBounds2D();
    Shape frame =
        rounded(
            new Rectangle2D.Double(b.getX() - 4, b.getY() - 4, b.getWidth() + 8, b.getHeight() + 8),
            6);
    line(frame, palette.sheet(), 4.4);
    line(frame, palette.accent(), 2.2);
  }
}
