package halfwave.gui.swing.lesson;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.util.function.Supplier;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/**
 * Keeps the keyboard in a panel that is filled anew: without it the focus falls to whatever comes
 * next in the window, and a key that was meant for the panel switches something there.
 */
final class FocusKeeper {

  private FocusKeeper() {}

  /**
   * Fills a panel anew. What had the keyboard has it again if there is one of its name, else what
   * is named here, else the first that can be used.
   */
  static void around(
      JComponent panel, Supplier<? extends @Nullable Component> otherwise, Runnable filling) {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    boolean within = owner != null && SwingUtilities.isDescendingFrom(owner, panel);
    filling.run();
    if (within && owner != null && !(owner.isShowing() && owner.isEnabled())) {
      String name = owner.getName();
      SwingUtilities.invokeLater(() -> give(panel, name, otherwise.get()));
    }
  }

  private static void give(JComponent panel, @Nullable String name, @Nullable Component otherwise) {
    Component to = name == null ? null : find(panel, name);
    to = to == null && otherwise != null && otherwise.isShowing() ? otherwise : to;
    to = to == null ? find(panel, null) : to;
    if (to != null) {
      to.requestFocusInWindow();
    }
  }

  /** The first that shows and takes keys, of that name if there is one. */
  private static @Nullable Component find(Container in, @Nullable String name) {
    for (Component c : in.getComponents()) {
      boolean acts = c instanceof AbstractButton || c instanceof JComboBox;
      if (acts && c.isShowing() && c.isEnabled() && (name == null || name.equals(c.getName()))) {
        return c;
      }
      Component within = c instanceof Container inner ? find(inner, name) : null;
      if (within != null) {
        return within;
      }
    }
    return null;
  }
}
