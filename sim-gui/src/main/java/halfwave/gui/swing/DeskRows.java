package halfwave.gui.swing;

import halfwave.gui.presentation.Wording;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** Labelled fields of the instructor's desk. */
final class DeskRows {

  /** Least height of what is pointed at (px). */
  private static final int TARGET = 24;

  private DeskRows() {}

  /** A label and its field, which is named after the key. */
  static void labelled(
      Theme theme, Wording words, JPanel into, String key, JComponent field, String place) {
    JLabel label = Lettering.label(words.text(key), theme.body(), theme.palette().ink());
    label.setLabelFor(field);
    field.setName(key);
    field.getAccessibleContext().setAccessibleName(words.text(key));
    into.add(label);
    into.add(field, place + ", hmin " + theme.px(TARGET) + "px");
  }
}
