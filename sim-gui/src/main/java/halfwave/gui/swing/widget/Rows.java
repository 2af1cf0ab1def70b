package halfwave.gui.swing.widget;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager2;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Things beside each other, in further rows where the width ends: nothing is ever out of reach. One
 * that is too long for a row of its own is as wide as the row.
 */
public final class Rows implements LayoutManager2 {

  /** Begins a group: it lies apart from what is before it, and a row ends there first. */
  public static final String GROUP = "group";

  private final int gap;
  private final int apart;

  /** What the first one needs at least, and takes the rest of its row from (px). */
  private final int firstLeast;

  private final Set<Component> begins = new HashSet<>();

  /**
   * A layout.
   *
   * @param gap between two of a group, and between rows (px)
   * @param apart between groups (px)
   * @param firstLeast 0: the first is like the others; otherwise its least width: it takes what is
   *     left of its row (px)
   */
  public Rows(int gap, int apart, int firstLeast) {
    this.gap = gap;
    this.apart = apart;
    this.firstLeast = firstLeast;
  }

  /** The width there will be: a bar at an edge is asked for its height before it gets its width. */
  private static int width(Container bar) {
    Container parent = bar.getParent();
    int outer = parent == null ? bar.getWidth() : parent.getWidth();
    return outer > 0 ? outer : Integer.MAX_VALUE / 2;
  }

  private int wanted(Container bar, Component c) {
    boolean first = firstLeast > 0 && bar.getComponent(0) == c;
    int least = c.isMinimumSizeSet() ? c.getMinimumSize().width : 0;
    return first ? firstLeast : Math.max(least, c.getPreferredSize().width);
  }

  private int before(Component c) {
    return begins.contains(c) ? apart : gap;
  }

  /** What stands in each row. */
  private List<List<Component>> rows(Container bar, int width) {
    List<List<Component>> rows = new ArrayList<>();
    List<Component> row = new ArrayList<>();
    int used = 0;
    for (List<Component> group : groups(bar)) {
      int whole = 0;
      for (Component c : group) {
        whole += wanted(bar, c) + (whole == 0 ? 0 : gap);
      }
      if (!row.isEmpty() && used + apart + whole > width) {
        rows.add(row);
        row = new ArrayList<>();
        used = 0;
      }
      for (Component c : group) {
        int more = wanted(bar, c) + (row.isEmpty() ? 0 : before(c));
        if (!row.isEmpty() && used + more > width) {
          rows.add(row);
          row = new ArrayList<>();
          used = 0;
          more = wanted(bar, c);
        }
        row.add(c);
        used += more;
      }
    }
    rows.add(row);
    return rows;
  }

  private List<List<Component>> groups(Container bar) {
    List<List<Component>> groups = new ArrayList<>();
    for (Component c : bar.getComponents()) {
      if (c.isVisible()) {
        if (groups.isEmpty() || begins.contains(c)) {
          groups.add(new ArrayList<>());
        }
        groups.get(groups.size() - 1).add(c);
      }
    }
    return groups;
  }

  /** Places all where they belong; the height that is used (px). */
  private int place(Container bar, int outer, boolean move) {
    Insets in = bar.getInsets();
    int width = outer - in.left - in.right;
    int y = in.top;
    for (List<Component> row : rows(bar, width)) {
      int used = 0;
      for (Component c : row) {
        used += wanted(bar, c) + (used == 0 ? 0 : before(c));
      }
      List<Rectangle> places = new ArrayList<>();
      int x = in.left;
      int high = 0;
      for (Component c : row) {
        boolean takesRest = firstLeast > 0 && bar.getComponent(0) == c;
        int wide =
            takesRest ? firstLeast + Math.max(0, width - used) : Math.min(width, wanted(bar, c));
        x += x == in.left ? 0 : before(c);
        int tall = c.getPreferredSize().height;
        if (takesRest) {
          // lines break at the width there is
          c.setSize(wide, Math.max(1, c.getHeight()));
          tall = c.getPreferredSize().height;
        }
        places.add(new Rectangle(x, y, wide, tall));
        x += wide;
        high = Math.max(high, tall);
      }
      for (int k = 0; move && k < row.size(); k++) {
        Rectangle at = places.get(k);
        at.y += (high - at.height) / 2;
        row.get(k).setBounds(at);
      }
      y += high + gap;
    }
    return y - gap + in.bottom;
  }

  @Override
  public Dimension preferredLayoutSize(Container bar) {
    int width = width(bar);
    return new Dimension(width, place(bar, width, false));
  }

  @Override
  public Dimension minimumLayoutSize(Container bar) {
    return new Dimension(0, preferredLayoutSize(bar).height);
  }

  @Override
  public Dimension maximumLayoutSize(Container bar) {
    return new Dimension(Integer.MAX_VALUE, preferredLayoutSize(bar).height);
  }

  @Override
  public void layoutContainer(Container bar) {
    place(bar, bar.getWidth(), true);
  }

  @Override
  public void addLayoutComponent(Component c, @Nullable Object constraint) {
    if (GROUP.equals(constraint)) {
      begins.add(c);
    }
  }

  @Override
  public void addLayoutComponent(String name, Component c) {
    addLayoutComponent(c, name);
  }

  @Override
  public void removeLayoutComponent(Component c) {
    begins.remove(c);
  }

  @Override
  public float getLayoutAlignmentX(Container bar) {
    return 0;
  }

  @Override
  public float getLayoutAlignmentY(Container bar) {
    return 0;
  }

  @Override
  public void invalidateLayout(Container bar) {
    // nothing is kept
  }
}
