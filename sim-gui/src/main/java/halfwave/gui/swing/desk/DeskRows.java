package halfwave.gui.swing.desk;

import halfwave.gui.presentation.Wording;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
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
    labelled(theme, words.text(key), into, key, field, place);
  }

  /** The same with a label that is no word of the window. */
  static void labelled(
      Theme theme, String text, JPanel into, String name, JComponent field, String place) {
    JLabel label = Lettering.label(text, theme.body(), theme.palette().ink());
    label.setLabelFor(field);
    field.setName(name);
    field.getAccessibleContext().setAccessibleName(text);
    into.add(label);
    into.add(field, place + ", hmin " + theme.px(TARGET) + "px");
  }
}
