package halfwave.gui.swing.charts;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.charts.HistoryView;
import halfwave.gui.presentation.charts.HistoryView.Line;
import halfwave.gui.swing.widget.Theme;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import org.jspecify.annotations.Nullable;

/** Paints the signal over the whole recording, with what was done as marks above it. */
final class HistoryCanvas extends ChartCanvas {

  private static final long serialVersionUID = 1L;
  private static final double NEAR = 7;

  private final transient Wording words;
  private @Nullable transient HistoryView view;
  private transient Rectangle2D plot = new Rectangle2D.Double();
  private int marked = -1;

  HistoryCanvas(Theme theme, Wording words) {
    super(theme);
    this.words = words;
  }

  void show(HistoryView newView) {
    view = newView;
    repaint();
  }

  /** Which act stands out, or −1. */
  void mark(int line) {
    marked = line;
    repaint();
  }

  @Override
  double place(double x, double y) {
    return placeIn(plot, x);
  }

  @Override
  public @Nullable String getToolTipText(MouseEvent event) {
    HistoryView v = view;
    double at = place(event.getX(), event.getY());
    if (v == null || !(at >= 0 && at <= 1)) {
      return null;
    }
    for (Line line : v.lines()) {
      if (Math.abs(ChartInk.x(plot, line.at()) - event.getX()) < theme.px(NEAR)) {
        return words.text("history.tip", line.clock(), line.words());
      }
    }
    return v.probe(at, words).words();
  }

  @Override
  void draw(ChartInk ink, int width, int height) {
    HistoryView v = view;
    if (v == null) {
      return;
    }
    Rectangle2D outer = new Rectangle2D.Double(0, 0, width, height);
    plot = new ChartAxes(ink).plot(outer, v.amps(), true);
    new ChartAxes(ink).axes(outer, plot, v.time(), v.amps(), ink.palette.microamps());
    ink.level(plot, v.pickUp(), ink.palette.softInk(), ink.dashed(1, 4, 3));
    ink.level(plot, v.dropOut(), ink.palette.ink(), ink.dashed(1.2, 1.5, 3));
    boolean ghost = !Double.isNaN(v.healthy());
    if (ghost) {
      ink.level(plot, v.healthy(), ink.palette.softInk(), ink.ghostStroke());
    }
    acts(ink, v);
    ink.curve(plot, v.signal(), ink.palette.microamps());
    limits(ink, v, ghost);
    if (!Double.isNaN(cursor())) {
      var probe = v.probe(cursor(), words);
      cursorLine(ink, plot, probe.at());
      ink.dot(
          ChartInk.x(plot, probe.at()),
          ChartInk.y(plot, probe.levels().get(0)),
          ink.palette.microamps());
      ink.words(
          probe.words(),
          ink.palette.ink(),
          ChartInk.x(plot, probe.at()) + theme.px(6),
          plot.getMaxY() - theme.px(4),
          plot);
    }
  }

  private void limits(ChartInk ink, HistoryView v, boolean ghost) {
    double x = plot.getX() + theme.px(5);
    double up = ChartInk.y(plot, v.pickUp()) - theme.px(3);
    ink.words(v.pickUpWords(), ink.palette.softInk(), x, up, plot);
    double down = ChartInk.y(plot, v.dropOut()) + 0.8 * ink.line();
    ink.words(v.dropOutWords(), ink.palette.ink(), x, down, plot);
    if (ghost) {
      double y = ChartInk.y(plot, v.healthy()) - theme.px(3);
      ink.words(words.text("chart.healthy"), ink.palette.softInk(), x, y, plot);
    }
  }

  private void acts(ChartInk ink, HistoryView v) {
    for (int k = 0; k < v.lines().size(); k++) {
      double at = v.lines().get(k).at();
      if (at < 0 || at > 1) {
        continue;
      }
      double x = ChartInk.x(plot, at);
      double r = theme.px(k == marked ? 5 : 3);
      ink.g.setColor(
          k == marked ? ink.palette.accent() : ChartInk.faint(ink.palette.accent(), 0.6));
      ink.g.setStroke(ink.solid(k == marked ? 2 : 1));
      ink.g.draw(new Line2D.Double(x, plot.getY(), x, plot.getMaxY()));
      ink.g.fill(new Ellipse2D.Double(x - r, plot.getY() - r, 2 * r, 2 * r));
    }
  }
}
