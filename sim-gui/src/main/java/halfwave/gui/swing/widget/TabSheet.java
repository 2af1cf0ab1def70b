package halfwave.gui.swing.widget;

import java.awt.LayoutManager;
import javax.swing.JPanel;

/** What lies under a tab. It is laid out while it is in front: breaking its lines costs time. */
public abstract class TabSheet extends JPanel {

  private static final long serialVersionUID = 1L;

  /** An empty one. */
  protected TabSheet(LayoutManager layout) {
    super(layout);
    setOpaque(false);
  }

  /** The tree below stays invalid, and is laid out when it comes to the front. */
  @Override
  protected void validateTree() {
    if (isVisible()) {
      super.validateTree();
    }
  }
}
