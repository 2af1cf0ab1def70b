package halfwave.gui.swing.charts;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.charts.Healthy;
import halfwave.gui.presentation.charts.WaveView;
import halfwave.gui.presentation.charts.WaveView.Tap;
import halfwave.gui.swing.widget.Theme;
import java.awt.BorderLayout;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import org.jspecify.annotations.Nullable;

/** The waveforms with the choice of the voltage. */
final class WavePanel extends ChartPanel {

  private static final long serialVersionUID = 1L;

  private final transient Wording words;
  private final WaveCanvas canvas;
  private final JComboBox<Tap> tap = new JComboBox<>(Tap.values());
  private @Nullable transient State state;
  private @Nullable transient Healthy healthy;
  private @Nullable transient WaveView view;

  WavePanel(Theme theme, Wording words) {
    super(theme, words.text("wave.title"));
    this.words = words;
    canvas = new WaveCanvas(theme, words);
    canvas.setName("wave.canvas");
    canvas.getAccessibleContext().setAccessibleName(words.text("wave.title"));
    canvas.onCursor(this::told);
    tap.setSelectedItem(Tap.TERMINAL);
    tap.setName("wave.tap");
    tap.setToolTipText(words.text("wave.tap"));
    tap.getAccessibleContext().setAccessibleName(words.text("wave.tap"));
    DefaultListCellRenderer names = new DefaultListCellRenderer();
    tap.setRenderer(
        (list, value, index, selected, focused) -> {
          names.getListCellRendererComponent(list, value, index, selected, focused);
          names.setText(value.name(words));
          return names;
        });
    tap.addActionListener(e -> refresh());
    control(tap);
    add(canvas, BorderLayout.CENTER);
  }

  @Override
  void show(State newState, @Nullable Healthy newHealthy) {
    state = newState;
    healthy = newHealthy;
    refresh();
  }

  private void refresh() {
    if (state == null || canvas.getWidth() == 0) {
      return;
    }
    Tap chosen = tap.getItemAt(tap.getSelectedIndex());
    view = WaveView.of(state, healthy, chosen, words, canvas.columns());
    canvas.show(view);
    told();
    String spoken = view == null ? words.text("chart.unsolved") : view.spoken();
    canvas.getAccessibleContext().setAccessibleDescription(spoken);
  }

  /** What the cursor is on, or what it is all about. */
  private void told() {
    if (view == null) {
      say(words.text("chart.unsolved"));
    } else if (Double.isNaN(canvas.cursor())) {
      say(view.summary());
    } else {
      String there = view.probe(canvas.cursor(), words).words();
      say(there);
      canvas.getAccessibleContext().setAccessibleDescription(there);
    }
  }

  @Override
  ChartPicture picture() {
    return canvas::picture;
  }

  @Override
  String data() {
    return view == null ? "" : view.table();
  }
}
