package halfwave.gui.swing.editor;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.editor.EditorModel;
import halfwave.gui.presentation.editor.EditorWords;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Switch;
import halfwave.gui.swing.widget.Theme;
import halfwave.lesson.DraftPlace;
import halfwave.lesson.DraftQuestion;
import halfwave.lesson.DraftStep;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The question of a step and its answers. */
final class QuestionForm extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient EditorModel model;

  QuestionForm(Theme theme, Wording words, EditorModel model, DraftTexts texts) {
    super(new MigLayout("insets 0, gap 6 6, fillx, novisualpadding", "[grow,fill]"));
    this.theme = theme;
    this.words = words;
    this.model = model;
    setOpaque(false);
    DraftQuestion question = step().question();
    JCheckBox asks = new Switch(theme, words.text("editor.asks"));
    asks.setName("editor.asks");
    asks.setSelected(question != null);
    asks.addActionListener(e -> change(asks.isSelected() ? DraftQuestion.EMPTY : null));
    add(asks, "growx 0, wrap");
    if (question == null) {
      return;
    }
    add(
        texts.row(DraftPlace.of(model.step(), DraftPlace.Field.ASK), words.text("editor.ask"), 1),
        "wmin 0, wrap");
    for (int k = 0; k < question.answers().size(); k++) {
      add(answer(question, k, texts), "wmin 0, wrap");
    }
    JButton more = Forms.button(words, "editor.answer-add", () -> change(question.grown()));
    more.setEnabled(question.mayGrow());
    add(more, "growx 0");
  }

  private JPanel answer(DraftQuestion question, int index, DraftTexts texts) {
    JPanel row =
        new JPanel(new MigLayout("insets 0, gap 6 2, fillx, novisualpadding", "[][grow,fill][]"));
    row.setOpaque(false);
    String letter = EditorWords.letter(index);
    String name = words.text("editor.answer", letter);
    JRadioButton right = new JRadioButton(words.text("editor.right", letter));
    right.setOpaque(false);
    right.setName("editor.right." + letter);
    right.setSelected(index == question.right());
    right.setToolTipText(words.text("editor.right-hint", letter));
    right.addActionListener(e -> change(question.withRight(index)));
    row.add(right);
    JButton up = mover(question, index, -1, name);
    JButton remove =
        Forms.remove(
            theme, words.text("editor.remove", name), () -> change(question.without(index)));
    remove.setName("answer.remove." + letter);
    remove.setEnabled(question.mayShrink());
    row.add(up, "split 3, alignx right, growx 0, gapleft push");
    row.add(mover(question, index, 1, name), "growx 0");
    row.add(remove, "growx 0, wrap");
    row.add(
        texts.cells(DraftPlace.answer(model.step(), index), name, 1), "span, wmin 0, growx, wrap");
    row.add(new ClaimsForm(theme, words, model, index), "span, wmin 0, growx, gapleft 20");
    return row;
  }

  private JButton mover(DraftQuestion question, int index, int by, String name) {
    JButton button =
        Forms.remove(
            theme,
            words.text(by < 0 ? "editor.up-name" : "editor.down-name", name),
            () -> change(question.moved(index, index + by)));
    button.setText(by < 0 ? "↑" : "↓");
    button.setName((by < 0 ? "answer.up." : "answer.down.") + EditorWords.letter(index));
    int to = index + by;
    button.setEnabled(to >= 0 && to < question.answers().size());
    return button;
  }

  private DraftStep step() {
    return model.draft().steps().get(model.step());
  }

  private void change(@Nullable DraftQuestion question) {
    model.change(model.draft().with(model.step(), step().with(question)), model.step(), null);
  }
}
