package halfwave.gui.swing;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** Binds keys to what they do. */
final class Keys {

  private Keys() {}

  /**
   * A key without others held.
   *
   * @param on whose key it is
   * @param when one of the conditions of {@link JComponent#getInputMap(int)}
   * @param code of {@link java.awt.event.KeyEvent}
   * @param action what it does
   */
  static void bind(JComponent on, int when, int code, Runnable action) {
    bind(on, when, KeyStroke.getKeyStroke(code, 0), action);
  }

  /** Any key. */
  static void bind(JComponent on, int when, KeyStroke stroke, Runnable action) {
    on.getInputMap(when).put(stroke, stroke);
    on.getActionMap().put(stroke, new Bound(action));
  }

  private static final class Bound extends AbstractAction {
    private static final long serialVersionUID = 1L;

    private final transient Runnable action;

    Bound(Runnable action) {
      this.action = action;
    }

    @Override
    public void actionPerformed(ActionEvent e) {
      action.run();
    }
  }
}
