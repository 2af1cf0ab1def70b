package halfwave.picture;

import java.awt.Graphics2D;
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
