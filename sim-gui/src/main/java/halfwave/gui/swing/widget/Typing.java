package halfwave.gui.swing.widget;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;

/** Does something whenever the text of a field changes, whoever changed it. */
public final class Typing implements DocumentListener {

  private final Runnable typed;

  private Typing(Runnable typed) {
    this.typed = typed;
  }

  /** Hears a field. */
  public static void on(JTextComponent field, Runnable typed) {
    field.getDocument().addDocumentListener(new Typing(typed));
  }

  @Override
  public void insertUpdate(DocumentEvent e) {
    typed.run();
  }

  @Override
  public void removeUpdate(DocumentEvent e) {
    typed.run();
  }

  @Override
  public void changedUpdate(DocumentEvent e) {
    typed.run();
  }
}
