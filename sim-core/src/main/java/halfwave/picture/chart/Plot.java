package halfwave.picture.chart;

import halfwave.display.Sentences;
import halfwave.picture.PaperLook;
import halfwave.picture.Picture;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/**
 * Curves that somebody else has worked out, in the look of the other charts: for notebooks. The
 * words come from the caller, units included. Immutable.
 *
 * <pre>{@code
 * Plot.of("Rod moved up", "up (mm)", "current (µA)").line("DC", xs, ys).level(0.8, "pick-up")
 * }</pre>
 */
public final class Plot implements Picture {

  private static final double WIDTH = 960;
  private static final double HEIGHT = 560;

  /** Told apart by brightness too, and by their strokes: for print and for the colour-blind. */
  private static final List<Color> INKS =
      List.of(
          PaperLook.MICROAMPS,
          PaperLook.FLAME,
          PaperLook.ACCENT,
          PaperLook.INK,
          new Color(0x7A3E8E));

  private record Curve(String name, List<Double> xs, List<Double> ys, boolean joined) {}

  /** A straight line through the whole plot; a class, as its unit is that of the axis. */
  private static final class Level {
    private final double value;
    private final String name;
    private final boolean upright;

    Level(double value, String name, boolean upright) {
      this.value = value;
      this.name = name;
      this.upright = upright;
    }
  }

  private final String title;
  private final String xTitle;
  private final String yTitle;
  private final boolean logarithmic;
  private final List<Curve> curves;
  private final List<Level> levels;

  private Plot(
      String title,
      String xTitle,
      String yTitle,
      boolean logarithmic,
      List<Curve> curves,
      List<Level> levels) {
    this.title = title;
    this.xTitle = xTitle;
    this.yTitle = yTitle;
    this.logarithmic = logarithmic;
    this.curves = List.copyOf(curves);
    this.levels = List.copyOf(levels);
  }

  /** An empty plot with its title and what its axes measure. */
  public static Plot of(String title, String xTitle, String yTitle) {
    return new Plot(title, xTitle, yTitle, false, List.of(), List.of());
  }

  /** The same over a logarithmic axis; all that is drawn over it must be above zero. */
  public Plot logarithmic() {
    return new Plot(title, xTitle, yTitle, true, curves, levels);
  }

  /** The same with one more curve. */
  public Plot line(String name, List<Double> xs, List<Double> ys) {
    return with(new Curve(name, xs, ys, true));
  }

  /** The same with points that nothing joins. */
  public Plot points(String name, List<Double> xs, List<Double> ys) {
    return with(new Curve(name, xs, ys, false));
  }

  private Plot with(Curve curve) {
    if (curve.xs().size() != curve.ys().size() || curve.xs().isEmpty()) {
      throw new IllegalArgumentException(
          curve.name()
              + ": xs, ys = "
              + curve.xs().size()
              + ", "
              + curve.ys().size()
              + " values: as many of the one as of the other, and at least one");
    }
    List<Curve> more = new ArrayList<>(curves);
    more.add(curve);
    return new Plot(title, xTitle, yTitle, logarithmic, more, levels);
  }

  /** The same with a level line, named at its right end. */
  public Plot level(double y, String name) {
    return with(new Level(y, name, false));
  }

  /** The same with an upright line, named at its upper end. */
  public Plot upright(double x, String name) {
    return with(new Level(x, name, true));
  }

  private Plot with(Level level) {
    List<Level> more = new ArrayList<>(levels);
    more.add(level);
    return new Plot(title, xTitle, yTitle, logarithmic, curves, more);
  }

  @Override
  public double width() {
    return WIDTH;
  }

  @Override
  public double height() {
    return HEIGHT;
  }

  @Override
  public void paint(Graphics2D graphics) {
    chart().draw(graphics, new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
  }

  private JFreeChart chart() {
    XYSeriesCollection data = new XYSeriesCollection();
    XYLineAndShapeRenderer drawn = new XYLineAndShapeRenderer();
    drawn.setDrawSeriesLineAsPath(true);
    for (int k = 0; k < curves.size(); k++) {
      Curve curve = curves.get(k);
      XYSeries series = new XYSeries(curve.name(), false, true);
      for (int n = 0; n < curve.xs().size(); n++) {
        series.add(curve.xs().get(n), curve.ys().get(n));
      }
      data.addSeries(series);
      drawn.setSeriesPaint(k, INKS.get(k % INKS.size()));
      drawn.setSeriesStroke(k, stroke(k));
      drawn.setSeriesLinesVisible(k, curve.joined());
      drawn.setSeriesShapesVisible(k, !curve.joined());
      drawn.setSeriesShape(k, new Ellipse2D.Double(-5, -5, 10, 10));
    }
    Sentences numbers = Sentences.in(Locale.ENGLISH);
    NumberAxis upright = ValueAxes.linear(yTitle, numbers);
    upright.setUpperMargin(0.12);
    ValueAxes.loosen(upright);
    XYPlot plot = new XYPlot(data, level(numbers), upright, drawn);
    ValueAxes.dress(plot);
    plot.setRangeZeroBaselineVisible(true);
    plot.setRangeZeroBaselinePaint(PaperLook.SOFT_INK);
    plot.setRangeZeroBaselineStroke(PaperLook.solid(1.2f));
    levels.forEach(line -> mark(plot, line));
    JFreeChart chart = new JFreeChart(null, PaperLook.TITLE, plot, false);
    chart.setBackgroundPaint(PaperLook.GROUND);
    chart.setPadding(new RectangleInsets(14, 16, 10, 24));
    chart.setTitle(heading());
    if (curves.size() > 1) {
      chart.addSubtitle(legend(plot));
    }
    return chart;
  }

  private ValueAxis level(Sentences numbers) {
    NumberAxis linear = ValueAxes.linear(xTitle, numbers);
    linear.setAutoRangeIncludesZero(false);
    linear.setLowerMargin(0.01);
    linear.setUpperMargin(0.01);
    if (!logarithmic) {
      return linear;
    }
    DecadeAxis decades = new DecadeAxis(xTitle, linear.getNumberFormatOverride());
    ValueAxes.dress(decades);
    return decades;
  }

  private static Stroke stroke(int k) {
    float[][] dashes = {{}, {11, 6}, {3, 5}, {14, 5, 3, 5}};
    float[] dash = dashes[k % dashes.length];
    return dash.length == 0
        ? PaperLook.solid(3.2f)
        : new BasicStroke(3, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dash, 0);
  }

  private static void mark(XYPlot plot, Level line) {
    ValueMarker marker = new ValueMarker(line.value, PaperLook.SOFT_INK, PaperLook.dashed(1.6f, 4));
    marker.setLabel(line.name);
    marker.setLabelFont(PaperLook.NOTE);
    marker.setLabelPaint(PaperLook.SOFT_INK);
    marker.setLabelBackgroundColor(new Color(0, 0, 0, 0));
    if (line.upright) {
      marker.setLabelAnchor(RectangleAnchor.TOP_RIGHT);
      marker.setLabelTextAnchor(TextAnchor.TOP_LEFT);
      marker.setLabelOffset(new RectangleInsets(4, 6, 4, 6));
      plot.addDomainMarker(marker, Layer.FOREGROUND);
    } else {
      marker.setLabelAnchor(RectangleAnchor.TOP_RIGHT);
      marker.setLabelTextAnchor(TextAnchor.BOTTOM_RIGHT);
      marker.setLabelOffset(new RectangleInsets(2, 6, 2, 6));
      plot.addRangeMarker(marker, Layer.FOREGROUND);
    }
  }

  private TextTitle heading() {
    TextTitle heading = SweepChart.title(title, true);
    heading.setPadding(new RectangleInsets(0, 4, 8, 4));
    return heading;
  }

  private static LegendTitle legend(XYPlot plot) {
    LegendTitle legend =
        new LegendTitle(
            () -> {
              var items = plot.getLegendItems();
              for (int k = 0; k < items.getItemCount(); k++) {
                items.get(k).setLine(new Line2D.Double(-22, 0, 22, 0));
              }
              return items;
            });
    legend.setItemFont(PaperLook.NOTE);
    legend.setItemPaint(PaperLook.INK);
    legend.setPosition(RectangleEdge.BOTTOM);
    legend.setItemLabelPadding(new RectangleInsets(2, 6, 2, 24));
    return legend;
  }
}
