package halfwave.gui.swing.desk;

import halfwave.diagnosis.Check;
import halfwave.grading.Routine;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.desk.DeskNumber;
import halfwave.gui.presentation.desk.RoutineDraft;
import halfwave.gui.presentation.desk.RoutineTables;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import halfwave.work.Repair;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** One step of an order of work; what is changed is kept at once. */
final class RoutineForm extends JPanel {

  private static final long serialVersionUID = 1L;
  private static final DeskNumber BELOW = new DeskNumber(0, 1000, false);

  private final transient Theme theme;
  private final transient Wording words;
  private final transient RoutineTables tables;
  private final transient Consumer<Routine.Step> kept;
  private final transient List<Check> checks = RoutineDraft.checks();
  private final JComboBox<String> check = new JComboBox<>();
  private final JComboBox<String> repair = new JComboBox<>();
  private final NumberField below;
  private final JLabel belowLabel;
  private final JLabel foundLabel;
  private final JPanel findings;
  private final transient Map<String, JCheckBox> found = new LinkedHashMap<>();
  private transient Routine.@Nullable Step shown;
  private transient @Nullable Check listed;
  private boolean showing;

  RoutineForm(Theme theme, Wording words, Consumer<Routine.Step> kept) {
    super(new MigLayout("insets 0, gap 8 6, fillx, hidemode 3, novisualpadding", "[][grow,fill]"));
    this.theme = theme;
    this.words = words;
    this.kept = kept;
    tables = new RoutineTables(words);
    setOpaque(false);
    // arrows go through the list, Enter takes
    check.putClientProperty("JComboBox.isTableCellEditor", true);
    repair.putClientProperty("JComboBox.isTableCellEditor", true);
    check.addItem(words.text("routine.no-check"));
    checks.forEach(c -> check.addItem(tables.name(c)));
    check.addActionListener(e -> changed(s -> RoutineDraft.withCheck(s, chosen())));
    repair.addItem(words.text("routine.no-repair"));
    for (Repair each : Repair.values()) {
      repair.addItem(words.heading(each));
    }
    repair.addActionListener(e -> changed(s -> RoutineDraft.withRepair(s, mended())));
    DeskRows.labelled(theme, words, this, "routine.check", check, "growx, wmin 0, wrap");
    DeskRows.labelled(theme, words, this, "routine.repair", repair, "growx, wmin 0, wrap");
    belowLabel = label("routine.below-amps");
    add(belowLabel);
    below =
        new NumberField(
            theme, words, "routine.below", BELOW, v -> changed(s -> RoutineDraft.withBelow(s, v)));
    belowLabel.setLabelFor(below);
    add(below, "growx 0, wrap, hmin " + theme.px(24) + "px");
    foundLabel = label("routine.found");
    add(foundLabel, "span 2, gaptop 4, wrap");
    findings = new JPanel(new MigLayout("insets 0, gap 2, fillx, novisualpadding", "[grow,fill]"));
    findings.setOpaque(false);
    add(findings, "span 2, growx, wmin 0");
    setVisible(false);
  }

  private JLabel label(String key) {
    return Lettering.label(words.text(key), theme.body(), theme.palette().ink());
  }

  private @Nullable Check chosen() {
    int index = check.getSelectedIndex() - 1;
    return index < 0 ? null : checks.get(index);
  }

  private @Nullable Repair mended() {
    int index = repair.getSelectedIndex() - 1;
    return index < 0 ? null : Repair.values()[index];
  }

  private void changed(UnaryOperator<Routine.Step> how) {
    Routine.Step step = shown;
    if (!showing && step != null) {
      kept.accept(how.apply(step));
    }
  }

  private void ticked() {
    Set<String> ids = new LinkedHashSet<>();
    found.forEach(
        (id, box) -> {
          if (box.isSelected()) {
            ids.add(id);
          }
        });
    changed(s -> RoutineDraft.withFound(s, ids));
  }

  /** Shows a step, or none. */
  void show(Routine.@Nullable Step step) {
    if (step == null) {
      shown = null;
      setVisible(false);
      return;
    }
    if (step.equals(shown)) {
      return;
    }
    showing = true;
    shown = step;
    setVisible(true);
    check.setSelectedIndex(step.check() == null ? 0 : checks.indexOf(step.check()) + 1);
    repair.setSelectedIndex(step.repair() == null ? 0 : step.repair().ordinal() + 1);
    boolean reads = RoutineDraft.reads(step);
    boolean decides = step.repair() != null;
    belowLabel.setVisible(reads && decides);
    below.setVisible(reads && decides);
    String key = RoutineDraft.readsCurrent(step) ? "routine.below-amps" : "routine.below-volts";
    belowLabel.setText(words.text(key));
    below.getAccessibleContext().setAccessibleName(words.text(key));
    below.anew(RoutineDraft.below(step));
    list(step.check());
    found.forEach((id, box) -> box.setSelected(step.found().contains(id)));
    foundLabel.setVisible(decides && !found.isEmpty());
    findings.setVisible(decides && !found.isEmpty());
    showing = false;
    revalidate();
  }

  private void list(@Nullable Check of) {
    if (of != null && of.equals(listed)) {
      return;
    }
    listed = of;
    findings.removeAll();
    found.clear();
    if (of == null) {
      return;
    }
    for (Enum<?> outcome : of.outcomes()) {
      JCheckBox box = new JCheckBox(words.heading(outcome));
      String id = RoutineTables.id(outcome);
      box.setName("routine.found-" + id);
      box.setOpaque(false);
      box.addActionListener(e -> ticked());
      found.put(id, box);
      findings.add(box, "growx, wmin 0, wrap, hmin " + theme.px(24) + "px");
    }
  }
}
