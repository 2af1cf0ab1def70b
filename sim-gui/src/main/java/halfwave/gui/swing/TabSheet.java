package halfwave.gui.swing;

import java.awt.LayoutManager;
import javax.swing.JPanel;

/** What lies under a tab. It is laid out while it is in front: breaking its lines costs time. */
abstract class TabSheet extends JPanel {

  private static final long serialVersionUID = 1L;

  TabSheet(LayoutManager layout) {
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
