package halfwave.gui.swing.lesson;

import halfwave.gui.presentation.Wording;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import halfwave.lesson.Demonstration;
import java.nio.file.Path;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The rows of the list from which a demonstration is chosen. */
final class LessonOffers {

  private LessonOffers() {}

  /** What to do, and what can be done besides. */
  static JPanel desk(Theme theme, Wording words, LessonDesk desk) {
    JPanel row =
        new JPanel(
            new MigLayout("insets 2 0 2 0, gap 6, fillx, novisualpadding", "[grow,fill][][]"));
    row.setOpaque(false);
    row.add(
        Lettering.paragraph(words.text("lesson.choose"), theme.note(), theme.palette().softInk()),
        "wmin 0");
    row.add(Forms.button(words, "lesson.open", "lesson.open-hint", desk::open));
    row.add(Forms.button(words, "lesson.new", "lesson.new-hint", desk::create));
    return row;
  }

  /** A shipped one. */
  static JPanel shipped(
      Theme theme, Wording words, LessonDesk desk, Demonstration demonstration, Runnable begin) {
    JPanel row =
        new JPanel(new MigLayout("insets 0, gap 6 0, fillx, novisualpadding", "[grow,fill][][]"));
    row.setOpaque(false);
    var p = theme.palette();
    String title = demonstration.title().in(words.locale());
    row.add(Lettering.paragraph(title, theme.heading(), p.ink()), "wmin 0");
    row.add(button(words, "lesson.begin", title, "lesson." + demonstration.name(), begin));
    row.add(
        button(
            words,
            "lesson.copy",
            title,
            "lesson.copy." + demonstration.name(),
            () -> desk.copy(demonstration)),
        "wrap");
    row.add(
        Lettering.paragraph(demonstration.about().in(words.locale()), theme.note(), p.ink()),
        "span, growx, wmin 0");
    return row;
  }

  /** A file of one's own. */
  static JPanel file(Theme theme, Wording words, LessonDesk desk, LessonDesk.Own own) {
    JPanel row =
        new JPanel(new MigLayout("insets 0, gap 6 4, fillx, novisualpadding", "[grow,fill][][]"));
    row.setOpaque(false);
    Path file = own.file();
    String title = own.title();
    String name = String.valueOf(file.getFileName());
    var label = Lettering.paragraph(title, theme.heading(), theme.palette().ink());
    label.setToolTipText(file.toString());
    row.add(label, "wmin 0");
    row.add(button(words, "lesson.begin", title, "lesson.file." + name, () -> desk.show(file)));
    row.add(button(words, "lesson.edit", title, "lesson.edit." + name, () -> desk.edit(file)));
    return row;
  }

  private static JButton button(
      Wording words, String key, String of, String name, Runnable action) {
    JButton button = Forms.button(words, key, action);
    button.setName(name);
    button.getAccessibleContext().setAccessibleName(button.getText() + ": " + of);
    return button;
  }
}
