package halfwave.gui.swing.quiz;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.quiz.QuizModel;
import halfwave.gui.presentation.quiz.QuizStart;
import halfwave.gui.swing.widget.FileChoices;
import halfwave.gui.swing.widget.FileQuestions;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.QuietField;
import halfwave.gui.swing.widget.Theme;
import halfwave.gui.swing.widget.Typing;
import halfwave.quiz.Quiz;
import java.nio.file.Path;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** What is asked before a quiz begins: which one, who takes it, where the answer sheet goes. */
final class QuizStartForm extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient QuizModel model;
  private final JTextArea file;
  private final JTextArea about;
  private final QuietField learner = new QuietField();
  private final JComboBox<String> extra = new JComboBox<>();
  private final JTextArea sheet;
  private final JTextArea said;
  private final JButton open;
  private final JButton choose;
  private final JButton begin;
  private final transient FileChoices choices;
  private boolean showing;

  QuizStartForm(Theme theme, Wording words, QuizModel model, FileChoices choices) {
    super(
        new MigLayout(
            "insets 0, gap 8, fillx, hidemode 3, novisualpadding",
            "[][grow,fill,:" + theme.px(560) + "px:" + theme.px(560) + "px][][grow 1]"));
    this.theme = theme;
    this.words = words;
    this.model = model;
    this.choices = choices;
    setOpaque(false);
    var p = theme.palette();
    add(
        Lettering.paragraph(words.text("quiz.hint"), theme.body(), p.softInk()),
        "span 4, growx, wmin 0, wrap");
    file = value("quiz.file");
    open = Forms.button(words, "quiz.open", "quiz.open-tip", this::open);
    add(open, "wrap");
    about = Lettering.paragraph("", theme.body(), p.ink());
    about.setName("quiz.about");
    // it has its room before there is any: nothing below moves under the mouse
    about.setRows(6);
    add(about, "skip, growx, wmin 0, wrap");
    labelled("quiz.learner", learner);
    learner.setName("quiz.learner");
    learner.setToolTipText(words.text("quiz.learner-tip"));
    Typing.on(learner, this::keep);
    add(learner, "growx, wmin 0, wrap, hmin " + theme.px(24) + "px");
    labelled("quiz.extra", extra);
    extra.setName("quiz.extra");
    extra.setToolTipText(words.text("quiz.extra-tip"));
    for (int percent : QuizStart.EXTRA_PERCENTS) {
      extra.addItem(
          percent == 0 ? words.text("quiz.no-extra") : words.text("quiz.extra-percent", percent));
    }
    extra.addActionListener(e -> keep());
    add(extra, "growx 0, wrap, hmin " + theme.px(24) + "px");
    sheet = value("quiz.sheet");
    choose = Forms.button(words, "quiz.choose", "quiz.choose-tip", this::choose);
    add(choose, "wrap");
    add(
        Lettering.paragraph(words.text("quiz.sheet-hint"), theme.note(), p.softInk()),
        "skip, growx, wmin 0, wrap");
    begin = Forms.button(words, "quiz.begin", "quiz.begin-tip", model::begin);
    add(begin, "skip, growx 0, gaptop 10, wrap");
    said = Lettering.paragraph(" ", theme.body(), p.danger());
    said.setName("quiz.said");
    add(said, "span 4, growx, wmin 0");
  }

  private JTextArea value(String key) {
    JTextArea value = Lettering.paragraph("", theme.body(), theme.palette().ink());
    value.setName(key + "-path");
    labelled(key, value);
    add(value, "growx, wmin 0");
    return value;
  }

  private void labelled(String key, javax.swing.JComponent field) {
    JLabel label = Lettering.label(words.text(key), theme.body(), theme.palette().ink());
    label.setLabelFor(field);
    field.getAccessibleContext().setAccessibleName(words.text(key));
    add(label, "top");
  }

  private JFileChooser chooser(String title) {
    JFileChooser chooser = choices.chooser(words.text(title));
    chooser.setFileFilter(FileQuestions.filter(words.text("quiz.files")));
    return chooser;
  }

  private void open() {
    choices.toOpen(chooser("quiz.open-title"), this).ifPresent(model::open);
  }

  /** One that is there already is gone on with, if it is this learner's: nothing is lost by it. */
  private void choose() {
    JFileChooser chooser = chooser("quiz.choose-title");
    Quiz quiz = model.quiz();
    FileQuestions.suggest(chooser, model.start().sheetName(quiz == null ? "" : quiz.name()));
    choices
        .toSave(chooser, this)
        .map(FileQuestions::withEnding)
        .ifPresent(
            chosen -> {
              model.keep(model.start().withSheet(chosen));
              refresh();
            });
  }

  private void keep() {
    if (!showing) {
      model.keep(
          model
              .start()
              .withLearner(learner.getText())
              .withExtra(QuizStart.EXTRA_PERCENTS.get(Math.max(0, extra.getSelectedIndex()))));
      free();
    }
  }

  private void free() {
    QuizStart start = model.start();
    boolean free = !model.busy();
    open.setEnabled(free);
    choose.setEnabled(free);
    begin.setEnabled(
        free && model.quiz() != null && start.sheet() != null && !start.learner().isBlank());
  }

  void refresh() {
    showing = true;
    QuizStart start = model.start();
    file.setText(path(start.file()));
    sheet.setText(path(start.sheet()));
    if (!learner.getText().equals(start.learner())) {
      learner.setText(start.learner());
    }
    extra.setSelectedIndex(QuizStart.EXTRA_PERCENTS.indexOf(start.extraPercent()));
    showing = false;
    Quiz quiz = model.quiz();
    about.setText(quiz == null ? "" : QuizStart.about(quiz, words));
    String text = model.busy() ? words.text("visit.busy") : model.said(words);
    said.setText(text.isEmpty() ? " " : text);
    free();
    revalidate();
  }

  private String path(@Nullable Path path) {
    return path == null ? words.text("quiz.none") : String.valueOf(path);
  }
}
