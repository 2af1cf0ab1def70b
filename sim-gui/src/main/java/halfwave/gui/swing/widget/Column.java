package halfwave.gui.swing.widget;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import javax.swing.ScrollPaneConstants;
import javax.swing.Scrollable;
import net.miginfocom.swing.MigLayout;

/**
 * Things one below the other, as wide as there is room, scrolled up and down only. One that fills
 * takes all the height there is, and scrolls only where that is too little.
 */
public final class Column extends JPanel implements Scrollable {

  private static final long serialVersionUID = 1L;

  private final int step;
  private final boolean fills;
  private boolean sideways;
  private boolean breaking;
  private int brokenWidth;

  /** One of rows. */
  public Column(Theme theme) {
    this(theme, false, new MigLayout("insets 0, gap 4, fillx, hidemode 3", "[grow,fill]"));
    setBorder(BorderFactory.createEmptyBorder(theme.px(2), theme.px(4), theme.px(8), theme.px(10)));
  }

  private Column(Theme theme, boolean fills, MigLayout layout) {
    super(layout);
    this.fills = fills;
    step = theme.px(24);
    setOpaque(false);
  }

  /** One of plates, of which one is to be pushed to fill the height. */
  public static Column filling(Theme theme) {
    return new Column(
        theme, true, new MigLayout("insets 0, gap 10, fill, novisualpadding", "[grow,fill]"));
  }

  /** One for a form, whose names and fields can be wider than there is room in large type. */
  public static Column sideways(Theme theme) {
    Column column = new Column(theme);
    column.sideways = true;
    return column;
  }

  @Override
  public void invalidate() {
    if (!breaking) {
      super.invalidate();
    }
  }

  @Override
  public Dimension getPreferredSize() {
    breakLines();
    Dimension wanted = super.getPreferredSize();
    // what is scrolled sideways is as wide as it has to be, no wider
    return sideways && getParent() instanceof JViewport
        ? new Dimension(seenWidth(), wanted.height)
        : wanted;
  }

  @Override
  public void doLayout() {
    breakLines();
    super.doLayout();
  }

  /**
   * Lines break at the width there is, and only then a row has a height. A layout that asks for
   * heights first would need as many passes as there are rows, and leave the list scrolled.
   */
  private void breakLines() {
    int outer = getParent() instanceof JViewport ? seenWidth() : getWidth();
    int width = outer - getInsets().left - getInsets().right;
    if (fills || breaking || width <= 0) {
      return;
    }
    if (width != brokenWidth) {
      brokenWidth = width;
      super.invalidate();
    }
    breaking = true;
    try {
      for (Component row : getComponents()) {
        if (row.getWidth() != width || !row.isValid()) {
          row.setSize(width, Math.max(1, row.getHeight()));
          lay(row);
        }
      }
    } finally {
      breaking = false;
    }
  }

  /** As wide as it is seen, or as wide as it has to be: then it is scrolled sideways as well. */
  private int seenWidth() {
    int seen = getParent() instanceof JViewport viewport ? viewport.getWidth() : getWidth();
    return sideways ? Math.max(seen, getMinimumSize().width) : seen;
  }

  /** Gives all that is inside its width; the heights that follow are asked for afterwards. */
  private static void lay(Component row) {
    if (row instanceof JPanel box) {
      box.doLayout();
      for (Component inside : box.getComponents()) {
        lay(inside);
      }
      box.invalidate();
    }
  }

  /** The column in what scrolls it. */
  public JScrollPane scrolled() {
    JScrollPane pane =
        new JScrollPane(
            this,
            ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
            sideways
                ? ScrollPaneConstants.HORIZONTAL_SCROLLBAR_AS_NEEDED
                : ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
    pane.setBorder(BorderFactory.createEmptyBorder());
    pane.setOpaque(false);
    pane.getViewport().setOpaque(false);
    return pane;
  }

  @Override
  public Dimension getPreferredScrollableViewportSize() {
    return getPreferredSize();
  }

  @Override
  public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
    return step;
  }

  @Override
  public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
    return Math.max(step, visible.height - step);
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return !(getParent() instanceof JViewport viewport) || seenWidth() <= viewport.getWidth();
  }

  @Override
  public boolean getScrollableTracksViewportHeight() {
    return fills
        && getParent() instanceof JViewport viewport
        && viewport.getHeight() >= getMinimumSize().height;
  }
}
