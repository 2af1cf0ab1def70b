package halfwave.gui.swing.evidence;

import halfwave.diagnosis.Check;
import halfwave.diagnosis.Entry;
import halfwave.diagnosis.Outcome;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.evidence.EvidenceModel;
import halfwave.gui.presentation.evidence.EvidenceView;
import halfwave.gui.presentation.evidence.EvidenceWords;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** Takes down what was found, or what was repaired. */
final class EvidenceForm extends JPanel {

  private static final long serialVersionUID = 1L;

  /** Something to choose, under its name. */
  private record Choice<T>(T value, String name) {
    @Override
    public String toString() {
      return name;
    }
  }

  private final transient Theme theme;
  private final transient Wording words;
  private final transient EvidenceModel model;
  private final JComboBox<Choice<Check>> checks = new JComboBox<>();
  private final JComboBox<Choice<Outcome>> outcomes = new JComboBox<>();
  private final JTextField reading = new JTextField();
  private final JLabel wrong;
  private final JComboBox<Choice<Repair>> repairs = new JComboBox<>();
  private final JComboBox<Choice<Entry.Result>> results = new JComboBox<>();
  private final JButton look;
  private transient List<Check> known = List.of();

  EvidenceForm(Theme theme, Wording words, EvidenceModel model) {
    super(new MigLayout("insets 0, gap 6, fillx, hidemode 3, novisualpadding", "[grow,fill]"));
    this.theme = theme;
    this.words = words;
    this.model = model;
    setOpaque(false);
    named(checks, "evidence.check");
    named(outcomes, "evidence.outcome");
    named(repairs, "evidence.repair");
    named(results, "evidence.result");
    reading.setName("evidence.reading");
    reading.getAccessibleContext().setAccessibleName(words.text("evidence.reading"));
    reading.setToolTipText(words.text("evidence.reading"));
    reading.addActionListener(e -> addFound());
    wrong = Lettering.label(" ", theme.note(), theme.palette().danger());
    wrong.setName("evidence.wrong");
    look = Forms.button(words, "evidence.look", "evidence.look-hint", this::look);
    add(
        Lettering.label(words.text("evidence.check"), theme.heading(), theme.palette().ink()),
        "split 2, growx");
    add(look, "growx 0, wrap");
    add(checks, "wmin 0, wrap");
    add(outcomes, "split 3, wmin 0, growx");
    add(reading, "wmin 0, growx");
    add(Forms.button(words, "evidence.add", this::addFound), "growx 0, wrap");
    add(wrong, "wmin 0, wrap");
    for (Repair repair : Repair.values()) {
      repairs.addItem(new Choice<>(repair, words.heading(repair)));
    }
    for (Entry.Result result : Entry.Result.values()) {
      results.addItem(new Choice<>(result, words.heading(result)));
    }
    checks.addActionListener(e -> chosen());
    wrong.setVisible(false);
  }

  private void named(JComboBox<?> box, String key) {
    box.setName(key);
    box.getAccessibleContext().setAccessibleName(words.text(key));
    box.setToolTipText(words.text(key));
  }

  /** What was repaired: it comes last, and so it stands last. */
  JPanel repairing() {
    JPanel panel =
        new JPanel(new MigLayout("insets 0, gap 6, fillx, novisualpadding", "[grow,fill][]"));
    panel.setOpaque(false);
    panel.add(
        Lettering.label(words.text("evidence.repair"), theme.heading(), theme.palette().ink()),
        "gaptop 8, span, wrap");
    panel.add(repairs, "wmin 0, span, wrap");
    panel.add(results, "wmin 0");
    panel.add(Forms.button(words, "evidence.add-repair", this::addRepair));
    return panel;
  }

  /** The checks follow the kind of bench. */
  void refresh() {
    if (!model.checks().equals(known)) {
      known = model.checks();
      checks.removeAllItems();
      known.forEach(c -> checks.addItem(new Choice<>(c, EvidenceView.name(c, words))));
    }
  }

  /** Chooses a check. */
  void choose(Check check) {
    int index = known.indexOf(check);
    if (index >= 0) {
      checks.setSelectedIndex(index);
      (check instanceof Check.Read ? reading : outcomes).requestFocusInWindow();
    }
  }

  private Optional<Check> check() {
    return Optional.ofNullable((Choice<?>) checks.getSelectedItem()).map(c -> (Check) c.value());
  }

  private void chosen() {
    List<Choice<Outcome>> choices = new ArrayList<>();
    check()
        .ifPresent(
            c ->
                EvidenceWords.outcomes(c, words)
                    .forEach((o, name) -> choices.add(new Choice<>(o, name))));
    outcomes.removeAllItems();
    choices.forEach(outcomes::addItem);
    boolean typed = check().filter(c -> c instanceof Check.Read).isPresent();
    outcomes.setVisible(!typed);
    reading.setVisible(typed);
    look.setEnabled(check().filter(c -> !(c instanceof Check.Call)).isPresent());
    tell("");
    revalidate();
  }

  private void tell(String text) {
    wrong.setText(text.isEmpty() ? " " : text);
    wrong.setVisible(!text.isEmpty());
  }

  private void addFound() {
    check().ifPresent(this::addFound);
  }

  private void addFound(Check check) {
    if (check instanceof Check.Read read) {
      EvidenceWords.Typed typed = EvidenceWords.typed(read, reading.getText(), words);
      tell(typed.refusal());
      if (typed.outcome() != null) {
        model.add(new Entry.Observed(check, typed.outcome()));
        reading.setText("");
      }
    } else if (outcomes.getSelectedItem() instanceof Choice<?> choice) {
      model.add(new Entry.Observed(check, (Outcome) choice.value()));
    }
  }

  private void look() {
    check().ifPresent(model::look);
  }

  private void addRepair() {
    if (repairs.getSelectedItem() instanceof Choice<?> repair
        && results.getSelectedItem() instanceof Choice<?> result) {
      model.add(new Entry.Repaired((Repair) repair.value(), (Entry.Result) result.value()));
    }
  }
}
