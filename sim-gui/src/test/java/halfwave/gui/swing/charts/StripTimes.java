package halfwave.gui.swing.charts;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;

/** The marks of time on the timeline of a window: they are painted, and no components. */
public final class StripTimes {

  /** Words at a mark of time, from one place across to another (px). */
  public record Mark(String words, double left, double right) {}

  private StripTimes() {}

  /** Those that are seen, from left to right; only on the event thread. */
  public static List<Mark> in(Container window) {
    List<Mark> found = new ArrayList<>();
    for (Component c : window.getComponents()) {
      if (c instanceof StripCanvas strip) {
        strip.placed().forEach(p -> found.add(new Mark(p.words(), p.left(), p.right())));
      } else if (c instanceof Container inside) {
        found.addAll(in(inside));
      }
    }
    return found;
  }
}
