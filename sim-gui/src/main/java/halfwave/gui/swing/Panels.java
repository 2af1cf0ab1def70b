package halfwave.gui.swing;

import halfwave.gui.presentation.bench.State;
import halfwave.gui.swing.bench.BoardPanel;
import halfwave.gui.swing.bench.ConditionPanel;
import halfwave.gui.swing.bench.DrawingPanel;
import halfwave.gui.swing.bench.FaultPanel;
import halfwave.gui.swing.bench.MeterPanel;
import halfwave.gui.swing.bench.PartPanel;
import halfwave.gui.swing.bench.WorkPanel;
import halfwave.gui.swing.charts.ChartsPanel;
import halfwave.gui.swing.evidence.EvidencePanel;
import halfwave.gui.swing.evidence.WhyPanel;
import halfwave.gui.swing.lesson.LessonPanel;
import halfwave.gui.swing.lesson.LessonTab;
import halfwave.gui.swing.widget.Theme;
import java.awt.Dimension;
import java.util.List;
import javax.swing.JTabbedPane;

/** The panels of the window in one language and look. */
record Panels(
    TopBar bar,
    DrawingPanel drawing,
    MeterPanel meter,
    BoardPanel board,
    ChartsPanel charts,
    Divided divided,
    ConditionPanel condition,
    Late<WhyPanel> why,
    Late<FaultPanel> faults,
    Late<WorkPanel> work,
    Late<EvidencePanel> evidence,
    Late<PartPanel> part,
    LessonPanel lesson,
    LessonTab desk,
    List<Covered> covered,
    JTabbedPane tabs,
    Notice notice) {

  /** So high a window has room for all panels and a demonstration (px at 100 %). */
  private static final double ROOMY = 1040;

  /** Least height of what lies under the tabs, and while a demonstration needs room (px). */
  private static final double TABS = 246;

  private static final double TIGHT_TABS = 326;

  void show(State state) {
    bar.show(state);
    drawing.show(state);
    meter.show(state);
    board.show(state);
    charts.show(state);
    covered.forEach(c -> c.cover(state.sealed()));
    desk.show(state);
    tab(state);
  }

  /** Of the tabs only the one in front costs time. */
  void tab(State state) {
    if (condition.isShowing()) {
      condition.show(state);
    } else if (why.isShowing()) {
      why.get();
    } else if (faults.isShowing()) {
      faults.get().show(state);
    } else if (work.isShowing()) {
      work.get().show(state);
    } else if (evidence.isShowing()) {
      evidence.get().show(state);
    } else if (part.isShowing()) {
      part.get().show(state);
    }
  }

  /** What nobody has to wait for. */
  List<Late<?>> late() {
    return List.of(why, faults, work, part, evidence);
  }

  /**
   * Makes room for a demonstration where the window is not high enough for everything.
   *
   * @param theme the look they are made in
   * @param under whether one is under way
   * @param height of the window (px)
   */
  void teach(Theme theme, boolean under, int height) {
    boolean tight = under && height / theme.ratio() < ROOMY;
    board.brief(tight);
    int least = theme.px(tight ? TIGHT_TABS : TABS);
    if (tabs.getMinimumSize().height != least) {
      tabs.setMinimumSize(new Dimension(0, least));
      tabs.setPreferredSize(new Dimension(tabs.getPreferredSize().width, least));
      tabs.revalidate();
    }
  }

  /** What is in front. */
  Front front() {
    return new Front(
        drawing.view(),
        tabs.getSelectedIndex(),
        charts.chart(),
        divided.lower(),
        part.made().map(PartPanel::opened).orElse(null));
  }
}
