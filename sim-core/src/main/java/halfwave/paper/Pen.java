package halfwave.paper;

import halfwave.picture.Palette;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/** Writes and draws on a page; all places in its units. */
final class Pen {

  static final Color INK = Palette.PAPER.ink();
  static final Color SOFT_INK = Palette.PAPER.softInk();
  static final Color HAIRLINE = Palette.PAPER.hairline();
  static final Color ACCENT = Palette.PAPER.accent();
  static final Color VOLTS = Palette.PAPER.volts();
  static final Color DANGER = Palette.PAPER.danger();

  final Graphics2D g;

  Pen(Graphics2D g) {
    this.g = g;
  }

  /** Words that begin at a place on their base line. */
  void text(String text, Font font, Color colour, double x, double y) {
    g.setFont(font);
    g.setColor(colour);
    g.drawString(text, (float) x, (float) y);
  }

  /** Words that end there. */
  void textTo(String text, Font font, Color colour, double right, double y) {
    text(text, font, colour, right - Lines.width(text, font), y);
  }

  /** Words with their middle there. */
  void textAround(String text, Font font, Color colour, double middle, double y) {
    text(text, font, colour, middle - 0.5 * Lines.width(text, font), y);
  }

  void line(double x0, double y0, double x1, double y1, Color colour, double width) {
    draw(new Line2D.Double(x0, y0, x1, y1), colour, width);
  }

  void draw(Shape shape, Color colour, double width) {
    g.setColor(colour);
    g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
    g.draw(shape);
  }

  /** A line to cut along. */
  void dashed(Shape shape, Color colour, double width) {
    g.setColor(colour);
    float[] dashes = {4, 3};
    g.setStroke(
        new BasicStroke(
            (float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0));
    g.draw(shape);
  }

  void fill(Shape shape, Color colour) {
    g.setColor(colour);
    g.fill(shape);
  }

  static Shape plate(double x, double y, double width, double height) {
    return new RoundRectangle2D.Double(x, y, width, height, 6, 6);
  }

  /** A bar ruled with slanted lines: told from a full one without its colour. */
  void hatched(Rectangle2D bar, Color colour) {
    Graphics2D inside = (Graphics2D) g.create();
    inside.clip(bar);
    inside.setColor(colour);
    inside.setStroke(new BasicStroke(0.7f));
    double pitch = 3;
    for (double x = bar.getX() - bar.getHeight(); x < bar.getMaxX(); x += pitch) {
      inside.draw(new Line2D.Double(x, bar.getMaxY(), x + bar.getHeight(), bar.getY()));
    }
    inside.dispose();
    draw(bar, colour, 0.7);
  }
}
