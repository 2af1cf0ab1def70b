package halfwave.validation;

import halfwave.picture.Palette;
import halfwave.picture.Picture;
import halfwave.picture.Typeface;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.function.Consumer;

/** What all pictures of the report are drawn with. */
final class PlotPen {

  static final Palette COLOURS = Palette.PAPER;
  static final Font WORDS = Typeface.PLAIN.font(15);

  private final Graphics2D g;

  private PlotPen(Graphics2D g) {
    this.g = g;
  }

  static Picture picture(double width, double height, Consumer<PlotPen> painter) {
    return Picture.of(
        width,
        height,
        g -> {
          g.setColor(COLOURS.sheet());
          g.fill(new Rectangle2D.Double(0, 0, width, height));
          painter.accept(new PlotPen(g));
        });
  }

  void line(double x0, double y0, double x1, double y1, Color colour, double width) {
    draw(new Line2D.Double(x0, y0, x1, y1), colour, width);
  }

  void fill(double x, double y, double width, double height, Color colour) {
    g.setColor(colour);
    g.fill(new Rectangle2D.Double(x, y, width, height));
  }

  void dot(double x, double y, double radius, Color colour, boolean hollow) {
    Shape disc = new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    if (hollow) {
      g.setColor(COLOURS.sheet());
      g.fill(disc);
      draw(disc, colour, 1.6);
    } else {
      g.setColor(colour);
      g.fill(disc);
    }
  }

  private void draw(Shape shape, Color colour, double width) {
    g.setColor(colour);
    g.setStroke(new BasicStroke((float) width));
    g.draw(shape);
  }

  /** Words; the share says which part of their width lies left of the place. */
  void words(String words, double x, double y, double share, Color colour) {
    g.setFont(WORDS);
    g.setColor(colour);
    double width = WORDS.getStringBounds(words, g.getFontRenderContext()).getWidth();
    g.drawString(words, (float) (x - share * width), (float) y);
  }
}
