package halfwave.picture.chart;

import halfwave.display.DisplayUnit;
import halfwave.display.Sentences;
import halfwave.forecast.Calendar;
import halfwave.forecast.Forecast;
import halfwave.forecast.Forecast.Point;
import halfwave.forecast.Logged;
import halfwave.io.evidence.ForecastWords;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.picture.Ink;
import halfwave.picture.LabelPlacer;
import halfwave.picture.Palette;
import halfwave.picture.PaperLook;
import halfwave.picture.Picture;
import halfwave.quantity.Dimension;
import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.Marker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.Range;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;
import org.jspecify.annotations.Nullable;

/** A forecast as a picture: median and band over hours of flame, the limit, the day of service. */
public final class ForecastChart {

  private static final double HOUR_SECONDS = 3600;
  private static final float BAND_OPACITY = 0.22f;

  /** What is beside the plot: the current's title and numbers on the left, a rim on the right. */
  private static final double BESIDE_PLOT = 110;

  /** From a line to its name, where there is room. */
  private static final double FROM_LINE = 6;

  private final Forecast forecast;
  private final Sentences sentences;
  private final Palette palette;
  private final double width;

  private ForecastChart(Forecast forecast, Sentences sentences, Palette palette, double width) {
    this.forecast = forecast;
    this.sentences = sentences;
    this.palette = palette;
    this.width = width;
  }

  /**
   * The picture; its type is made for a height of about 500.
   *
   * @param forecast what to show
   * @param calendar its dates, or null for hours alone
   * @param sentences language
   * @param palette colours
   * @param width in units of the drawing, above zero
   * @param height the same
   */
  public static Picture picture(
      Forecast forecast,
      @Nullable Calendar calendar,
      Sentences sentences,
      Palette palette,
      double width,
      double height) {
    JFreeChart chart = new ForecastChart(forecast, sentences, palette, width).chart(calendar);
    return Picture.of(
        width, height, g -> chart.draw(g, new Rectangle2D.Double(0, 0, width, height)));
  }

  private JFreeChart chart(@Nullable Calendar calendar) {
    NumberAxis hours = axis(MessageKey.CHART_FLAME, DisplayUnit.HOUR);
    hours.setAutoRangeIncludesZero(false);
    // a dot at the beginning is whole
    hours.setAutoRangeStickyZero(false);
    hours.setLowerMargin(0.01);
    hours.setUpperMargin(0.01);
    NumberAxis current = axis(MessageKey.CHART_DC_CURRENT, DisplayUnit.MICROAMP);
    current.setUpperMargin(0.1);
    XYPlot plot = new XYPlot(band(), hours, current, bandPen());
    plot.setDataset(1, log());
    plot.setRenderer(1, dots());
    plot.setBackgroundPaint(palette.sheet());
    plot.setOutlinePaint(palette.hairline());
    plot.setDomainGridlinePaint(palette.hairline());
    plot.setRangeGridlinePaint(palette.hairline());
    plot.setDomainGridlineStroke(PaperLook.solid(0.7f));
    plot.setRangeGridlineStroke(PaperLook.solid(0.7f));
    plot.setAxisOffset(new RectangleInsets(0, 0, 0, 0));
    limit(plot);
    service(plot, calendar);
    JFreeChart chart = new JFreeChart(null, PaperLook.TITLE, plot, false);
    chart.setBackgroundPaint(palette.sheet());
    chart.setPadding(new RectangleInsets(8, 6, 6, 16));
    chart.setTitle(title(MessageKey.CHART_FORECAST, PaperLook.BODY_STRONG, palette.ink()));
    chart.addSubtitle(title(MessageKey.CHART_FORECAST_BAND, PaperLook.NOTE, palette.softInk()));
    return chart;
  }

  private NumberAxis axis(MessageKey name, DisplayUnit unit) {
    NumberAxis axis =
        ValueAxes.linear(ValueAxes.title(said(Message.of(name)), unit, sentences), sentences);
    ValueAxes.loosen(axis);
    axis.setLabelPaint(palette.ink());
    axis.setTickLabelPaint(palette.ink());
    axis.setAxisLinePaint(palette.softInk());
    axis.setTickMarkPaint(palette.softInk());
    return axis;
  }

  private TextTitle title(MessageKey key, Font font, Color ink) {
    TextTitle title = new TextTitle(said(Message.of(key)), font);
    title.setPaint(ink);
    title.setHorizontalAlignment(HorizontalAlignment.LEFT);
    title.setTextAlignment(HorizontalAlignment.LEFT);
    title.setPadding(new RectangleInsets(0, 4, 4, 4));
    return title;
  }

  private String said(Message message) {
    return sentences.text(message);
  }

  private YIntervalSeriesCollection band() {
    YIntervalSeries series = new YIntervalSeries("");
    for (Point p : forecast.band()) {
      series.add(
          p.flameSeconds() / HOUR_SECONDS,
          DisplayUnit.MICROAMP.fromSi(p.middleAmps()),
          DisplayUnit.MICROAMP.fromSi(p.lowAmps()),
          DisplayUnit.MICROAMP.fromSi(p.highAmps()));
    }
    YIntervalSeriesCollection data = new YIntervalSeriesCollection();
    data.addSeries(series);
    return data;
  }

  private DeviationRenderer bandPen() {
    DeviationRenderer pen = new DeviationRenderer(true, false);
    pen.setSeriesPaint(0, palette.microamps());
    pen.setSeriesFillPaint(0, palette.microamps());
    pen.setSeriesStroke(0, PaperLook.solid(3f));
    pen.setAlpha(BAND_OPACITY);
    return pen;
  }

  private XYSeriesCollection log() {
    XYSeries series = new XYSeries("log");
    for (Logged logged : forecast.question().log()) {
      if (logged instanceof Logged.Read read) {
        series.add(read.flameSeconds() / HOUR_SECONDS, DisplayUnit.MICROAMP.fromSi(read.amps()));
      }
    }
    return new XYSeriesCollection(series);
  }

  private XYLineAndShapeRenderer dots() {
    XYLineAndShapeRenderer dots = new XYLineAndShapeRenderer(false, true);
    dots.setSeriesPaint(0, palette.ink());
    dots.setSeriesShape(0, new Ellipse2D.Double(-5, -5, 10, 10));
    return dots;
  }

  private void limit(XYPlot plot) {
    double amps = forecast.question().limitAmps();
    Marker mark =
        new ValueMarker(DisplayUnit.MICROAMP.fromSi(amps), palette.danger(), PaperLook.dashed(2f));
    Argument value = Argument.quantity(amps, Dimension.CURRENT);
    label(mark, Message.of(MessageKey.CHART_LIMIT, value), palette.danger());
    mark.setLabelAnchor(RectangleAnchor.TOP_LEFT);
    mark.setLabelTextAnchor(TextAnchor.BOTTOM_LEFT);
    plot.addRangeMarker(mark);
    ValueAxis current = plot.getRangeAxis();
    // the limit is in the picture even where nothing comes near it
    current.setRange(0, Math.max(current.getUpperBound(), 1.2e6 * amps));
  }

  private void service(XYPlot plot, @Nullable Calendar calendar) {
    double seconds = forecast.plans().get(0).serviceSeconds();
    if (seconds == Double.POSITIVE_INFINITY) {
      return;
    }
    double at = seconds / HOUR_SECONDS;
    Marker mark = new ValueMarker(at, palette.accent(), PaperLook.solid(2f));
    Argument day = ForecastWords.hours(seconds, calendar);
    label(mark, Message.of(MessageKey.CHART_SERVICE, day), palette.accent());
    Range hours = plot.getDomainAxis().getRange();
    boolean left = at < hours.getCentralValue();
    double share = left ? hours.getUpperBound() - at : at - hours.getLowerBound();
    double room = share / hours.getLength() * (width - BESIDE_PLOT);
    double from =
        Math.min(FROM_LINE, room - FROM_LINE - LabelPlacer.width(mark.getLabel(), PaperLook.NOTE));
    // a name that is longer than the room beside its line reaches over it
    mark.setLabelOffset(new RectangleInsets(4, from, 4, from));
    mark.setLabelBackgroundColor(from < 0 ? palette.sheet() : Ink.faint(palette.sheet(), 0));
    mark.setLabelAnchor(left ? RectangleAnchor.TOP_RIGHT : RectangleAnchor.TOP_LEFT);
    mark.setLabelTextAnchor(left ? TextAnchor.TOP_LEFT : TextAnchor.TOP_RIGHT);
    plot.addDomainMarker(mark);
  }

  private void label(Marker mark, Message words, Color ink) {
    mark.setLabel(said(words));
    mark.setLabelFont(PaperLook.NOTE);
    mark.setLabelPaint(ink);
    mark.setLabelOffset(new RectangleInsets(4, FROM_LINE, 4, FROM_LINE));
    // its usual ground is grey
    mark.setLabelBackgroundColor(Ink.faint(palette.sheet(), 0));
  }
}
