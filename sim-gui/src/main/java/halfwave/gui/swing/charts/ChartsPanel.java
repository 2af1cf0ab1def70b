package halfwave.gui.swing.charts;

import com.formdev.flatlaf.FlatClientProperties;
import halfwave.bench.Bench;
import halfwave.gui.presentation.Inquiry;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.presentation.charts.Healthy;
import halfwave.gui.swing.widget.Plate;
import halfwave.gui.swing.widget.Theme;
import halfwave.picture.Picture;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The charts below the drawing, one at a time; only the one that is seen is worked on. */
public final class ChartsPanel extends Plate {

  private static final long serialVersionUID = 1L;

  private final transient Wording words;
  private final transient Consumer<String> notice;
  private final transient Inquiry<Bench, Healthy> healthy;
  private final transient List<ChartPanel> charts;
  private final JTabbedPane tabs = new JTabbedPane();
  private @Nullable transient State state;
  private @Nullable transient Bench ghost;

  /**
   * The charts of one language and look.
   *
   * @param background runs what takes long
   * @param failed is told of an error in the program itself
   * @param notice says something at the foot of the window
   */
  public ChartsPanel(
      Theme theme,
      Wording words,
      Workbench workbench,
      Executor background,
      Consumer<Throwable> failed,
      Consumer<String> notice) {
    super(theme, words.text("chart.area"));
    this.words = words;
    this.notice = notice;
    healthy =
        new Inquiry<>(
            background, SwingUtilities::invokeLater, Healthy::answer, this::refresh, failed);
    charts =
        List.of(
            new StripPanel(theme, words),
            new WavePanel(theme, words),
            new LadderPanel(theme, words),
            new WhatIfPanel(theme, words, background, failed),
            new MapPanel(theme, words, workbench, background, failed),
            new HistoryPanel(theme, words));
    for (ChartPanel chart : charts) {
      tabs.addTab(chart.getAccessibleContext().getAccessibleName(), chart);
    }
    tabs.setName("charts");
    tabs.setOpaque(false);
    tabs.setTabLayoutPolicy(JTabbedPane.SCROLL_TAB_LAYOUT);
    tabs.putClientProperty(FlatClientProperties.TABBED_PANE_TRAILING_COMPONENT, more());
    tabs.getAccessibleContext().setAccessibleName(words.text("chart.area"));
    tabs.addChangeListener(e -> turned());
    // a chart is cut to its size, so a new size needs a new cut
    tabs.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent e) {
            SwingUtilities.invokeLater(ChartsPanel.this::refresh);
          }
        });
    add(tabs, BorderLayout.CENTER);
    int pad = theme.px(12);
    setBorder(javax.swing.BorderFactory.createEmptyBorder(pad / 3, pad, pad / 2, pad));
    setPreferredSize(new Dimension(theme.px(700), theme.px(256)));
    setMinimumSize(new Dimension(theme.px(320), theme.px(150)));
  }

  private JPanel more() {
    JPopupMenu menu = new JPopupMenu();
    JMenuItem picture = new JMenuItem(words.text("chart.copy-picture"));
    picture.setName("chart.copy-picture");
    picture.addActionListener(e -> copyPicture());
    JMenuItem data = new JMenuItem(words.text("chart.copy-data"));
    data.setName("chart.copy-data");
    data.addActionListener(e -> copyData());
    menu.add(picture);
    menu.add(data);
    JButton button = new JButton(words.text("chart.more"));
    button.setName("chart.more");
    button.addActionListener(e -> menu.show(button, 0, button.getHeight()));
    JPanel right =
        new JPanel(new MigLayout("insets 0, fill, novisualpadding", "push[]", "[center]")) {
          private static final long serialVersionUID = 1L;

          @Override
          public void addNotify() {
            super.addNotify();
            if (getParent() instanceof JComponent around) {
              // the look and feel wraps it in a sheet of the ground's colour
              around.setOpaque(false);
            }
          }
        };
    right.setOpaque(false);
    right.add(button);
    return right;
  }

  private ChartPanel seen() {
    return charts.get(Math.max(0, tabs.getSelectedIndex()));
  }

  /** What the chart that is seen is called. */
  public String title() {
    return tabs.getTitleAt(tabs.getSelectedIndex());
  }

  /** The chart that is seen; it is painted on the event thread. */
  public Picture picture() {
    return seen().picture().picture(title());
  }

  /** Its numbers with tabs between, or empty where there are none. */
  public String data() {
    return seen().data();
  }

  private void copyPicture() {
    Clip.copy(picture());
    notice.accept(words.text("chart.copied-picture"));
  }

  private void copyData() {
    String data = data();
    if (!data.isEmpty()) {
      Clip.copy(data);
      notice.accept(words.text("chart.copied-data"));
    }
  }

  /** Charts that take the circuit apart tell what is wrong with it. */
  private void cover(boolean sealed) {
    for (int k = 0; k < charts.size(); k++) {
      if (charts.get(k).tells() && tabs.isEnabledAt(k) == sealed) {
        tabs.setEnabledAt(k, !sealed);
        tabs.setToolTipTextAt(k, sealed ? words.text("seal.covered") : null);
      }
    }
    if (!tabs.isEnabledAt(tabs.getSelectedIndex())) {
      tabs.setSelectedIndex(0);
    }
  }

  /** Shows the charts of a state. */
  public void show(State newState) {
    state = newState;
    cover(newState.sealed());
    Bench wanted = Healthy.bench(newState);
    if (!wanted.equals(ghost)) {
      ghost = wanted;
      healthy.ask(wanted);
    }
    refresh();
  }

  private void refresh() {
    if (state != null) {
      Healthy known = healthy.answer();
      boolean same = known != null && known.bench().equals(ghost);
      seen().show(state, same ? known : null);
    }
  }

  private void turned() {
    for (ChartPanel chart : charts) {
      if (chart != seen()) {
        chart.away();
      }
    }
    refresh();
    // a panel that was never shown has its size only after this
    SwingUtilities.invokeLater(this::refresh);
  }

  /** Which chart is seen. */
  public int chart() {
    return tabs.getSelectedIndex();
  }

  /** How many charts there are. */
  public int count() {
    return charts.size();
  }

  /** Shows a chart. */
  public void chart(int index) {
    if (index >= 0 && index < charts.size() && tabs.isEnabledAt(index)) {
      tabs.setSelectedIndex(index);
    }
  }

  /** Gives up all work; the panel is not used any more. */
  public void close() {
    healthy.cancel();
    charts.forEach(ChartPanel::away);
  }
}
