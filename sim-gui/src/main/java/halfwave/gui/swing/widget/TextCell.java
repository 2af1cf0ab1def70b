package halfwave.gui.swing.widget;

import java.awt.KeyboardFocusManager;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.function.Consumer;
import javax.swing.JTextArea;
import javax.swing.UIManager;

/** A text to be written, as high as it needs to be; the Tab key leaves it. */
public final class TextCell extends JTextArea {

  private static final long serialVersionUID = 1L;

  private boolean setting;

  /**
   * A cell.
   *
   * @param label what it is, in words
   * @param text what stands in it
   * @param rows so many rows it has at least
   * @param typed is told of every change by a hand
   */
  public TextCell(
      Theme theme, String name, String label, String text, int rows, Consumer<String> typed) {
    super(text);
    setName(name);
    setRows(rows);
    setLineWrap(true);
    setWrapStyleWord(true);
    setFont(theme.body());
    setForeground(theme.palette().ink());
    setBackground(theme.palette().sheet());
    setBorder(UIManager.getBorder("TextField.border"));
    setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
    setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
    getAccessibleContext().setAccessibleName(label);
    setToolTipText(label);
    // hears a hand, and not the program
    Typing.on(
        this,
        () -> {
          if (!setting) {
            typed.accept(getText());
          }
        });
    addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent e) {
            repaint();
          }

          @Override
          public void focusLost(FocusEvent e) {
            repaint();
          }
        });
  }

  /** Shows what the draft has, where that is something else than what was typed. */
  public void show(String text) {
    if (!text.equals(getText())) {
      int caret = getCaretPosition();
      setting = true;
      setText(text);
      setting = false;
      setCaretPosition(Math.min(caret, text.length()));
    }
  }
}
