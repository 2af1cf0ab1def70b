package halfwave.gui.swing;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.swing.bench.BoardPanel;
import halfwave.gui.swing.bench.ConditionPanel;
import halfwave.gui.swing.bench.DrawingPanel;
import halfwave.gui.swing.bench.FaultPanel;
import halfwave.gui.swing.bench.MeterPanel;
import halfwave.gui.swing.bench.PartPanel;
import halfwave.gui.swing.bench.SealPanel;
import halfwave.gui.swing.bench.WorkPanel;
import halfwave.gui.swing.charts.ChartsPanel;
import halfwave.gui.swing.editor.Editing;
import halfwave.gui.swing.evidence.EvidencePanel;
import halfwave.gui.swing.evidence.WhyPanel;
import halfwave.gui.swing.lesson.LessonPanel;
import halfwave.gui.swing.lesson.LessonTab;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Plate;
import halfwave.gui.swing.widget.Theme;
import halfwave.picture.scene.DrawnPart;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import net.miginfocom.swing.MigLayout;

/** Makes the panels of the window in one language and look, and joins them to each other. */
final class PanelMaker {

  private final Theme theme;
  private final Wording words;
  private final Models models;
  private final Workbench workbench;

  PanelMaker(Theme theme, Wording words, Models models) {
    this.theme = theme;
    this.words = words;
    this.models = models;
    workbench = models.workbench();
  }

  /**
   * Makes them.
   *
   * @param front what comes to the front
   * @param editing makes its own panels too
   * @param files is asked before the bench is left
   */
  Panels panels(Front front, Editing editing, BenchFiles files) {
    Notice notice = new Notice(theme);
    JTabbedPane tabs = new JTabbedPane();
    tabs.setFont(theme.tab());
    tabs.setName("tabs");
    // the window gives it its least height; a pane that is asked lays out all under its tabs
    tabs.setPreferredSize(new Dimension(theme.px(400), theme.px(300)));
    Late<PartPanel> part = new Late<>(() -> new PartPanel(theme, words, workbench));
    if (front.part() != null) {
      part.get().open(front.part());
    }
    Covered parts = covered(part);
    DrawingPanel drawing =
        new DrawingPanel(theme, words, workbench, p -> openPart(part, tabs, parts, p));
    drawing.view(front.view());
    ConditionPanel condition = new ConditionPanel(theme, words, workbench);
    Late<WhyPanel> why = new Late<>(() -> why(drawing));
    Late<FaultPanel> faults = new Late<>(() -> new FaultPanel(theme, words, workbench));
    Late<WorkPanel> work = new Late<>(() -> new WorkPanel(theme, words, workbench));
    List<Covered> covered = List.of(covered(condition), covered(why), covered(faults), parts);
    tabs.addTab(words.text("tab.condition"), covered.get(0));
    tabs.addTab(words.text("tab.why"), covered.get(1));
    tabs.addTab(words.text("tab.faults"), covered.get(2));
    tabs.addTab(words.text("tab.work"), work);
    tabs.addTab(words.text("tab.part"), parts);
    SealPanel offer = seal();
    LessonPanel player =
        new LessonPanel(
            theme, words, models.lesson(), drawing::light, files::mayLeave, editing, offer);
    LessonTab desk = new LessonTab(theme, player, offer, seal());
    editing.dress(theme, words, player, () -> tabs.setSelectedComponent(desk), files::mayLeave);
    tabs.addTab(words.text("tab.lesson"), desk);
    Late<EvidencePanel> evidence = new Late<>(this::evidence);
    tabs.addTab(words.text("tab.evidence"), evidence);
    tabs.setSelectedIndex(Math.max(0, Math.min(tabs.getTabCount() - 1, front.tab())));
    ChartsPanel charts =
        new ChartsPanel(
            theme, words, workbench, models.background(), models.failed(), notice::tell);
    charts.chart(front.chart());
    Panels made =
        new Panels(
            new TopBar(theme, words, workbench),
            drawing,
            new MeterPanel(theme, words, workbench),
            new BoardPanel(theme, words),
            charts,
            new Divided(theme, words.text("chart.split"), sheet(drawing), charts, front.lower()),
            condition,
            why,
            faults,
            work,
            evidence,
            part,
            player,
            desk,
            covered,
            tabs,
            notice);
    tabs.addChangeListener(e -> turned(made));
    return made;
  }

  private WhyPanel why(DrawingPanel drawing) {
    WhyPanel made = new WhyPanel(theme, words, models.why(), drawing::light);
    made.refresh();
    return made;
  }

  private EvidencePanel evidence() {
    EvidencePanel made = new EvidencePanel(theme, words, models.evidence());
    made.refresh();
    return made;
  }

  private void turned(Panels panels) {
    JTabbedPane tabs = panels.tabs();
    // on a small window with large type most of it lies below what is seen
    tabs.scrollRectToVisible(new Rectangle(tabs.getSize()));
    if (workbench.ready()) {
      panels.tab(workbench.shown());
    }
    if (tabs.getSelectedComponent() == panels.desk()) {
      panels.lesson().relight();
    }
  }

  /** The drawing under its heading. */
  private Plate sheet(DrawingPanel drawing) {
    JPanel head = new JPanel(new MigLayout("insets 0, gap 12", "[][grow,fill]"));
    head.setOpaque(false);
    var p = theme.palette();
    head.add(Lettering.label(words.text("drawing.title"), theme.heading(), p.ink()));
    head.add(Lettering.paragraph(words.text("drawing.hint"), theme.note(), p.softInk()), "wmin 0");
    Plate sheet = new Plate(theme, words.text("drawing.title"));
    sheet.add(head, BorderLayout.NORTH);
    sheet.add(drawing, BorderLayout.CENTER);
    sheet.setMinimumSize(new Dimension(theme.px(300), theme.px(250)));
    return sheet;
  }

  private Covered covered(JComponent panel) {
    return new Covered(theme, panel, words.text("seal.covered"));
  }

  private SealPanel seal() {
    return new SealPanel(theme, words, workbench, System::nanoTime);
  }

  private static void openPart(
      Late<PartPanel> part, JTabbedPane tabs, Covered around, DrawnPart opened) {
    tabs.setSelectedComponent(around);
    part.get().open(opened);
  }
}
