package halfwave.gui.swing.charts;

import halfwave.circuit.Solved;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.charts.Healthy;
import halfwave.gui.presentation.charts.LadderView;
import halfwave.gui.swing.widget.Theme;
import java.awt.BorderLayout;
import org.jspecify.annotations.Nullable;

/** The voltage ladder. */
final class LadderPanel extends ChartPanel {

  private static final long serialVersionUID = 1L;

  private final transient Wording words;
  private final LadderCanvas canvas;
  private @Nullable transient LadderView view;

  LadderPanel(Theme theme, Wording words) {
    super(theme, words.text("ladder.title"));
    this.words = words;
    canvas = new LadderCanvas(theme, words);
    canvas.setName("ladder.canvas");
    canvas.getAccessibleContext().setAccessibleName(words.text("ladder.title"));
    add(canvas, BorderLayout.CENTER);
  }

  @Override
  void show(State state, @Nullable Healthy healthy) {
    view = LadderView.of(state, healthy, words, canvas.steps());
    canvas.show(view);
    String none =
        state.readout().steady() instanceof Solved ? "chart.no-current" : "chart.unsolved";
    say(view == null ? words.text(none) : view.summary());
    canvas
        .getAccessibleContext()
        .setAccessibleDescription(view == null ? words.text(none) : view.spoken());
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
