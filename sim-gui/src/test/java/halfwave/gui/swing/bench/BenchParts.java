package halfwave.gui.swing.bench;

import halfwave.picture.bench.BenchDrawing;
import java.awt.Component;
import org.jspecify.annotations.Nullable;

/** What a test of the whole window has to know about the panels of the bench. */
public final class BenchParts {

  private BenchParts() {}

  /** What is drawn just now. */
  public static @Nullable BenchDrawing drawing(DrawingPanel panel) {
    return panel.drawing();
  }

  /** Whether it is a slider of a number. */
  public static boolean slider(Component component) {
    return component instanceof KnobSlider;
  }
}
