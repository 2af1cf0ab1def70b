package halfwave.gui.swing.desk;

import halfwave.grading.CallMarks;
import halfwave.grading.SheetMarks;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.desk.DeskClass;
import halfwave.gui.presentation.desk.DeskModel;
import halfwave.gui.presentation.desk.DeskOutput;
import halfwave.gui.presentation.desk.DeskTables;
import halfwave.gui.presentation.desk.MarksView;
import halfwave.gui.presentation.desk.TableView;
import halfwave.gui.swing.widget.CautionPlate;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Plate;
import halfwave.gui.swing.widget.Theme;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** One call of one learner, played again: every move, every mark and its reasons. */
final class DeskMarksTab extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Wording words;
  private final transient DeskModel model;
  private final transient DeskFiles files;
  private final transient DeskTables tables;
  private final JComboBox<String> learner = new JComboBox<>();
  private final JComboBox<String> call = new JComboBox<>();
  private final JButton record;
  private final CautionPlate remarks;
  private final DeskTable moves;
  private final JTextArea told;
  private final transient MarksPanel marks;
  private final DeskReplayPanel replay;
  private transient @Nullable DeskClass shown;
  private boolean showing;

  DeskMarksTab(Theme theme, Wording words, DeskModel model, DeskFiles files) {
    super(
        new MigLayout(
            "insets 10, gap 10, fill, novisualpadding",
            "[0:0,grow 60,fill][0:0,grow 40,fill]",
            "[][0:0,grow,fill]"));
    this.words = words;
    this.model = model;
    this.files = files;
    tables = new DeskTables(words);
    setOpaque(false);
    record = Forms.button(words, "desk.record", "desk.record-tip", this::record);
    JPanel head =
        new JPanel(
            new MigLayout(
                "insets 0, gap 8, fillx, hidemode 3, novisualpadding",
                "[][grow,fill][][grow,fill][]"));
    head.setOpaque(false);
    DeskRows.labelled(theme, words, head, "desk.learner", learner, "wmin 0");
    DeskRows.labelled(theme, words, head, "desk.call", call, "wmin 0");
    learner.addActionListener(e -> chosen());
    call.addActionListener(e -> chosen());
    head.add(record, "wrap");
    remarks = new CautionPlate(theme, words.text("desk.remarks"));
    head.add(remarks, "span 5, growx, wmin 0");
    add(head, "span 2, growx, wmin 0, wrap");
    moves = new DeskTable(theme, "desk.moves", words.text("desk.moves"), this::move);
    moves.explain(words, "minute", "class", "information", "better");
    told = Lettering.paragraph("", theme.body(), theme.palette().ink());
    told.setName("desk.told-move");
    JPanel left =
        new JPanel(
            new MigLayout(
                "insets 0, gap 6, fill, novisualpadding", "[grow,fill]", "[grow,fill][]"));
    left.setOpaque(false);
    left.add(moves.scrolled(), "wmin 0, hmin 0, wrap");
    left.add(told, "growx, wmin 0");
    add(Plate.around(theme, words.text("desk.moves"), left), "wmin 0, hmin 0");
    marks = new MarksPanel(theme, words);
    replay = new DeskReplayPanel(theme, words, row -> moves.choose(row));
    JTabbedPane right = new JTabbedPane();
    right.setName("desk.played");
    right.getAccessibleContext().setAccessibleName(words.text("desk.played"));
    right.addTab(words.text("desk.replay"), replay);
    right.addTab(words.text("practice.marks"), marks.column().scrolled());
    add(Plate.around(theme, words.text("desk.played"), right), "wmin 0, hmin 0");
  }

  /** Shows the calls of the learner of that row. */
  void learner(int row) {
    if (row >= 0 && row < learner.getItemCount()) {
      learner.setSelectedIndex(row);
    }
  }

  private @Nullable SheetMarks sheet() {
    DeskClass marked = shown;
    int row = learner.getSelectedIndex();
    return marked == null || row < 0 ? null : marked.report().sheets().get(row);
  }

  private @Nullable CallMarks call() {
    SheetMarks sheet = sheet();
    int row = call.getSelectedIndex();
    return sheet == null || row < 0 ? null : sheet.calls().get(row);
  }

  private void record() {
    SheetMarks sheet = sheet();
    if (sheet != null) {
      files
          .target(DeskOutput.RECORD, sheet.sheet().learner())
          .ifPresent(file -> model.record(sheet, file, files.size(), words));
    }
  }

  private void move() {
    CallMarks marked = call();
    int row = moves.getSelectedRow();
    told.setText(
        marked == null || row < 0 || row >= marked.moves().size()
            ? words.text("desk.choose-move")
            : tables.told(marked.moves().get(row)));
    told.revalidate();
    replay.show(marked == null ? null : model.replay(marked).orElse(null), row);
  }

  private void chosen() {
    CallMarks marked = call();
    SheetMarks sheet = sheet();
    if (showing || marked == null || sheet == null) {
      return;
    }
    remarks.show(tables.remarks(sheet, marked));
    moves.show(tables.moves(marked));
    moves.clearSelection();
    model.playAgain(sheet, marked);
    move();
    MarksView view = MarksView.of(marked, words);
    marks.show(new MarksView(view.total(), tables.truth(marked), view.marks(), List.of()));
  }

  void refresh() {
    DeskClass marked = model.state().marked();
    record.setEnabled(marked != null && sheet() != null && !model.busy());
    if (marked == shown) {
      CallMarks at = call();
      replay.show(at == null ? null : model.replay(at).orElse(null), moves.getSelectedRow());
      return;
    }
    shown = marked;
    showing = true;
    learner.removeAllItems();
    call.removeAllItems();
    if (marked != null) {
      marked.report().sheets().forEach(s -> learner.addItem(s.sheet().learner()));
      marked.report().quiz().calls().forEach(c -> call.addItem(c.title().in(words.locale())));
    }
    showing = false;
    if (call() == null) {
      remarks.show(List.of());
      moves.show(new TableView(List.of(), List.of()));
    }
    chosen();
    record.setEnabled(sheet() != null && !model.busy());
  }
}
