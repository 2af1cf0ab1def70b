package halfwave.gui.swing;

import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import javax.swing.Scrollable;
import net.miginfocom.swing.MigLayout;

/** Things one below the other, as wide as there is room, scrolled up and down only. */
final class Column extends JPanel implements Scrollable {

  private static final long serialVersionUID = 1L;

  private final int step;

  Column(Theme theme) {
    super(new MigLayout("insets 2 4 8 10, gap 4, fillx, hidemode 3", "[grow,fill]"));
    step = theme.px(24);
    setOpaque(false);
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
    return false;
  }
}
