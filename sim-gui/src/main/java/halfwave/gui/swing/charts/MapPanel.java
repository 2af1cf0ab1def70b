package halfwave.gui.swing.charts;

import halfwave.bench.RodPosition;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.presentation.charts.MapView;
import halfwave.gui.presentation.charts.RodMap;
import halfwave.gui.swing.widget.Theme;
import java.awt.BorderLayout;
import java.awt.geom.Point2D;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** The reading over the place of the rod; a click moves the rod. */
final class MapPanel extends AskingPanel<RodMap.Question, RodMap.Answer> {

  private static final long serialVersionUID = 1L;

  private final transient Wording words;
  private final transient Workbench workbench;
  private final MapCanvas canvas;
  private @Nullable transient MapView view;

  MapPanel(
      Theme theme,
      Wording words,
      Workbench workbench,
      Executor background,
      Consumer<Throwable> failed) {
    super(theme, words, words.text("map.title"), new RodMap(), background, failed);
    this.words = words;
    this.workbench = workbench;
    canvas = new MapCanvas(theme, words, this::clicked);
    canvas.setName("map.canvas");
    canvas.getAccessibleContext().setAccessibleName(words.text("map.title"));
    canvas.onCursor(this::told);
    waitingControls();
    add(canvas, BorderLayout.CENTER);
  }

  @Override
  RodMap.Question question(State present) {
    return RodMap.Question.of(present);
  }

  private static RodPosition rod(State present) {
    return present.moment().bench().condition().rodPosition();
  }

  @Override
  void render() {
    RodMap.Answer answer = inquiry.answer();
    State present = state();
    if (answer != null && present != null) {
      view = MapView.of(answer, rod(present), present.moment().settings().sensing(), words);
    }
    canvas.show(view);
    told();
  }

  private void told() {
    MapView v = view;
    Point2D at = canvas.pointed();
    String said =
        v == null
            ? words.text("chart.waiting")
            : at == null ? v.summary() : v.probe(at.getX(), at.getY(), words).words();
    say(said);
    canvas
        .getAccessibleContext()
        .setAccessibleDescription(v == null || at != null ? said : v.spoken());
  }

  private void clicked(Point2D at) {
    State present = state();
    if (view != null && present != null) {
      Intent intent = view.click(rod(present), at.getX(), at.getY(), words);
      if (intent != null) {
        workbench.want(intent);
      }
    }
  }

  @Override
  ChartPicture picture() {
    return canvas::picture;
  }

  @Override
  String data() {
    return view == null ? "" : view.table(words);
  }
}
