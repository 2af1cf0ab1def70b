package halfwave.gui.swing.quiz;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.quiz.PracticeModel;
import halfwave.gui.presentation.quiz.ProgressView;
import halfwave.gui.swing.desk.DeskFiles;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import halfwave.io.BadInputException;
import halfwave.quiz.Help;
import halfwave.quiz.Level;
import halfwave.quiz.Objective;
import halfwave.quiz.ServiceCall;
import java.nio.file.Path;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** Which call is practised, with how much help; and how far the learner has come. */
final class PracticeChoice {

  private final Theme theme;
  private final Wording words;
  private final PracticeModel model;
  private final Column column;
  private final JComboBox<String> objective;
  private final JComboBox<String> level;
  private final JComboBox<String> help;
  private final JPanel calls;
  private final JPanel progress = row("[grow,fill]");
  private final JTextArea said;
  private final DeskFiles files;
  private @Nullable ProgressView shown;
  private boolean showing;

  /**
   * The choice.
   *
   * @param files asks where what was practised goes
   * @param routines shows the instructor's own order of work
   */
  PracticeChoice(
      Theme theme, Wording words, PracticeModel model, DeskFiles files, Runnable routines) {
    this.theme = theme;
    this.words = words;
    this.model = model;
    this.files = files;
    column = new Column(theme);
    var p = theme.palette();
    column.add(
        Lettering.paragraph(words.text("practice.hint"), theme.body(), p.softInk()),
        "growx, wmin 0, wrap");
    JPanel filters = row("[][][][grow]");
    objective = box("practice.objective", "practice.any", Objective.values(), filters);
    level = box("practice.level", "practice.any", Level.values(), filters);
    help = box("practice.help", "practice.as-progress", Help.values(), filters);
    column.add(filters, "growx, wmin 0, gaptop 6, wrap");
    said = Lettering.paragraph(" ", theme.body(), p.danger());
    said.setName("practice.trouble");
    column.add(said, "growx, wmin 0, wrap");
    calls = row("[grow,fill,:" + theme.px(560) + "px:" + theme.px(560) + "px][][grow 1]");
    calls.setName("practice.calls");
    JPanel side = row("[grow,fill]");
    side.add(Lettering.label(words.text("practice.progress"), theme.heading(), p.ink()), "wrap");
    side.add(progress, "growx, wmin 0, wrap");
    side.add(
        Forms.row(Forms.button(words, "practice.export", "practice.export-tip", this::export)),
        "wrap");
    side.add(
        Lettering.label(words.text("routine.title"), theme.heading(), p.ink()), "gaptop 10, wrap");
    side.add(Forms.row(Forms.button(words, "routine.show", "routine.show-tip", routines)));
    JPanel both = row("[grow,fill][" + theme.px(360) + "px!,fill]");
    both.add(calls, "growx, wmin 0, top");
    both.add(side, "top");
    column.add(both, "growx, wmin 0, wrap");
  }

  private static JPanel row(String columns) {
    JPanel row =
        new JPanel(
            new MigLayout("insets 0, gap 10 3, fillx, hidemode 3, novisualpadding", columns));
    row.setOpaque(false);
    return row;
  }

  Column column() {
    return column;
  }

  private JComboBox<String> box(String key, String none, Enum<?>[] values, JPanel into) {
    JComboBox<String> box = new JComboBox<>();
    box.addItem(words.text(none));
    for (Enum<?> value : values) {
      box.addItem(words.heading(value));
    }
    box.setName(key);
    box.getAccessibleContext().setAccessibleName(words.text(key));
    box.setMaximumRowCount(12);
    box.addActionListener(e -> chosen());
    JLabel label = Lettering.label(words.text(key), theme.body(), theme.palette().ink());
    label.setLabelFor(box);
    JPanel both = row("[]");
    both.add(label, "wrap");
    both.add(box, "hmin " + theme.px(24) + "px");
    into.add(both, "growx 0");
    return box;
  }

  private static <E> @Nullable E at(E[] values, JComboBox<String> box) {
    int index = box.getSelectedIndex() - 1;
    return index < 0 ? null : values[index];
  }

  private void chosen() {
    if (!showing) {
      model.narrow(
          at(Objective.values(), objective), at(Level.values(), level), at(Help.values(), help));
    }
  }

  private void export() {
    files
        .own("practice.export-title", words.text("practice.files"), "practice.files")
        .ifPresent(this::export);
  }

  private void export(Path file) {
    try {
      model.export(file);
    } catch (BadInputException e) {
      JOptionPane.showMessageDialog(
          column,
          e.line(words.sentences()),
          words.text("practice.export-title"),
          JOptionPane.ERROR_MESSAGE);
    }
  }

  void refresh() {
    showing = true;
    objective.setSelectedIndex(model.objective() == null ? 0 : model.objective().ordinal() + 1);
    level.setSelectedIndex(model.level() == null ? 0 : model.level().ordinal() + 1);
    Help chosen = model.chosenHelp();
    help.setSelectedIndex(chosen == null ? 0 : chosen.ordinal() + 1);
    showing = false;
    String text = model.busy() ? words.text("visit.busy") : model.said(words);
    said.setText(text.isEmpty() ? " " : text);
    ProgressView view = ProgressView.of(model, words);
    if (!view.equals(shown)) {
      shown = view;
      show(view);
    }
  }

  private void show(ProgressView view) {
    var p = theme.palette();
    calls.removeAll();
    for (ProgressView.Row row : view.calls()) {
      ServiceCall call = row.call();
      calls.add(Lettering.paragraph(row.title(), theme.body(), p.ink()), "growx, wmin 0, gaptop 4");
      JButton begin = new JButton(words.text("practice.begin"));
      begin.setName("practice.begin." + call.name());
      begin
          .getAccessibleContext()
          .setAccessibleName(words.text("practice.begin") + ": " + row.title());
      begin.setEnabled(view.free());
      begin.addActionListener(e -> model.begin(call));
      calls.add(begin, "spany 2, top, wrap");
      calls.add(Lettering.paragraph(row.about(), theme.note(), p.softInk()), "growx, wmin 0, wrap");
    }
    progress.removeAll();
    for (String line : view.progress()) {
      progress.add(Lettering.paragraph(line, theme.body(), p.ink()), "growx, wmin 0, wrap");
    }
    column.revalidate();
    column.repaint();
  }
}
