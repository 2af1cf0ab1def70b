package halfwave.gui.swing.lesson;

import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;

/** What a test of the whole window has to know about the picture on the wall. */
public final class OnWall {

  private OnWall() {}

  /** The picture, if it is there. */
  public static @Nullable JComponent picture(Projector projector) {
    return projector.panel();
  }

  /** What the remote's key for forward does. */
  public static void forward(Projector projector) {
    projector.forward();
  }
}
