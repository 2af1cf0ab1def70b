package halfwave.gui.swing.widget;

import java.awt.event.ActionEvent;
import java.util.function.BooleanSupplier;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** Binds keys to what they do. */
public final class Keys {

  private Keys() {}

  /**
   * A key without others held.
   *
   * @param on whose key it is
   * @param when one of the conditions of {@link JComponent#getInputMap(int)}
   * @param code of {@link java.awt.event.KeyEvent}
   * @param action what it does
   */
  public static void bind(JComponent on, int when, int code, Runnable action) {
    bind(on, when, KeyStroke.getKeyStroke(code, 0), action);
  }

  /** Any key. */
  public static void bind(JComponent on, int when, KeyStroke stroke, Runnable action) {
    bind(on, when, stroke, () -> true, action);
  }

  /** A key without others held, left to whoever else wants it while there is nothing to do. */
  public static void bind(
      JComponent on, int when, int code, BooleanSupplier wanted, Runnable action) {
    bind(on, when, KeyStroke.getKeyStroke(code, 0), wanted, action);
  }

  private static void bind(
      JComponent on, int when, KeyStroke stroke, BooleanSupplier wanted, Runnable action) {
    on.getInputMap(when).put(stroke, stroke);
    on.getActionMap().put(stroke, new Bound(wanted, action));
  }

  private static final class Bound extends AbstractAction {
    private static final long serialVersionUID = 1L;

    private final transient BooleanSupplier wanted;
    private final transient Runnable action;

    Bound(BooleanSupplier wanted, Runnable action) {
      this.wanted = wanted;
      this.action = action;
    }

    @Override
    public boolean accept(Object sender) {
      return wanted.getAsBoolean();
    }

    @Override
    public void actionPerformed(ActionEvent e) {
      action.run();
    }
  }
}
