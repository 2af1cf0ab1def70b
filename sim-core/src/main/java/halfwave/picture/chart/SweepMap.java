package halfwave.picture.chart;

import halfwave.bench.Bench;
import halfwave.bench.Condition;
import halfwave.display.DisplayUnit;
import halfwave.display.Sentences;
import halfwave.explain.Axis;
import halfwave.explain.Sweep;
import halfwave.explain.SweepRow.Taken;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.picture.PaperLook;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.FontRenderContext;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.PaintScaleLegend;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;

/** DC over two parameters as a map; the first parameter runs across, the second upwards. */
final class SweepMap extends AbstractXYAnnotation {

  private static final long serialVersionUID = 1L;

  /** Longest title of an upright axis (units of the drawing). */
  private static final double TITLE_LENGTH = 420;

  private final transient Sweep sweep;
  private final transient Sentences sentences;
  private final transient Axis across;
  private final transient Axis up;

  /** By across, then up; NaN where nothing was read. */
  private final transient double[][] microamps;

  private SweepMap(Sweep sweep, Sentences sentences) {
    this.sweep = sweep;
    this.sentences = sentences;
    across = sweep.axes().get(0);
    up = sweep.axes().get(1);
    microamps = microamps(sweep);
  }

  static XYPlot plot(Sweep sweep, Sentences sentences) {
    SweepMap map = new SweepMap(sweep, sentences);
    ValueAxis upright = ValueAxes.of(map.up, sentences, 0.5);
    fit(upright);
    ValueAxes.loosen(upright);
    XYPlot plot = new XYPlot(null, ValueAxes.of(map.across, sentences, 0.5), upright, null);
    plot.addAnnotation(map);
    return plot;
  }

  /** The bar that says which colour is which current. */
  static PaintScaleLegend bar(Sweep sweep, Sentences sentences) {
    NumberAxis axis =
        ValueAxes.linear(
            ValueAxes.title(
                sentences.text(Message.of(MessageKey.CHART_DC_CURRENT)),
                DisplayUnit.MICROAMP,
                sentences),
            sentences);
    ValueAxes.loosen(axis);
    PaintScaleLegend bar = new PaintScaleLegend(scale(microamps(sweep)), axis);
    bar.setPosition(RectangleEdge.RIGHT);
    bar.setStripWidth(22);
    bar.setSubdivisionCount(240);
    bar.setStripOutlineVisible(true);
    bar.setStripOutlinePaint(PaperLook.HAIRLINE);
    bar.setBackgroundPaint(PaperLook.GROUND);
    bar.setMargin(new RectangleInsets(0, 14, 52, 0));
    return bar;
  }

  private static double[][] microamps(Sweep sweep) {
    int columns = sweep.axes().get(0).count();
    int lines = sweep.axes().get(1).count();
    double[][] all = new double[columns][lines];
    for (int n = 0; n < columns * lines; n++) {
      double shown =
          sweep
              .rows()
              .get(n)
              .taken()
              .map(Taken::seriesMeanAmps)
              .map(DisplayUnit.MICROAMP::fromSi)
              .orElse(Double.NaN);
      all[n / lines][n % lines] = shown;
    }
    return all;
  }

  private static CurrentScale scale(double[][] microamps) {
    double low = 0;
    double high = 0;
    for (double[] column : microamps) {
      low = Math.min(low, Arrays.stream(column).filter(v -> v <= 0).min().orElse(0));
      high = Math.max(high, Arrays.stream(column).filter(v -> v >= 0).max().orElse(0));
    }
    return new CurrentScale(low, high);
  }

  private static void fit(ValueAxis axis) {
    Font font = axis.getLabelFont();
    FontRenderContext context = new FontRenderContext(null, true, true);
    double length = font.getStringBounds(axis.getLabel(), context).getWidth();
    if (length > TITLE_LENGTH) {
      axis.setLabelFont(font.deriveFont((float) (font.getSize2D() * TITLE_LENGTH / length)));
    }
  }

  @Override
  public void draw(
      Graphics2D g,
      XYPlot plot,
      Rectangle2D area,
      ValueAxis domain,
      ValueAxis range,
      int renderer,
      PlotRenderingInfo info) {
    double[] x = places(across, domain, area, RectangleEdge.BOTTOM);
    double[] y = places(up, range, area, RectangleEdge.LEFT);
    CurrentScale scale = scale(microamps);
    cells(g, x, y, scale);
    Contours contours = new Contours(microamps, x, y);
    contours.draw(g, scale, sentences);
    words(g, x, y);
    here(g, area, domain, range);
  }

  private double[] places(Axis axis, ValueAxis drawn, Rectangle2D area, RectangleEdge edge) {
    DisplayUnit unit = ValueAxes.unit(axis, sentences);
    return axis.values().stream()
        .mapToDouble(si -> drawn.valueToJava2D(unit.fromSi(si), area, edge))
        .toArray();
  }

  private void cells(Graphics2D g, double[] x, double[] y, CurrentScale scale) {
    // smoothed edges would let the ground shine through between neighbours
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
    for (int i = 0; i < x.length; i++) {
      for (int j = 0; j < y.length; j++) {
        double v = microamps[i][j];
        g.setPaint(Double.isNaN(v) ? PaperLook.HAIRLINE : scale.getPaint(v));
        Rectangle2D cell = new Rectangle2D.Double();
        cell.setFrameFromDiagonal(edge(x, i, -1), edge(y, j, -1), edge(x, i, 1), edge(y, j, 1));
        g.fill(cell);
      }
    }
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
  }

  /** Half way to the neighbour; at the ends as far out as in. */
  private static double edge(double[] places, int k, int side) {
    int next = k + side;
    return next >= 0 && next < places.length
        ? (places[k] + places[next]) / 2
        : places[k] - (places[k - side] - places[k]) / 2;
  }

  /** Says what hatching and blank mean, at the strongest of each. */
  private void words(Graphics2D g, double[] x, double[] y) {
    int[] reversed = null;
    int[] blank = null;
    double least = -CurrentScale.NOTHING;
    for (int i = 0; i < x.length; i++) {
      for (int j = 0; j < y.length; j++) {
        if (microamps[i][j] < least) {
          least = microamps[i][j];
          reversed = new int[] {i, j};
        }
        if (Double.isNaN(microamps[i][j])) {
          blank = blank == null || i <= x.length / 2 ? new int[] {i, j} : blank;
        }
      }
    }
    if (reversed != null) {
      say(g, MessageKey.CHART_REVERSED, x, y, reversed);
    }
    if (blank != null) {
      say(g, MessageKey.CHART_NO_READING, x, y, blank);
    }
  }

  private void say(Graphics2D g, MessageKey key, double[] x, double[] y, int[] cell) {
    String text = sentences.text(Message.of(key));
    double width = PaperLook.width(g, text, PaperLook.NOTE);
    double left = Math.min(x[0], x[x.length - 1]) + 6;
    double right = Math.max(x[0], x[x.length - 1]) - width - 6;
    double top = Math.min(y[0], y[y.length - 1]) + 20;
    double place = Math.max(left, Math.min(right, x[cell[0]] - width / 2));
    double bottom = Math.max(y[0], y[y.length - 1]) - 6;
    double line = Math.min(bottom, Math.max(top, y[cell[1]] + 6));
    PaperLook.words(g, text, PaperLook.NOTE, PaperLook.INK, place, line);
  }

  /** A ring where the healthy bench stands. */
  private void here(Graphics2D g, Rectangle2D area, ValueAxis domain, ValueAxis range) {
    Bench healthy = sweep.bench().with(Condition.HEALTHY);
    double siAcross = across.parameter().of(healthy);
    double siUp = up.parameter().of(healthy);
    double x = ValueAxes.unit(across, sentences).fromSi(siAcross);
    double y = ValueAxes.unit(up, sentences).fromSi(siUp);
    if (!(domain.getRange().contains(x) && range.getRange().contains(y))) {
      return;
    }
    double cx = domain.valueToJava2D(x, area, RectangleEdge.BOTTOM);
    double cy = range.valueToJava2D(y, area, RectangleEdge.LEFT);
    g.setStroke(PaperLook.solid(5));
    g.setPaint(PaperLook.SHEET);
    g.draw(new Ellipse2D.Double(cx - 7, cy - 7, 14, 14));
    g.setStroke(PaperLook.solid(2.2f));
    g.setPaint(PaperLook.INK);
    g.draw(new Ellipse2D.Double(cx - 7, cy - 7, 14, 14));
    String both =
        ValueAxes.value(across, siAcross, sentences) + "; " + ValueAxes.value(up, siUp, sentences);
    String text = sentences.text(Message.of(MessageKey.CHART_HEALTHY, Argument.text(both)));
    double width = PaperLook.width(g, text, PaperLook.NOTE);
    double left = cx + 14 + width < area.getMaxX() ? cx + 14 : cx - 14 - width;
    PaperLook.words(
        g, text, PaperLook.NOTE, PaperLook.INK, left, Math.max(cy - 8, area.getMinY() + 22));
  }
}
