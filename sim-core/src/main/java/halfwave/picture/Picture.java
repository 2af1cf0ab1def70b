package halfwave.picture;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.function.Consumer;

/**
 * Something that paints itself in a rectangle of its own size, from the origin. Screen, printer and
 * files all take it as it is; none of them is known here.
 */
public interface Picture {

  /** Its width, in units of the drawing. */
  double width();

  /** Its height, in units of the drawing. */
  double height();

  /** Paints it. The graphics may be left in any state. */
  void paint(Graphics2D graphics);

  /** Lets everything be painted as smoothly as it gets. */
  static void smooth(Graphics2D g) {
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
  }

  /** A picture of a size. */
  static Picture of(double width, double height, Consumer<Graphics2D> painter) {
    if (!(width > 0 && height > 0)) {
      throw new IllegalArgumentException(
          "width, height = " + width + ", " + height + ": above zero");
    }
    return new Picture() {
      @Override
      public double width() {
        return width;
      }

      @Override
      public double height() {
        return height;
      }

      @Override
      public void paint(Graphics2D graphics) {
        painter.accept(graphics);
      }
    };
  }
}
