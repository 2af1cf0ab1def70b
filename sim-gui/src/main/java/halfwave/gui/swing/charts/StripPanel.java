package halfwave.gui.swing.charts;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.charts.Healthy;
import halfwave.gui.presentation.charts.HistoryView;
import halfwave.gui.presentation.charts.StripView;
import halfwave.gui.swing.widget.Theme;
import java.awt.BorderLayout;
import java.util.List;
import javax.swing.JComboBox;
import org.jspecify.annotations.Nullable;

/** The timeline strip with the choice of how much it shows. */
final class StripPanel extends ChartPanel {

  private static final long serialVersionUID = 1L;
  private static final List<Long> SPANS_SECONDS = List.of(30L, 90L, 180L, 600L, 3600L);

  private final transient Wording words;
  private final StripCanvas canvas;
  private final JComboBox<String> span;
  private @Nullable transient State state;

  StripPanel(Theme theme, Wording words) {
    super(theme, words.text("strip.title"));
    this.words = words;
    canvas = new StripCanvas(theme);
    span = new JComboBox<>(SPANS_SECONDS.stream().map(this::spanName).toArray(String[]::new));
    span.setSelectedIndex(2);
    span.setName("strip.span");
    span.setToolTipText(words.text("strip.span"));
    span.getAccessibleContext().setAccessibleName(words.text("strip.span"));
    span.addActionListener(e -> refresh());
    control(span);
    add(canvas, BorderLayout.CENTER);
  }

  private String spanName(long seconds) {
    return seconds < 120
        ? words.text("strip.span-seconds", seconds)
        : words.text("strip.span-minutes", seconds / 60);
  }

  @Override
  void show(State newState, @Nullable Healthy healthy) {
    state = newState;
    refresh();
  }

  @Override
  ChartPicture picture() {
    return caption ->
        Clip.sheet(theme, caption, canvas.getWidth(), canvas.getHeight(), canvas::paintComponent);
  }

  @Override
  boolean tells() {
    return false;
  }

  @Override
  String data() {
    return state == null
        ? ""
        : HistoryView.table(state, words, state.moment().timeMillis() - spanMillis());
  }

  private long spanMillis() {
    return 1000 * SPANS_SECONDS.get(span.getSelectedIndex());
  }

  private void refresh() {
    if (state != null && canvas.getWidth() > 0) {
      StripView view = StripView.of(state, words, spanMillis(), canvas.columns());
      canvas.show(view);
      say(view.spoken());
      canvas.getAccessibleContext().setAccessibleDescription(view.spoken());
    }
  }
}
