package halfwave.gui.swing.desk;

import halfwave.grading.Criterion;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.desk.DeskDraft;
import halfwave.gui.presentation.desk.DeskModel;
import halfwave.gui.presentation.desk.DeskNumber;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.QuietField;
import halfwave.gui.swing.widget.Says;
import halfwave.gui.swing.widget.Theme;
import halfwave.gui.swing.widget.Typing;
import halfwave.io.JsonValue;
import halfwave.quiz.Rules;
import halfwave.quiz.Weights;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleConsumer;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What holds for a quiz as a whole. */
final class DeskSettingsForm extends JPanel {

  private static final long serialVersionUID = 1L;
  private static final DeskNumber SEED = new DeskNumber(0, 999_999_999, true);
  private static final DeskNumber PERCENT = new DeskNumber(0, 100, false);
  private static final DeskNumber WALL = new DeskNumber(0, Rules.MOST_MINUTES, false);
  private final transient Theme theme;
  private final transient Wording words;
  private final transient DeskModel model;
  private final QuietField name = new QuietField();
  private final QuietField english = new QuietField();
  private final QuietField spanish = new QuietField();
  private final NumberField seed;
  private final NumberField pass;
  private final NumberField wall;
  private final JCheckBox hints;
  private final List<NumberField> weights = new ArrayList<>();
  private boolean showing;

  DeskSettingsForm(Theme theme, Wording words, DeskModel model) {
    super(new MigLayout("insets 0, gap 8 6, fillx, novisualpadding", "[][grow,fill]"));
    this.theme = theme;
    this.words = words;
    this.model = model;
    setOpaque(false);
    text("desk.name", name);
    text("desk.title-english", english);
    text("desk.title-spanish", spanish);
    needed(name, "desk.needs-name");
    needed(english, "desk.needs-title");
    seed = number("desk.seed", SEED, v -> keep(d -> d.withSeed(Math.round(v))));
    seed.setToolTipText(words.text("desk.seed-tip") + ' ' + seed.getToolTipText());
    pass = number("desk.pass", PERCENT, v -> keep(d -> d.withPassRatio(v / 100)));
    wall = number("desk.wall", WALL, v -> keep(d -> d.withRules(new Rules(v, d.rules().hints()))));
    hints = new JCheckBox(words.text("desk.hints"));
    hints.setName("desk.hints");
    hints.addActionListener(
        e -> keep(d -> d.withRules(new Rules(d.rules().wallMinutes(), hints.isSelected()))));
    // beside the longest name it has no room in large type
    add(hints, "span 2, growx 0, wrap, hmin " + theme.px(24) + "px");
    add(
        Lettering.label(words.text("desk.weights"), theme.heading(), theme.palette().ink()),
        "span 2, gaptop 8, wrap");
    for (Criterion criterion : Criterion.values()) {
      String key = "desk.weight-" + JsonValue.spelling(criterion);
      String label = words.heading(criterion);
      NumberField field = new NumberField(theme, words, key, label, PERCENT, v -> weighed());
      DeskRows.labelled(theme, label, this, key, field, "growx 0, wrap");
      weights.add(field);
    }
  }

  private void text(String key, QuietField field) {
    DeskRows.labelled(theme, words, this, key, field, "wmin 0, wrap");
    Typing.on(field, this::typed);
  }

  /** What was left blank is not kept: what is kept stands there again, and that is said. */
  private void needed(QuietField field, String key) {
    field.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent e) {
            if (field.getText().isBlank()) {
              refresh();
              Says.beside(field, theme, words.text(key));
            }
          }
        });
  }

  private NumberField number(String key, DeskNumber range, DoubleConsumer kept) {
    NumberField field = new NumberField(theme, words, key, range, kept);
    DeskRows.labelled(theme, words, this, key, field, "growx 0, wrap");
    return field;
  }

  private void keep(UnaryOperator<DeskDraft> how) {
    DeskDraft draft = model.state().draft();
    if (!showing && draft != null) {
      model.keep(how.apply(draft));
    }
  }

  private void weighed() {
    if (counted()) {
      double[] w = points();
      keep(d -> d.withWeights(new Weights(w[0], w[1], w[2], w[3], w[4], w[5])));
    }
  }

  private double[] points() {
    return weights.stream().mapToDouble(NumberField::number).toArray();
  }

  private boolean counts() {
    return Arrays.stream(points()).sum() > 0;
  }

  /** Whether any mark counts; where none does, that is said beside them. */
  private boolean counted() {
    if (!counts()) {
      Says.beside(weights.get(0), theme, words.text("desk.weights-nothing"));
    }
    return counts();
  }

  /** A quiz has a name and an English title: what is blank is not kept. */
  private void typed() {
    if (!name.getText().isBlank()) {
      keep(d -> d.withName(name.getText().strip()));
    }
    if (!english.getText().isBlank()) {
      keep(d -> d.withTitle(english.getText(), spanish.getText()));
    }
  }

  private Stream<NumberField> numbers() {
    return Stream.concat(Stream.of(seed, pass, wall), weights.stream());
  }

  /** Whether a number is not allowed, or no mark counts. */
  boolean wrong() {
    return numbers().anyMatch(NumberField::wrong) || !counts();
  }

  /** Whether every number is allowed and some mark counts; what is wrong says so. */
  boolean right() {
    return numbers().allMatch(NumberField::right) && counted();
  }

  /** Another quiz comes: what is wrong in a field goes with the old one. */
  void forget() {
    numbers().forEach(NumberField::forget);
  }

  /** Shows the quiz, whatever is being typed. */
  void anew() {
    forget();
    refresh();
    DeskDraft draft = model.state().draft();
    if (draft != null) {
      showing = true;
      name.setText(draft.name());
      english.setText(title(draft, "en"));
      spanish.setText(title(draft, "es"));
      showing = false;
    }
  }

  private static String title(DeskDraft draft, String language) {
    return draft.title().texts().getOrDefault(language, "");
  }

  void refresh() {
    DeskDraft draft = model.state().draft();
    if (draft == null) {
      return;
    }
    showing = true;
    show(name, draft.name());
    show(english, title(draft, "en"));
    show(spanish, title(draft, "es"));
    seed.put(draft.seed());
    pass.put(DeskNumber.percent(draft.passRatio()));
    wall.put(draft.rules().wallMinutes());
    hints.setSelected(draft.rules().hints());
    for (Criterion criterion : Criterion.values()) {
      weights.get(criterion.ordinal()).put(criterion.weight(draft.weights()));
    }
    showing = false;
  }

  /** Whoever types is not disturbed. */
  private static void show(QuietField field, String text) {
    if (!field.isFocusOwner() && !field.getText().equals(text)) {
      field.setText(text);
    }
  }
}
