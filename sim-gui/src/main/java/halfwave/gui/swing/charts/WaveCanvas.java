package halfwave.gui.swing.charts;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.charts.ChartAxis;
import halfwave.gui.presentation.charts.Probe;
import halfwave.gui.presentation.charts.Trace;
import halfwave.gui.presentation.charts.WaveView;
import halfwave.gui.swing.widget.Theme;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.event.MouseEvent;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Paints a voltage and the flame current over one cycle: side by side where there is room. */
final class WaveCanvas extends ChartCanvas {

  private static final long serialVersionUID = 1L;

  /** From this shape on the two stand side by side (width over height). */
  private static final double WIDE = 2.4;

  /** The current, which matters more, gets this share of the height. */
  private static final double CURRENT_SHARE = 0.58;

  /** The other half-cycle has its own words. */
  private static final double FIRST_HALF = 0.5;

  private final transient Wording words;
  private @Nullable transient WaveView view;
  private transient Rectangle2D voltsPlot = new Rectangle2D.Double();
  private transient Rectangle2D ampsPlot = new Rectangle2D.Double();

  WaveCanvas(Theme theme, Wording words) {
    super(theme);
    this.words = words;
  }

  void show(@Nullable WaveView newView) {
    view = newView;
    repaint();
  }

  @Override
  double place(double x, double y) {
    double inVolts = placeIn(voltsPlot, x);
    boolean side = voltsPlot.getMaxX() < ampsPlot.getX();
    return side && inVolts > 1 ? placeIn(ampsPlot, x) : inVolts;
  }

  @Override
  public @Nullable String getToolTipText(MouseEvent event) {
    double at = place(event.getX(), event.getY());
    return view == null || !(at >= 0 && at <= 1) ? null : view.probe(at, words).words();
  }

  @Override
  void draw(ChartInk ink, int width, int height) {
    WaveView v = view;
    if (v == null) {
      return;
    }
    Rectangle2D first;
    Rectangle2D second;
    boolean side = width > WIDE * height;
    if (side) {
      double gap = theme.px(16);
      double half = 0.44 * (width - gap);
      first = new Rectangle2D.Double(0, 0, half, height);
      second = new Rectangle2D.Double(half + gap, 0, width - half - gap, height);
    } else {
      double upper = (1 - CURRENT_SHARE) * height;
      first = new Rectangle2D.Double(0, 0, width, upper);
      second = new Rectangle2D.Double(0, upper, width, height - upper);
    }
    voltsPlot = new ChartAxes(ink).plot(first, v.volts(), side);
    ampsPlot = new ChartAxes(ink).plot(second, v.amps(), true);
    if (!side) {
      align();
    }
    volts(ink, v, first, v.time(), side);
    amps(ink, v, second);
    cursor(ink, v);
  }

  /** One above the other, both begin and end at the same place. */
  private void align() {
    double left = Math.max(voltsPlot.getX(), ampsPlot.getX());
    double width = voltsPlot.getMaxX() - left;
    voltsPlot.setRect(left, voltsPlot.getY(), width, voltsPlot.getHeight());
    ampsPlot.setRect(left, ampsPlot.getY(), width, ampsPlot.getHeight());
  }

  private void volts(ChartInk ink, WaveView v, Rectangle2D outer, ChartAxis time, boolean side) {
    ChartAxis bare = new ChartAxis("", time.low(), time.high(), false, List.of());
    new ChartAxes(ink).axes(outer, voltsPlot, side ? time : bare, v.volts(), ink.palette.volts());
    zero(ink, voltsPlot, v.volts());
    Trace ghost = v.healthyVoltage();
    if (ghost != null) {
      ink.ghost(voltsPlot, ghost);
    }
    ink.curve(voltsPlot, v.voltage(), ink.palette.volts());
    if (ghost != null) {
      ink.name(voltsPlot, ghost, v.voltage(), words.text("chart.healthy"), ink.palette.softInk());
    }
  }

  private void zero(ChartInk ink, Rectangle2D a, ChartAxis up) {
    ink.level(a, up.place(0), ink.palette.softInk(), ink.solid(0.9));
  }

  private void amps(ChartInk ink, WaveView v, Rectangle2D outer) {
    Color orange = ink.palette.microamps();
    new ChartAxes(ink).axes(outer, ampsPlot, v.time(), v.amps(), orange);
    double zero = ChartInk.y(ampsPlot, v.amps().place(0));
    Path2D area = ChartInk.path(ampsPlot, v.current());
    area.lineTo(ampsPlot.getMaxX(), zero);
    area.lineTo(ampsPlot.getX(), zero);
    area.closePath();
    Graphics2D g = ink.g;
    g.setColor(ChartInk.faint(orange, ink.palette.dark() ? 0.28 : 0.18));
    Graphics2D above = (Graphics2D) g.create();
    above.clip(
        new Rectangle2D.Double(
            ampsPlot.getX(), ampsPlot.getY(), ampsPlot.getWidth(), zero - ampsPlot.getY()));
    above.fill(area);
    above.dispose();
    Graphics2D below = (Graphics2D) g.create();
    below.clip(
        new Rectangle2D.Double(
            ampsPlot.getX(), zero, ampsPlot.getWidth(), ampsPlot.getMaxY() - zero));
    new ChartInk(below, theme).hatch(area, orange);
    below.dispose();
    zero(ink, ampsPlot, v.amps());
    Trace ghost = v.healthyCurrent();
    if (ghost != null) {
      ink.ghost(ampsPlot, ghost);
    }
    ink.curve(ampsPlot, v.current(), orange);
    ink.level(ampsPlot, v.mean(), ink.palette.ink(), ink.dashed(1.4, 7, 4));
    names(ink, v, zero);
    if (ghost != null) {
      ink.name(
          ampsPlot,
          ghost,
          v.current(),
          words.text("chart.healthy"),
          ink.palette.softInk(),
          FIRST_HALF);
    }
  }

  private void names(ChartInk ink, WaveView v, double zero) {
    double mean = ChartInk.y(ampsPlot, v.mean());
    String meanWords = v.meanWords();
    double line = ink.line();
    ink.words(
        meanWords,
        ink.palette.ink(),
        ampsPlot.getMaxX() - ink.width(meanWords) - theme.px(4),
        mean - theme.px(5),
        ampsPlot);
    int high = 0;
    int low = 0;
    double[] levels = v.current().levels();
    for (int k = 0; k < levels.length; k++) {
      high = levels[k] > levels[high] ? k : high;
      low = levels[k] < levels[low] ? k : low;
    }
    lobe(ink, v, high, zero, "wave.positive", line);
    lobe(ink, v, low, zero, "wave.negative", line);
  }

  /** In the middle of a half-cycle, where that is large enough. */
  private void lobe(ChartInk ink, WaveView v, int crest, double zero, String key, double line) {
    double y = ChartInk.y(ampsPlot, v.current().levels()[crest]);
    double tall = Math.abs(zero - y);
    if (tall < 0.7 * line) {
      return;
    }
    String text = words.text(key);
    double x = ChartInk.x(ampsPlot, v.current().at()[crest]) - ink.width(text) / 2;
    double middle = (zero + y) / 2 + 0.3 * line;
    ink.words(text, ink.palette.ink(), x, middle, ampsPlot);
  }

  private void cursor(ChartInk ink, WaveView v) {
    if (Double.isNaN(cursor())) {
      return;
    }
    Probe probe = v.probe(cursor(), words);
    cursorLine(ink, voltsPlot, probe.at());
    cursorLine(ink, ampsPlot, probe.at());
    ink.dot(
        ChartInk.x(voltsPlot, probe.at()),
        ChartInk.y(voltsPlot, probe.levels().get(0)),
        ink.palette.volts());
    ink.dot(
        ChartInk.x(ampsPlot, probe.at()),
        ChartInk.y(ampsPlot, probe.levels().get(1)),
        ink.palette.microamps());
  }
}
