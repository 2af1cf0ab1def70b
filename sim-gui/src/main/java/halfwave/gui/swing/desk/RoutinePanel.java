package halfwave.gui.swing.desk;

import halfwave.grading.Routine;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.desk.RoutineDraft;
import halfwave.gui.presentation.desk.RoutineModel;
import halfwave.gui.presentation.desk.RoutineTables;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Plate;
import halfwave.gui.swing.widget.QuietField;
import halfwave.gui.swing.widget.Theme;
import halfwave.gui.swing.widget.Typing;
import java.util.function.IntSupplier;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** An instructor's own order of work, and how it fares beside an expert's. */
public final class RoutinePanel extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Wording words;
  private final transient IntSupplier calls;
  private final transient Runnable compared;
  private final transient RoutineModel model;
  private final transient DeskFiles files;
  private final transient RoutineTables tables;
  private final QuietField name = new QuietField();
  private final DeskTable steps;
  private final RoutineForm form;
  private final DeskTable trials;
  private final JTextArea said;
  private final JButton up;
  private final JButton down;
  private final JButton remove;
  private final JButton compare;
  private final JButton cancel;
  private boolean showing;

  /**
   * The panel.
   *
   * @param calls how many there are to compare with
   * @param compared compares
   * @param back goes back to the choice of a call
   */
  public RoutinePanel(
      Theme theme,
      Wording words,
      RoutineModel model,
      DeskFiles files,
      IntSupplier calls,
      Runnable compared,
      Runnable back) {
    super(
        new MigLayout(
            "insets 0, gap 10, fill, hidemode 3, novisualpadding",
            "[0:0,grow 54,fill][0:0,grow 46,fill]",
            "[][0:0,grow,fill][]"));
    this.words = words;
    this.model = model;
    this.calls = calls;
    this.compared = compared;
    this.files = files;
    tables = new RoutineTables(words);
    setOpaque(false);
    add(
        Forms.row(
            Forms.button(words, "routine.back", "routine.back-tip", back),
            Forms.button(words, "routine.fresh", "routine.fresh-tip", this::fresh),
            Forms.button(words, "routine.open", "routine.open-tip", this::open),
            Forms.button(words, "routine.save", "routine.save-tip", this::save)),
        "span 2, wmin 0, wrap");
    steps = new DeskTable(theme, "routine.steps", words.text("routine.steps"), this::chosen);
    up = Forms.button(words, "routine.up", "routine.up-tip", () -> move(-1));
    down = Forms.button(words, "routine.down", "routine.down-tip", () -> move(1));
    remove = Forms.button(words, "routine.remove", "routine.remove-tip", this::remove);
    form = new RoutineForm(theme, words, this::changed);
    JPanel left = bare("[][grow,fill]", "[][][0:0,grow 55,fill][][0:0,grow 45,fill]");
    left.add(
        Lettering.paragraph(words.text("routine.hint"), theme.body(), theme.palette().softInk()),
        "span 2, growx, wmin 0, wrap");
    DeskRows.labelled(theme, words, left, "routine.name", name, "growx, wmin 0, wrap");
    Typing.on(name, this::named);
    left.add(steps.scrolled(), "span 2, grow, wmin 0, hmin 0, wrap");
    left.add(
        Forms.row(
            Forms.button(words, "routine.add", "routine.add-tip", this::addStep), up, down, remove),
        "span 2, wmin 0, wrap");
    Column column = new Column(theme);
    column.add(form, "growx, wmin 0, wrap");
    left.add(column.scrolled(), "span 2, grow, wmin 0, hmin 0");
    add(Plate.around(theme, words.text("routine.title"), left), "wmin 0, hmin 0");
    compare = Forms.button(words, "routine.compare", "routine.compare-tip", this::compare);
    trials = new DeskTable(theme, "routine.trials", words.text("routine.trials"), () -> {});
    JPanel right = bare("[grow,fill]", "[][][0:0,grow,fill]");
    right.add(
        Lettering.paragraph(
            words.text("routine.compare-hint"), theme.body(), theme.palette().softInk()),
        "growx, wmin 0, wrap");
    right.add(Forms.row(compare), "wmin 0, wrap");
    right.add(trials.scrolled(), "grow, wmin 0, hmin 0");
    add(Plate.around(theme, words.text("routine.trials"), right), "wmin 0, hmin 0, wrap");
    said = Lettering.paragraph(" ", theme.body(), theme.palette().ink());
    said.setName("routine.said");
    add(said, "span 2, split 2, growx, wmin 0");
    cancel = Forms.button(words, "desk.cancel", "desk.cancel-tip", model::giveUp);
    cancel.setName("routine.cancel");
    add(cancel, "growx 0");
  }

  private static JPanel bare(String columns, String rows) {
    JPanel panel =
        new JPanel(
            new MigLayout("insets 0, gap 8 6, fill, hidemode 3, novisualpadding", columns, rows));
    panel.setOpaque(false);
    return panel;
  }

  // ---------------------------------------------------------------- actions

  private boolean mayLeave() {
    return files.mayLeave(this, model.unsaved(), "routine.unsaved", "routine.title");
  }

  private void fresh() {
    if (mayLeave()) {
      model.fresh();
    }
  }

  private void open() {
    if (mayLeave()) {
      files.read("routine.open-title").ifPresent(model::open);
    }
  }

  private void save() {
    String written = model.draft().name();
    String proposed = written.isBlank() ? words.text("routine.title") : written;
    files.quiz("routine.save-title", proposed).ifPresent(model::save);
  }

  private void compare() {
    compared.run();
  }

  private void addStep() {
    int row = steps.getSelectedRow();
    model.keep(model.draft().withStepAfter(row));
    steps.choose(row < 0 ? steps.getRowCount() - 1 : row + 1);
  }

  private void move(int by) {
    int row = steps.getSelectedRow();
    model.keep(model.draft().swapped(row, row + by));
    steps.choose(row + by);
  }

  private void remove() {
    model.keep(model.draft().without(steps.getSelectedRow()));
  }

  private void changed(Routine.Step step) {
    int row = steps.getSelectedRow();
    if (row >= 0) {
      model.keep(model.draft().with(row, step));
    }
  }

  private void chosen() {
    if (showing) {
      // filling the table takes its choice away for a moment
      return;
    }
    RoutineDraft draft = model.draft();
    int row = steps.getSelectedRow();
    model.choose(row);
    form.show(row < 0 || row >= draft.steps().size() ? null : draft.steps().get(row));
    free();
  }

  private void free() {
    int row = steps.getSelectedRow();
    up.setEnabled(row > 0);
    down.setEnabled(row >= 0 && row < model.draft().steps().size() - 1);
    remove.setEnabled(row >= 0);
    compare.setEnabled(!model.busy());
    cancel.setVisible(model.busy());
  }

  /** Shows how the model stands. */
  public void refresh() {
    RoutineDraft draft = model.draft();
    showing = true;
    if (!name.getText().equals(draft.name())) {
      name.setText(draft.name());
    }
    steps.show(tables.steps(draft));
    if (steps.getSelectedRow() < 0 && model.at() >= 0 && model.at() < draft.steps().size()) {
      // another look made the table anew
      steps.choose(model.at());
    }
    showing = false;
    trials.show(tables.trials(model.trials()));
    compare.setText(words.text("routine.compare", calls.getAsInt()));
    String text = model.said(words);
    said.setText(text.isEmpty() ? " " : text);
    chosen();
  }

  /** Keeps the name as it is typed. */
  private void named() {
    if (!showing) {
      model.keep(model.draft().withName(name.getText()));
    }
  }
}
