package halfwave.gui.swing;

import halfwave.gui.swing.widget.TabSheet;
import java.awt.BorderLayout;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
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

  /** The panel if it was made: one that is made later looks for itself. */
  Optional<P> made() {
    return Optional.ofNullable(panel);
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
