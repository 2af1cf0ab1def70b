package halfwave.gui.swing.desk;

import halfwave.grading.ClassReport;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.desk.DeskClass;
import halfwave.gui.presentation.desk.DeskModel;
import halfwave.gui.presentation.desk.DeskOutput;
import halfwave.gui.presentation.desk.DeskTables;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Plate;
import halfwave.gui.swing.widget.QuietField;
import halfwave.gui.swing.widget.Theme;
import java.util.function.IntConsumer;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The answer sheets of a class: their marks, what these say, and where they go. */
final class DeskClassTab extends JPanel {

  private static final long serialVersionUID = 1L;
  private static final int MOST_TOLD = 96;
  private static final String WIDE = "growx, wmin 0, wrap";

  private final transient Theme theme;
  private final transient Wording words;
  private final transient DeskModel model;
  private final transient DeskFiles files;
  private final transient DeskTables tables;
  private final JTextArea summary;
  private final JTextArea told;
  private final JScrollPane reasons;
  private final DeskTable learners;
  private final DeskTable items;
  private final DeskTable objectives;
  private final JComboBox<String> output = new JComboBox<>();
  private final QuietField home = new QuietField();
  private final JButton collect;
  private final JButton compare;
  private final JButton write;
  private transient @Nullable DeskClass shown;

  DeskClassTab(Theme theme, Wording words, DeskModel model, DeskFiles files, IntConsumer learner) {
    super(
        new MigLayout(
            "insets 10, gap 10, fill, novisualpadding",
            "[grow,fill]",
            "[][0:0,grow 50,fill][0:0,grow 50,fill][]"));
    this.theme = theme;
    this.words = words;
    this.model = model;
    this.files = files;
    tables = new DeskTables(words);
    setOpaque(false);
    var p = theme.palette();
    collect = Forms.button(words, "desk.collect", "desk.collect-tip", this::collect);
    compare = Forms.button(words, "desk.compare", "desk.compare-tip", this::compare);
    write = Forms.button(words, "desk.write", "desk.write-tip", this::write);
    summary = Lettering.paragraph(words.text("desk.no-class"), theme.body(), p.ink());
    summary.setName("desk.summary");
    summary.setToolTipText(words.text("desk.alpha-tip"));
    JPanel head = row("[][][grow,fill]");
    head.add(collect);
    head.add(compare);
    head.add(summary, "wmin 0, wrap");
    told = Lettering.paragraph("", theme.body(), p.danger());
    told.setName("desk.told");
    Column lines = new Column(theme);
    lines.add(told, WIDE);
    reasons = lines.scrolled();
    reasons.setVisible(false);
    head.add(reasons, "span 3, growx, wmin 0, hmax " + theme.px(MOST_TOLD));
    add(head, WIDE);
    String title = words.text("desk.learners");
    learners = new DeskTable(theme, "desk.learners", title, () -> chosen(learner));
    add(titled("desk.learners", learners), "wmin 0, hmin 0, wrap");
    items = new DeskTable(theme, "desk.items", words.text("desk.items"), () -> {});
    items.explain(words, "handed-in", "mean", "discrimination", "median", "turns");
    objectives = new DeskTable(theme, "desk.objectives", words.text("desk.objectives"), () -> {});
    objectives.explain(words, "mean", "mastered");
    JPanel below =
        new JPanel(
            new MigLayout(
                "insets 0, gap 10, fill, novisualpadding",
                "[0:0,grow 60,fill][0:0,grow 40,fill]",
                "[grow,fill]"));
    below.setOpaque(false);
    below.add(titled("desk.items", items), "wmin 0, hmin 0, growy");
    below.add(titled("desk.objectives", objectives), "wmin 0, hmin 0, growy");
    add(below, "wmin 0, hmin 0, wrap");
    JPanel foot = row("[][][][grow,fill][]");
    DeskOutput.OF_CLASS.forEach(o -> output.addItem(words.text(o.key())));
    DeskRows.labelled(theme, words, foot, "desk.output", output, "wmin 0");
    home.setToolTipText(words.text("desk.home-tip"));
    DeskRows.labelled(theme, words, foot, "desk.home", home, "wmin 0");
    output.addActionListener(e -> free());
    foot.add(write);
    add(foot, "growx, wmin 0");
    free();
  }

  private static JPanel row(String columns) {
    JPanel row =
        new JPanel(new MigLayout("insets 0, gap 8, fillx, novisualpadding, hidemode 3", columns));
    row.setOpaque(false);
    return row;
  }

  private JComponent titled(String key, DeskTable table) {
    JPanel panel =
        new JPanel(
            new MigLayout(
                "insets 0, gap 4, fill, novisualpadding", "[grow,fill]", "[][grow,fill]"));
    panel.setOpaque(false);
    panel.add(
        Lettering.label(words.text(key), theme.heading(), theme.palette().ink()), "wmin 0, wrap");
    panel.add(table.scrolled(), "wmin 0, hmin 0");
    return Plate.around(theme, words.text(key), panel);
  }

  private void chosen(IntConsumer learner) {
    if (learners.getSelectedRow() >= 0) {
      learner.accept(learners.getSelectedRow());
    }
  }

  private void collect() {
    files.place("desk.collect-title").ifPresent(model::collect);
  }

  private void compare() {
    files.read("desk.compare-title").ifPresent(model::compare);
  }

  private DeskOutput chosenOutput() {
    return DeskOutput.OF_CLASS.get(Math.max(0, output.getSelectedIndex()));
  }

  private void write() {
    DeskClass marked = model.state().marked();
    if (marked != null) {
      DeskOutput wanted = chosenOutput();
      files
          .target(wanted, marked.report().quiz().name())
          .ifPresent(file -> model.write(wanted, file, files.size(), home.getText(), words));
    }
  }

  private void free() {
    boolean busy = model.busy();
    boolean there = model.state().marked() != null;
    collect.setEnabled(!busy);
    compare.setEnabled(!busy && there);
    write.setEnabled(!busy && there);
    home.setEnabled(chosenOutput() == DeskOutput.XAPI);
  }

  void refresh() {
    free();
    DeskClass marked = model.state().marked();
    if (marked == null || marked == shown) {
      return;
    }
    shown = marked;
    ClassReport report = marked.report();
    summary.setText(tables.summary(marked));
    String lines = String.join("\n", tables.told(marked));
    told.setText(lines);
    told.setForeground(
        marked.refused().isEmpty() ? theme.palette().ink() : theme.palette().danger());
    reasons.setVisible(!lines.isEmpty());
    learners.show(tables.learners(report));
    items.show(tables.items(report));
    objectives.show(tables.objectives(report));
    revalidate();
  }
}
