package halfwave.gui.swing.widget;

import halfwave.gui.presentation.Wording;
import java.awt.Insets;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Buttons of forms. */
public final class Forms {

  private Forms() {}

  /** A button with the words of a key, which is its name as well. */
  public static JButton button(Wording words, String key, Runnable action) {
    JButton button = new JButton(words.text(key));
    button.setName(key);
    button.addActionListener(e -> action.run());
    return button;
  }

  /** The same with a tip. */
  public static JButton button(Wording words, String key, String hintKey, Runnable action) {
    JButton button = button(words, key, action);
    button.setToolTipText(words.text(hintKey));
    return button;
  }

  /** Buttons beside each other, as wide as their words. */
  public static JPanel row(JButton... buttons) {
    JPanel row = new JPanel(new MigLayout("insets 0, gap 6, novisualpadding"));
    row.setOpaque(false);
    for (JButton button : buttons) {
      row.add(button);
    }
    return row;
  }

  /** Takes something away. */
  public static JButton remove(Theme theme, String label, Runnable action) {
    JButton button = new JButton("×");
    int pad = theme.px(6);
    button.setMargin(new Insets(theme.px(2), pad, theme.px(2), pad));
    button.setToolTipText(label);
    button.getAccessibleContext().setAccessibleName(label);
    button.addActionListener(e -> action.run());
    return button;
  }
}
