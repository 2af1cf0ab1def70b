package halfwave.gui.swing.quiz;

import halfwave.fault.FaultKind;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.quiz.ConclusionChoices;
import halfwave.gui.presentation.quiz.ConclusionChoices.Choice;
import halfwave.gui.presentation.quiz.VisitDraft;
import halfwave.gui.presentation.quiz.Visiting;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.FileQuestions;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import halfwave.quiz.Conclusion;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Visit;
import halfwave.work.FurnacePart;
import halfwave.work.Repair;
import java.util.List;
import java.util.Objects;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;

/** What was wrong, where, and what puts it right; handed in once and for all. */
final class ConcludeForm {

  private final Theme theme;
  private final Wording words;
  private final Visiting visiting;
  private final Column column;
  private final JComboBox<Choice<VisitDraft.Said>> cause = new JComboBox<>();
  private final JComboBox<Choice<FaultKind>> second = new JComboBox<>();
  private final JComboBox<Choice<FurnacePart>> place = new JComboBox<>();
  private final JComboBox<Choice<Repair>> repair = new JComboBox<>();
  private final JTextArea hint;
  private final JButton handIn;
  private @Nullable ServiceCall shownFor;
  private boolean showing;

  ConcludeForm(Theme theme, Wording words, Visiting visiting) {
    this.theme = theme;
    this.words = words;
    this.visiting = visiting;
    column = new Column(theme);
    hint = Lettering.paragraph("", theme.note(), theme.palette().softInk());
    hint.setName("visit.conclude-hint");
    column.add(hint, "growx, wmin 0, wrap");
    field("visit.cause", cause);
    field("visit.second", second);
    field("visit.place", place);
    field("visit.repair", repair);
    handIn = Forms.button(words, "visit.hand-in", "visit.hand-in-tip", this::handIn);
    column.add(Forms.row(handIn), "gaptop 8, wrap");
  }

  Column column() {
    return column;
  }

  private void field(String key, JComboBox<?> box) {
    box.setName(key);
    box.getAccessibleContext().setAccessibleName(words.text(key));
    box.setMaximumRowCount(18);
    box.addActionListener(e -> keep());
    JLabel label = Lettering.label(words.text(key), theme.body(), theme.palette().ink());
    label.setLabelFor(box);
    column.add(label, "gaptop 6, wmin 0, wrap");
    column.add(box, "growx, wmin 0, wrap, hmin " + theme.px(24) + "px");
  }

  private static <T> @Nullable T value(JComboBox<Choice<T>> box) {
    Object chosen = box.getSelectedItem();
    int at = box.getSelectedIndex();
    return chosen == null || at < 0 ? null : box.getItemAt(at).value();
  }

  private void keep() {
    if (!showing) {
      visiting.keep(
          visiting.draft().concluding(value(cause), value(second), value(place), value(repair)));
      free();
    }
  }

  private void handIn() {
    Conclusion conclusion = visiting.draft().conclusion();
    if (conclusion != null && sure()) {
      visiting.conclude(conclusion);
    }
  }

  private boolean sure() {
    return new FileQuestions(words)
        .agreed(
            column,
            words.text("visit.hand-in-sure"),
            words.text("visit.hand-in"),
            "visit.hand-in-now");
  }

  private void free() {
    boolean free = !visiting.busy() && !visiting.closed();
    for (JComboBox<?> box : List.of(cause, second, place, repair)) {
      box.setEnabled(free);
    }
    VisitDraft.Said first = value(cause);
    second.setEnabled(free && first != null && first.kind() != null);
    hint.setText(words.text(visiting.handedIn() ? "visit.concluded-hint" : "visit.conclude-hint"));
    handIn.setVisible(!visiting.handedIn());
    handIn.setEnabled(free && visiting.draft().conclusion() != null);
  }

  void refresh() {
    Visit visit = visiting.visit();
    if (visit == null) {
      return;
    }
    showing = true;
    ServiceCall call = visit.variant().call();
    if (!call.equals(shownFor)) {
      shownFor = call;
      ConclusionChoices choices = ConclusionChoices.of(call, words);
      fill(cause, choices.causes());
      fill(second, choices.seconds());
      fill(place, choices.places());
      fill(repair, choices.repairs());
    }
    VisitDraft draft = visiting.draft();
    choose(cause, draft.cause());
    choose(second, draft.second());
    choose(place, draft.place());
    choose(repair, draft.repair());
    showing = false;
    free();
  }

  private static <T> void fill(JComboBox<Choice<T>> box, List<Choice<T>> choices) {
    DefaultComboBoxModel<Choice<T>> model = new DefaultComboBoxModel<>();
    choices.forEach(model::addElement);
    box.setModel(model);
  }

  private static <T> void choose(JComboBox<Choice<T>> box, @Nullable T value) {
    for (int k = 0; k < box.getItemCount(); k++) {
      if (Objects.equals(box.getItemAt(k).value(), value) && box.getSelectedIndex() != k) {
        box.setSelectedIndex(k);
      }
    }
  }
}
