package halfwave.gui.swing.editor;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.editor.EditorModel;
import halfwave.gui.presentation.editor.EditorWords;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Plate;
import halfwave.gui.swing.widget.Rows;
import halfwave.gui.swing.widget.Theme;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import net.miginfocom.swing.MigLayout;

/**
 * The editor of demonstrations: steps beside the form of one of them, what to do, how it stands.
 */
final class EditorPanel extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient EditorModel model;
  private final StepsPanel steps;
  private final DraftForm form;
  private final JPanel languages = new JPanel();
  private final JLabel status;
  private final JLabel place;
  private final JProgressBar progress = new JProgressBar(0, 100);
  private final JButton save;
  private final JButton undo;
  private final JButton redo;
  private final JButton tryIt;
  private final JButton check;
  private final JButton cancel;

  /**
   * A panel.
   *
   * @param saver saves the draft
   * @param player shows the draft to a class
   */
  EditorPanel(Theme theme, Wording words, EditorModel model, Runnable saver, Runnable player) {
    super(new BorderLayout());
    this.theme = theme;
    this.words = words;
    this.model = model;
    var p = theme.palette();
    setBackground(p.ground());
    steps = new StepsPanel(theme, words, model);
    form = new DraftForm(theme, words, model);
    save = Forms.button(words, "editor.save", saver);
    undo = Forms.button(words, "bar.undo", "editor.undo-hint", model::undo);
    redo = Forms.button(words, "bar.redo", "editor.redo-hint", model::redo);
    tryIt = Forms.button(words, "editor.try", "editor.try-hint", player);
    check = Forms.button(words, "editor.check", "editor.check-hint", model::check);
    cancel = Forms.button(words, "file.cancel", model::cancelCheck);
    cancel.setName("editor.check-cancel");
    status = Lettering.label(" ", theme.body(), p.ink());
    status.setName("editor.status");
    place = Lettering.label(" ", theme.note(), p.softInk());
    place.setName("editor.file");
    progress.setName("editor.progress");
    progress.getAccessibleContext().setAccessibleName(words.text("editor.check"));
    add(head(), BorderLayout.NORTH);
    add(body(), BorderLayout.CENTER);
    add(foot(), BorderLayout.SOUTH);
    speak(0);
  }

  private JPanel head() {
    JPanel head = new JPanel(new Rows(theme.px(8), theme.px(20), 0));
    head.setOpaque(false);
    int side = theme.px(14);
    head.setBorder(BorderFactory.createEmptyBorder(theme.px(10), side, theme.px(4), side));
    head.add(save);
    head.add(undo);
    head.add(redo);
    JLabel label =
        Lettering.label(words.text("editor.languages"), theme.body(), theme.palette().ink());
    JComboBox<String> choice = new JComboBox<>();
    choice.addItem(words.text("editor.both"));
    DraftTexts.all().forEach(l -> choice.addItem(DraftTexts.name(l)));
    choice.setName("editor.languages");
    choice.addActionListener(e -> speak(choice.getSelectedIndex()));
    label.setLabelFor(choice);
    head.add(label, Rows.GROUP);
    head.add(choice);
    head.add(tryIt, Rows.GROUP);
    head.add(check);
    return head;
  }

  private JPanel body() {
    JPanel body =
        new JPanel(
            new MigLayout(
                "insets 4 14 4 14, gap 10, fill, novisualpadding",
                "[" + theme.px(250) + "px!,fill][grow,fill]",
                "[grow,fill]"));
    body.setOpaque(false);
    body.add(Plate.around(theme, words.text("editor.steps"), steps));
    Plate right = new Plate(theme, words.text("editor.form"));
    languages.setOpaque(false);
    right.add(languages, BorderLayout.NORTH);
    right.add(form, BorderLayout.CENTER);
    body.add(right, "wmin 0");
    return body;
  }

  private JPanel foot() {
    JPanel foot =
        new JPanel(
            new MigLayout("insets 2 18 8 18, gap 8, fillx, hidemode 3, novisualpadding", ""));
    foot.setOpaque(false);
    foot.add(status);
    foot.add(progress, "w " + theme.px(120) + "px!");
    foot.add(cancel);
    foot.add(place, "push, alignx right, wmin 0");
    foot.setPreferredSize(new Dimension(0, theme.px(42)));
    return foot;
  }

  private void speak(int choice) {
    List<Locale> all = DraftTexts.all();
    List<Locale> chosen = choice == 0 ? all : List.of(all.get(choice - 1));
    languages.removeAll();
    languages.setLayout(
        new MigLayout(
            "insets 0 4 4 10, gap 8, fillx, novisualpadding", DraftTexts.columns(chosen.size())));
    for (Locale language : chosen) {
      languages.add(
          Lettering.label(DraftTexts.name(language), theme.heading(), theme.palette().softInk()),
          "wmin 0");
    }
    languages.revalidate();
    form.speak(chosen);
  }

  /** The list of steps. */
  StepsPanel steps() {
    return steps;
  }

  /** Shows how the draft stands. */
  void refresh() {
    if (!model.open()) {
      return;
    }
    steps.refresh();
    form.refresh();
    boolean free = !model.bench().recording();
    undo.setEnabled(free && model.edits().mayUndo());
    redo.setEnabled(free && model.edits().mayRedo());
    tryIt.setEnabled(free && !model.sealed());
    boolean busy = model.checked().busy();
    check.setEnabled(!busy);
    cancel.setVisible(busy);
    progress.setVisible(busy);
    progress.setValue((int) (100 * model.checked().share()));
    String stopped =
        model.stopped().map(b -> EditorWords.blocked(b, model.draft(), words)).orElse("");
    String said =
        stopped.isEmpty() ? EditorWords.status(model.draft(), model.checked(), words) : stopped;
    status.setText(said.isEmpty() ? " " : said);
    status.setToolTipText(said.isEmpty() ? null : said);
    Path file = model.file();
    String name = file == null ? words.text("editor.no-file") : String.valueOf(file.getFileName());
    place.setText(model.edits().unsaved() ? words.text("editor.unsaved", name) : name);
    place.setToolTipText(file == null ? null : file.toString());
  }
}
