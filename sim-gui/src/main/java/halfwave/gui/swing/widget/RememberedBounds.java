package halfwave.gui.swing.widget;

import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where a window was when it was closed, as far as there still is such a screen. */
public final class RememberedBounds {

  private RememberedBounds() {}

  /**
   * Where it opens.
   *
   * @param kept x, y, width and height, or null: in the middle of the screen
   * @param width there, where there is room (px)
   * @param height there, where there is room (px)
   */
  public static Rectangle of(@Nullable List<Integer> kept, int width, int height) {
    Rectangle screen = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
    if (kept != null) {
      Rectangle before = new Rectangle(kept.get(0), kept.get(1), kept.get(2), kept.get(3));
      if (screen.intersects(before)) {
        return before;
      }
    }
    int wide = Math.min(screen.width, width);
    int high = Math.min(screen.height, height);
    return new Rectangle(
        screen.x + (screen.width - wide) / 2, screen.y + (screen.height - high) / 2, wide, high);
  }

  /** As it is kept. */
  public static List<Integer> kept(Rectangle b) {
    return List.of(b.x, b.y, b.width, b.height);
  }
}
