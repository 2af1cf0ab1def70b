package halfwave.gui.swing;

import halfwave.gui.swing.widget.Theme;
import halfwave.picture.Picture;
import java.lang.reflect.InvocationTargetException;
import javax.swing.SwingUtilities;

/** Lets a picture of a panel be taken by a thread that writes or prints it. */
final class EventThread {

  private EventThread() {}

  /** The same picture, painted on the event thread and in the colours of paper. */
  static Picture painted(Picture picture, Theme theme) {
    return Picture.of(
        picture.width(), picture.height(), g -> run(() -> theme.onPaper(() -> picture.paint(g))));
  }

  private static void run(Runnable painting) {
    if (SwingUtilities.isEventDispatchThread()) {
      painting.run();
      return;
    }
    try {
      SwingUtilities.invokeAndWait(painting);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (InvocationTargetException e) {
      throw new IllegalStateException(e.getCause());
    }
  }
}
