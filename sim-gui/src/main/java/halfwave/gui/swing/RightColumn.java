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

/** Panels one below the other that fill the height there is; with too little of it they scroll. */
final class RightColumn extends JPanel implements Scrollable {

  private static final long serialVersionUID = 1L;
  private static final int STEP = 24;

  RightColumn() {
    super(
        new MigLayout("insets 0, gap 10, fill, novisualpadding", "[grow,fill]", "[][][grow,fill]"));
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
    return STEP;
  }

  @Override
  public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
    return Math.max(STEP, visible.height - STEP);
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return true;
  }

  @Override
  public boolean getScrollableTracksViewportHeight() {
    return getParent() instanceof JViewport viewport
        && viewport.getHeight() >= getMinimumSize().height;
  }
}
