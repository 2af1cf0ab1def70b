package halfwave.gui.swing.charts;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.charts.Healthy;
import halfwave.gui.presentation.charts.HistoryView;
import halfwave.gui.presentation.charts.HistoryView.Line;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import java.awt.BorderLayout;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** What was done, beside the signal over the whole recording. */
final class HistoryPanel extends ChartPanel {

  private static final long serialVersionUID = 1L;

  private final transient Wording words;
  private final HistoryCanvas canvas;
  private final DefaultListModel<Line> lines = new DefaultListModel<>();
  private final JList<Line> list =
      new JList<>(lines) {
        private static final long serialVersionUID = 1L;

        /** Long lines end in dots; the tip has all of them. */
        @Override
        public boolean getScrollableTracksViewportWidth() {
          return true;
        }
      };

  private final JScrollPane scroll;
  private transient List<String> listed = List.of();
  private @Nullable transient State state;

  HistoryPanel(Theme theme, Wording words) {
    super(theme, words.text("history.title"));
    this.words = words;
    canvas = new HistoryCanvas(theme, words);
    canvas.setName("history.canvas");
    canvas.getAccessibleContext().setAccessibleName(words.text("history.title"));
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setName("history.list");
    list.setOpaque(false);
    list.getAccessibleContext().setAccessibleName(words.text("history.list"));
    list.setCellRenderer((l, line, index, selected, focused) -> row(theme, line, selected, l));
    list.addListSelectionListener(e -> canvas.mark(list.getSelectedIndex()));
    scroll = new JScrollPane(list);
    scroll.setVisible(false);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.setOpaque(false);
    scroll.getViewport().setOpaque(false);
    JPanel both =
        new JPanel(
            new MigLayout(
                "insets 0, gap 14, fill, hidemode 3", "[fill][grow,fill]", "[fill,grow]"));
    both.setOpaque(false);
    both.add(scroll, "w " + theme.px(220) + "px:" + theme.px(320) + "px:" + theme.px(400) + "px");
    both.add(canvas, "wmin 0, growx");
    add(both, BorderLayout.CENTER);
  }

  private static JPanel row(Theme theme, Line line, boolean selected, JList<? extends Line> list) {
    JPanel row = new JPanel(new BorderLayout(theme.px(10), 0));
    row.setBorder(BorderFactory.createEmptyBorder(2, 4, 2, 4));
    row.setOpaque(selected);
    row.setBackground(list.getSelectionBackground());
    var p = theme.palette();
    JLabel clock = Lettering.label(line.clock(), theme.note(), selected ? p.sheet() : p.softInk());
    clock.setPreferredSize(new java.awt.Dimension(theme.px(58), clock.getPreferredSize().height));
    row.add(clock, BorderLayout.WEST);
    row.add(
        Lettering.label(line.words(), theme.body(), selected ? p.sheet() : p.ink()),
        BorderLayout.CENTER);
    row.setToolTipText(line.words());
    row.getAccessibleContext().setAccessibleName(line.clock() + ", " + line.words());
    return row;
  }

  @Override
  void show(State newState, @Nullable Healthy healthy) {
    state = newState;
    HistoryView view = HistoryView.of(newState, healthy, words, canvas.columns());
    List<String> now = view.lines().stream().map(l -> l.clock() + l.words()).toList();
    if (!now.equals(listed)) {
      listed = now;
      lines.clear();
      lines.addAll(view.lines());
      scroll.setVisible(!lines.isEmpty());
      revalidate();
    }
    canvas.show(view);
    say(view.summary());
    canvas.getAccessibleContext().setAccessibleDescription(view.spoken());
  }

  @Override
  ChartPicture picture() {
    return canvas::picture;
  }

  @Override
  boolean tells() {
    return false;
  }

  @Override
  String data() {
    return state == null ? "" : HistoryView.table(state, words, 0);
  }
}
