package halfwave.gui.swing;

import java.awt.BorderLayout;
import java.util.Iterator;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;

/**
 * The place of a panel that lies under a tab. The panel is made when it is asked for or when there
 * is time, not before the window is seen.
 */
final class Late<P extends JComponent> extends TabSheet {

  private static final long serialVersionUID = 1L;

  /** Between two of them the hand comes first (ms). */
  private static final int PAUSE_MILLIS = 60;

  private final transient Supplier<P> maker;
  private @Nullable P panel;

  Late(Supplier<P> maker) {
    super(new BorderLayout());
    this.maker = maker;
  }

  /** The panel, made now if it was not yet. */
  P get() {
    P known = panel;
    if (known == null) {
      known = maker.get();
      panel = known;
      add(known, BorderLayout.CENTER);
      revalidate();
    }
    return known;
  }

  boolean made() {
    return panel != null;
  }

  /** Does something with the panel if it is there: one that is made later looks for itself. */
  void ifMade(Consumer<P> use) {
    P known = panel;
    if (known != null) {
      use.accept(known);
    }
  }

  /** Makes them one after the other while nothing else is to be done. */
  static void make(List<Late<?>> places) {
    Iterator<Late<?>> next = places.iterator();
    Timer timer = new Timer(PAUSE_MILLIS, null);
    timer.addActionListener(
        e -> {
          if (next.hasNext()) {
            next.next().get();
          } else {
            timer.stop();
          }
        });
    timer.start();
  }
}
