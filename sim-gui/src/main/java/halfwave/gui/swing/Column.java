package halfwave.gui.swing;

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
final class Column extends JPanel implements Scrollable {

  private static final long serialVersionUID = 1L;

  private final int step;
  private final boolean fills;

  Column(Theme theme) {
    this(theme, false, new MigLayout("insets 2 4 8 10, gap 4, fillx, hidemode 3", "[grow,fill]"));
  }

  private Column(Theme theme, boolean fills, MigLayout layout) {
    super(layout);
    this.fills = fills;
    step = theme.px(24);
    setOpaque(false);
  }

  /** One of plates, the last of which fills the height. */
  static Column filling(Theme theme) {
    return new Column(
        theme,
        true,
        new MigLayout("insets 0, gap 10, fill, novisualpadding", "[grow,fill]", "[][][grow,fill]"));
  }

  JScrollPane scrolled() {
    JScrollPane pane =
        new JScrollPane(
            this,
            ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
            ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
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
    return true;
  }

  @Override
  public boolean getScrollableTracksViewportHeight() {
    return fills
        && getParent() instanceof JViewport viewport
        && viewport.getHeight() >= getMinimumSize().height;
  }
}
