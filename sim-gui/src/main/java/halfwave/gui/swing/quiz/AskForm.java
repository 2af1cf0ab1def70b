package halfwave.gui.swing.quiz;

import halfwave.diagnosis.Reasons;
import halfwave.fault.FaultGroup;
import halfwave.grading.Expectation;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.quiz.PracticeModel;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import halfwave.io.JsonValue;
import halfwave.quiz.Move;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** What a learner expects of a check, asked before it is done. */
final class AskForm extends JPanel {

  private static final long serialVersionUID = 1L;
  private static final int COLUMNS = 4;

  private final transient Wording words;
  private final transient PracticeModel model;
  private final JTextArea check;
  private final JComboBox<String> expected = new JComboBox<>();
  private final Map<FaultGroup, JCheckBox> groups = new EnumMap<>(FaultGroup.class);
  private transient List<Expectation> offered = List.of();
  private transient Move.@Nullable Checked shown;

  AskForm(Theme theme, Wording words, PracticeModel model) {
    super(
        new MigLayout(
            "insets 0, gap 8 4, fillx, hidemode 3, novisualpadding", "[][grow,fill][][]"));
    this.words = words;
    this.model = model;
    setOpaque(false);
    setVisible(false);
    var p = theme.palette();
    check = Lettering.paragraph("", theme.heading(), p.ink());
    check.setName("practice.check");
    add(check, "span, growx, wmin 0, wrap");
    JLabel label = Lettering.label(words.text("practice.expect"), theme.body(), p.ink());
    label.setLabelFor(expected);
    expected.setName("practice.expected");
    expected.getAccessibleContext().setAccessibleName(words.text("practice.expect"));
    add(label);
    add(expected, "wmin 0, hmin " + theme.px(24) + "px");
    add(Forms.button(words, "practice.answer", this::answer));
    add(Forms.button(words, "practice.other", model::dropAsked), "wrap");
    add(Lettering.label(words.text("practice.remain"), theme.body(), p.ink()), "top");
    JPanel boxes =
        new JPanel(
            new MigLayout("insets 0, gap 8 0, wrap " + COLUMNS + ", novisualpadding", "[][][][]"));
    boxes.setOpaque(false);
    for (FaultGroup group : FaultGroup.values()) {
      JCheckBox box = new JCheckBox(words.heading(group));
      box.setName("practice.remain." + JsonValue.spelling(group));
      box.setOpaque(false);
      groups.put(group, box);
      boxes.add(box, "hmin " + theme.px(24) + "px");
    }
    add(boxes, "span, wmin 0");
  }

  private void answer() {
    Set<FaultGroup> ticked = EnumSet.noneOf(FaultGroup.class);
    groups.forEach(
        (group, box) -> {
          if (box.isSelected()) {
            ticked.add(group);
          }
        });
    int at = expected.getSelectedIndex() - 1;
    model.answer(at < 0 ? null : offered.get(at), ticked);
  }

  void refresh() {
    Move.Checked asked = model.asked();
    setVisible(asked != null);
    if (asked == null || asked.equals(shown)) {
      shown = asked;
      return;
    }
    shown = asked;
    offered = Expectation.of(asked.check());
    check.setText(words.text("practice.ask", words.sentences().text(Reasons.name(asked.check()))));
    expected.removeAllItems();
    expected.addItem(words.text("practice.no-idea"));
    offered.forEach(e -> expected.addItem(Wording.capital(words.sentences().text(e.label()))));
    expected.requestFocusInWindow();
  }
}
