package halfwave.gui.swing;

import halfwave.gui.swing.widget.Theme;
import javax.swing.JLabel;

/**
 * The line at the foot of the window: what was done, or why something cannot be done. Only the
 * latter is in the colour of errors.
 */
final class Notice extends JLabel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private boolean refuses;

  Notice(Theme theme) {
    super(" ");
    this.theme = theme;
    setName("notice");
    setFont(theme.body());
  }

  /** Says what was done. */
  void tell(String text) {
    put(text, false);
  }

  /** Says why something cannot be done. */
  void refuse(String text) {
    put(text, true);
  }

  /** There is no refusal any more; what was done stays said. */
  void accept() {
    if (refuses) {
      tell(" ");
    }
  }

  private void put(String text, boolean refusal) {
    refuses = refusal;
    setForeground(refusal ? theme.palette().danger() : theme.palette().softInk());
    setText(text);
  }
}
