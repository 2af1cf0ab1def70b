package halfwave.gui.swing.desk;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.desk.BankView;
import halfwave.gui.presentation.desk.DeskDraft;
import halfwave.gui.presentation.desk.DeskModel;
import halfwave.gui.presentation.desk.DeskState;
import halfwave.gui.presentation.desk.DeskTables;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Keys;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Plate;
import halfwave.gui.swing.widget.QuietField;
import halfwave.gui.swing.widget.Theme;
import halfwave.gui.swing.widget.Typing;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** A quiz in the making: calls of the bank beside those that were taken, and what holds for all. */
final class DeskQuizTab extends JPanel {

  private static final long serialVersionUID = 1L;
  private static final int SETTINGS = 0;
  private static final int CALL = 2;
  private static final int CTRL = InputEvent.CTRL_DOWN_MASK;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient DeskModel model;
  private final transient DeskFiles files;
  private final transient DeskTables tables;
  private final DeskTable bank;
  private final DeskTable calls;
  private final DeskSettingsForm settings;
  private final DeskBlueprintForm blueprint;
  private final DeskCallForm call;
  private final JTabbedPane forms = new JTabbedPane();
  private final DeskPrintRow printing;
  private final JButton add;
  private final JButton remove;
  private final JButton undo;
  private final JButton redo;
  private final List<JButton> workers = new ArrayList<>();
  private final QuietField search = new QuietField();
  private transient @Nullable Quiz narrowed;
  private transient BankView offered = new BankView(List.of());
  private transient @Nullable String chosen;

  DeskQuizTab(Theme theme, Wording words, DeskModel model, DeskFiles files) {
    super(
        new MigLayout(
            "insets 10, gap 10, fill, novisualpadding",
            // tables scroll sideways, forms in large type need the room
            theme.ratio() > 1.5
                ? "[0:0,grow 45,fill][0:0,grow 55,fill]"
                : "[0:0,grow 60,fill][0:0,grow 40,fill]",
            "[][grow,fill][]"));
    this.theme = theme;
    this.words = words;
    this.model = model;
    this.files = files;
    tables = new DeskTables(words);
    setOpaque(false);
    undo = Forms.button(words, "desk.undo", "desk.undo-tip", this::undo);
    redo = Forms.button(words, "desk.redo", "desk.redo-tip", this::redo);
    on(KeyStroke.getKeyStroke(KeyEvent.VK_Z, CTRL), this::undo);
    on(KeyStroke.getKeyStroke(KeyEvent.VK_Y, CTRL), this::redo);
    on(KeyStroke.getKeyStroke(KeyEvent.VK_Z, CTRL | InputEvent.SHIFT_DOWN_MASK), this::redo);
    add(
        Forms.row(
            worker("desk.fresh", this::fresh),
            worker("desk.open", this::open),
            worker("desk.save", this::save),
            worker("desk.hand-out", this::handOut),
            worker("desk.try", model::tryCalls),
            undo,
            redo),
        "span 2, wmin 0, wrap");
    bank = new DeskTable(theme, "desk.bank", words.text("desk.bank"), this::free);
    bank.opens(this::add);
    bank.tells(row -> BankView.told(offered.calls().get(row), words));
    search.setName("desk.search");
    search.setToolTipText(words.text("desk.search-tip"));
    search.getAccessibleContext().setAccessibleName(words.text("desk.search"));
    Typing.on(search, this::narrow);
    calls = new DeskTable(theme, "desk.calls", words.text("desk.calls"), this::choose);
    calls.explain(words, "minutes", "share", "solvable", "tellable", "expert", "mean");
    add = Forms.button(words, "desk.add", "desk.add-tip", this::add);
    remove = Forms.button(words, "desk.remove", "desk.remove-tip", this::remove);
    JButton create = Forms.button(words, "desk.create", "desk.create-tip", this::create);
    JPanel left =
        new JPanel(
            new MigLayout(
                "insets 0, gap 6, fill, novisualpadding",
                "[grow,fill]",
                "[][grow,fill][][][grow,fill]"));
    left.setOpaque(false);
    JLabel find = Lettering.label(words.text("desk.search"), theme.body(), theme.palette().ink());
    find.setLabelFor(search);
    left.add(heading("desk.bank"), "split 3, wmin pref, pushx");
    left.add(find, "growx 0, wmin pref");
    left.add(
        search,
        "growx 0, w %dpx:%dpx:, hmin %dpx, wrap"
            .formatted(theme.px(60), theme.px(180), theme.px(24)));
    left.add(bank.scrolled(), "wmin 0, hmin 0, wrap");
    left.add(Forms.row(add, remove, create), "wmin 0, wrap");
    left.add(heading("desk.calls"), "wmin 0, wrap");
    left.add(calls.scrolled(), "wmin 0, hmin 0");
    add(Plate.around(theme, words.text("desk.calls"), left), "wmin 0, hmin 0");
    settings = new DeskSettingsForm(theme, words, model);
    blueprint = new DeskBlueprintForm(theme, words, model);
    call = new DeskCallForm(theme, words, model, name -> chosen = name);
    forms.setName("desk.forms");
    forms.getAccessibleContext().setAccessibleName(words.text("desk.forms"));
    forms.addTab(words.text("desk.settings"), column(settings));
    forms.addTab(words.text("desk.blueprint"), column(blueprint));
    forms.addTab(words.text("desk.one-call"), call);
    add(Plate.around(theme, words.text("desk.forms"), forms), "wmin 0, hmin 0, wrap");
    printing = new DeskPrintRow(theme, words, model, files);
    add(printing, "span 2, wmin 0");
    free();
  }

  private void on(KeyStroke stroke, Runnable action) {
    Keys.bind(this, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, stroke, action);
  }

  private JComponent heading(String key) {
    return Lettering.label(words.text(key), theme.heading(), theme.palette().ink());
  }

  private JComponent column(JPanel form) {
    Column column = Column.sideways(theme);
    column.add(form, "growx, gaptop 8, wrap");
    return column.scrolled();
  }

  private JButton worker(String key, Runnable action) {
    JButton button = Forms.button(words, key, key + "-tip", action);
    workers.add(button);
    return button;
  }

  // ---------------------------------------------------------------- actions

  private void fresh() {
    if (files.mayLeave(this, model)) {
      settings.forget();
      model.fresh();
    }
  }

  private void open() {
    if (files.mayLeave(this, model)) {
      files
          .read("desk.open-title")
          .ifPresent(
              file -> {
                settings.forget();
                model.open(file);
              });
    }
  }

  /** Whether nothing wrong stands in a form; what does comes to the front. */
  private boolean right() {
    if (!call.leave()) {
      forms.setSelectedIndex(CALL);
      return false;
    }
    forms.setSelectedIndex(settings.wrong() ? SETTINGS : forms.getSelectedIndex());
    return settings.right();
  }

  private void save() {
    if (right()) {
      files.quiz("desk.save-title", name()).ifPresent(model::save);
    }
  }

  private void handOut() {
    if (right()) {
      files
          .quiz("desk.hand-out-title", name() + ' ' + words.text("desk.handed-out"))
          .ifPresent(model::handOut);
    }
  }

  private String name() {
    DeskDraft draft = model.state().draft();
    return draft == null ? "" : draft.name();
  }

  /** First what was typed into the form of a call and not taken over. */
  private void undo() {
    if (call.changed()) {
      call.anew();
    } else {
      model.undo();
      settings.anew();
    }
  }

  private void redo() {
    model.redo();
    settings.anew();
  }

  private void add() {
    int row = bank.getSelectedRow();
    if (row >= 0 && row < offered.calls().size()) {
      model.add(offered.calls().get(row));
    }
  }

  private void remove() {
    ServiceCall at = chosenCall();
    if (at != null) {
      chosen = null;
      model.remove(at);
    }
  }

  private void create() {
    if (call.leave()) {
      model.create(words);
      calls.choose(calls.getRowCount() - 1);
      forms.setSelectedIndex(CALL);
    }
  }

  private @Nullable ServiceCall chosenCall() {
    DeskDraft draft = model.state().draft();
    return draft == null
        ? null
        : draft.calls().stream().filter(c -> c.name().equals(chosen)).findFirst().orElse(null);
  }

  /** Another call is chosen, unless something is wrong in the form of the one before. */
  private void choose() {
    DeskDraft draft = model.state().draft();
    int row = calls.getSelectedRow();
    if (draft == null || row < 0 || row >= draft.calls().size()) {
      return;
    }
    String wanted = draft.calls().get(row).name();
    if (!wanted.equals(chosen) && (chosenCall() == null || call.leave())) {
      chosen = wanted;
    }
    follow();
    call.show(chosenCall());
    free();
  }

  /** The row of the chosen call is the chosen row. */
  private void follow() {
    DeskDraft draft = model.state().draft();
    ServiceCall at = chosenCall();
    if (draft != null && at != null) {
      calls.choose(draft.calls().indexOf(at));
    } else {
      calls.clearSelection();
    }
  }

  private void free() {
    boolean busy = model.busy();
    DeskState state = model.state();
    workers.forEach(b -> b.setEnabled(!busy));
    undo.setEnabled(model.mayUndo() || chosenCall() != null);
    redo.setEnabled(model.mayRedo());
    printing.refresh();
    add.setEnabled(state.draft() != null && bank.getSelectedRow() >= 0);
    remove.setEnabled(chosenCall() != null);
  }

  /** Shows the calls of the bank that have what was typed. */
  private void narrow() {
    Quiz from = model.state().bank();
    if (from != null) {
      narrowed = from;
      offered = BankView.of(from, search.getText(), words);
      bank.show(tables.bank(offered));
    }
  }

  void refresh() {
    DeskState state = model.state();
    if (state.bank() != narrowed) {
      narrow();
    }
    calls.show(tables.calls(state));
    follow();
    settings.refresh();
    blueprint.refresh();
    call.show(chosenCall());
    free();
  }
}
