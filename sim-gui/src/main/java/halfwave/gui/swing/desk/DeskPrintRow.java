package halfwave.gui.swing.desk;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.desk.DeskDraft;
import halfwave.gui.presentation.desk.DeskModel;
import halfwave.gui.presentation.desk.DeskNumber;
import halfwave.gui.presentation.desk.DeskOutput;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Theme;
import halfwave.quiz.Variant;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What of a quiz goes on paper, and for which furnace. */
final class DeskPrintRow extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Wording words;
  private final transient DeskModel model;
  private final transient DeskFiles files;
  private final JComboBox<String> output = new JComboBox<>();
  private final NumberField furnace;
  private final JButton print;

  DeskPrintRow(Theme theme, Wording words, DeskModel model, DeskFiles files) {
    super(new MigLayout("insets 0, gap 8, novisualpadding", "[][][][][]"));
    this.words = words;
    this.model = model;
    this.files = files;
    setOpaque(false);
    DeskOutput.OF_QUIZ.forEach(o -> output.addItem(words.text(o.key())));
    DeskRows.labelled(theme, words, this, "desk.print", output, "wmin 0");
    DeskNumber range = new DeskNumber(1, Variant.COUNT, true);
    furnace = new NumberField(theme, words, "desk.furnace", range, v -> {});
    furnace.put(1);
    DeskRows.labelled(theme, words, this, "desk.furnace", furnace, "");
    print = Forms.button(words, "desk.print-now", "desk.print-now-tip", this::print);
    add(print);
  }

  private void print() {
    DeskDraft draft = model.state().draft();
    if (draft == null || !furnace.right()) {
      return;
    }
    DeskOutput wanted = DeskOutput.OF_QUIZ.get(Math.max(0, output.getSelectedIndex()));
    files
        .target(wanted, draft.name())
        .ifPresent(
            file -> model.write(wanted, file, files.size(), (int) furnace.number() - 1, words));
  }

  void refresh() {
    print.setEnabled(!model.busy());
  }
}
