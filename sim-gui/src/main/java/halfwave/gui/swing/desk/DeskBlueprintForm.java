package halfwave.gui.swing.desk;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.desk.DeskDraft;
import halfwave.gui.presentation.desk.DeskModel;
import halfwave.gui.presentation.desk.DeskNumber;
import halfwave.gui.presentation.desk.DeskTables;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import halfwave.quiz.Assembly;
import halfwave.quiz.BlueprintRow;
import halfwave.quiz.Level;
import halfwave.quiz.Objective;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** How much of a quiz is about what, and the draw that follows it. */
final class DeskBlueprintForm extends JPanel {

  private static final long serialVersionUID = 1L;
  private static final DeskNumber COUNT = new DeskNumber(1, 50, true);
  private static final DeskNumber WEIGHT = new DeskNumber(0.1, 100, false);

  private final transient DeskModel model;
  private final transient DeskTables tables;
  private final JComboBox<String> objective = new JComboBox<>();
  private final JComboBox<String> level = new JComboBox<>();
  private final NumberField count;
  private final NumberField weight;
  private final DeskTable rows;
  private final JButton remove;
  private final JButton draw;

  DeskBlueprintForm(Theme theme, Wording words, DeskModel model) {
    super(
        new MigLayout(
            "insets 0, gap 8 6, fill, novisualpadding",
            "[][grow,fill]",
            "[][][][][][][grow,fill][]"));
    this.model = model;
    tables = new DeskTables(words);
    setOpaque(false);
    add(
        Lettering.paragraph(
            words.text("desk.blueprint-hint"), theme.body(), theme.palette().softInk()),
        "span 2, growx, wmin 0, wrap");
    for (Objective each : Objective.values()) {
      objective.addItem(words.heading(each));
    }
    for (Level each : Level.values()) {
      level.addItem(words.heading(each));
    }
    DeskRows.labelled(theme, words, this, "desk.row-objective", objective, "wmin 0, wrap");
    DeskRows.labelled(theme, words, this, "desk.row-level", level, "wmin 0, wrap");
    count = new NumberField(theme, words, "desk.row-count", COUNT, v -> {});
    count.put(1);
    weight = new NumberField(theme, words, "desk.row-weight", WEIGHT, v -> {});
    weight.put(1);
    DeskRows.labelled(theme, words, this, "desk.row-count", count, "growx 0, wrap");
    DeskRows.labelled(theme, words, this, "desk.row-weight", weight, "growx 0, wrap");
    JButton add = Forms.button(words, "desk.add-row", "desk.add-row-tip", this::add);
    remove = Forms.button(words, "desk.remove-row", "desk.remove-row-tip", this::remove);
    add(Forms.row(add, remove), "span 2, wrap");
    rows = new DeskTable(theme, "desk.blueprint", words.text("desk.blueprint"), this::free);
    add(rows.scrolled(), "span 2, grow, wmin 0, h " + theme.px(230) + "px, wrap");
    draw = Forms.button(words, "desk.draw", "desk.draw-tip", model::draw);
    add(draw, "span 2, growx 0");
    free();
  }

  private void add() {
    DeskDraft draft = model.state().draft();
    if (draft != null && count.right() && weight.right()) {
      BlueprintRow row =
          new BlueprintRow(
              Objective.values()[objective.getSelectedIndex()],
              Level.values()[level.getSelectedIndex()],
              weight.number());
      model.keep(draft.withRow(new Assembly(row, (int) Math.round(count.number()))));
    }
  }

  private void remove() {
    DeskDraft draft = model.state().draft();
    int row = rows.getSelectedRow();
    if (draft != null && row >= 0) {
      model.keep(draft.withoutRow(row));
    }
  }

  private void free() {
    DeskDraft draft = model.state().draft();
    remove.setEnabled(rows.getSelectedRow() >= 0);
    draw.setEnabled(draft != null && !draft.rows().isEmpty() && !model.busy());
  }

  void refresh() {
    rows.show(tables.blueprint(model.state()));
    free();
  }
}
