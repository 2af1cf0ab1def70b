package halfwave.picture.chart;

import halfwave.bench.Condition;
import halfwave.bench.Parameter;
import halfwave.display.DisplayUnit;
import halfwave.display.Sentences;
import halfwave.explain.Axis;
import halfwave.explain.Sweep;
import halfwave.explain.SweepRow;
import halfwave.explain.SweepRow.Taken;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.picture.PaperLook;
import java.awt.Color;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Curves of DC and AC over one parameter. */
final class SweepCurves {

  /** Below this the sign of a current is nothing that a meter shows (µA). */
  private static final double REVERSED_MICROAMPS = -0.05;

  private final Sweep sweep;
  private final Sentences sentences;
  private final Axis axis;
  private final DisplayUnit unit;
  private final XYSeries dc;
  private final XYSeries ac;

  private SweepCurves(Sweep sweep, Sentences sentences) {
    this.sweep = sweep;
    this.sentences = sentences;
    axis = sweep.axes().get(0);
    unit = ValueAxes.unit(axis, sentences);
    dc = series(MessageKey.CHART_DC, Taken::seriesMeanAmps);
    ac = series(MessageKey.CHART_AC, Taken::seriesAlternatingRmsAmps);
  }

  static XYPlot plot(Sweep sweep, Sentences sentences) {
    return new SweepCurves(sweep, sentences).plot();
  }

  private XYSeries series(MessageKey name, ToDoubleFunction<Taken> amps) {
    XYSeries series = new XYSeries(sentences.text(Message.of(name)));
    for (SweepRow row : sweep.rows()) {
      double shown =
          row.taken()
              .map(t -> DisplayUnit.MICROAMP.fromSi(amps.applyAsDouble(t)))
              .orElse(Double.NaN);
      series.add(unit.fromSi(row.values().get(0)), shown);
    }
    return series;
  }

  private XYPlot plot() {
    XYSeriesCollection data = new XYSeriesCollection();
    data.addSeries(dc);
    data.addSeries(ac);
    NumberAxis current =
        ValueAxes.linear(
            ValueAxes.title(
                sentences.text(Message.of(MessageKey.CHART_CURRENT)),
                DisplayUnit.MICROAMP,
                sentences),
            sentences);
    current.setUpperMargin(0.16);
    ValueAxes.loosen(current);
    XYLineAndShapeRenderer lines = new XYLineAndShapeRenderer(true, sweep.rows().size() <= 12);
    lines.setDrawSeriesLineAsPath(true);
    dress(lines, 0, PaperLook.solid(3.4f));
    dress(lines, 1, PaperLook.dashed(2.6f));
    XYPlot plot = new XYPlot(data, ValueAxes.of(axis, sentences, 0), current, lines);
    plot.setRangeZeroBaselineVisible(true);
    plot.setRangeZeroBaselinePaint(PaperLook.SOFT_INK);
    plot.setRangeZeroBaselineStroke(PaperLook.solid(1.2f));
    CurveWords words = new CurveWords(dc, ac);
    markReversal(plot, current, words);
    markGaps(plot, words);
    markValues(plot, words);
    plot.addAnnotation(words);
    return plot;
  }

  private static void dress(XYLineAndShapeRenderer lines, int series, Stroke stroke) {
    lines.setSeriesPaint(series, PaperLook.MICROAMPS);
    lines.setSeriesStroke(series, stroke);
    lines.setSeriesShape(series, new Ellipse2D.Double(-4, -4, 8, 8));
    lines.setSeriesShapesFilled(series, series == 0);
  }

  /** Hatches what lies below zero, where the DC goes there. */
  private void markReversal(XYPlot plot, NumberAxis current, CurveWords words) {
    if (dc.getMinY() < REVERSED_MICROAMPS) {
      double low = current.getRange().getLowerBound();
      plot.addRangeMarker(
          new IntervalMarker(low, 0, PaperLook.hatched(PaperLook.SHEET, PaperLook.HAIRLINE)),
          Layer.BACKGROUND);
      words.reversed(sentences.text(Message.of(MessageKey.CHART_REVERSED)));
    }
  }

  /** Where nothing was read: from the last reading before to the first one after. */
  private void markGaps(XYPlot plot, CurveWords words) {
    List<SweepRow> rows = sweep.rows();
    for (int k = 0; k < rows.size(); k++) {
      if (rows.get(k).taken().isPresent()) {
        continue;
      }
      int first = Math.max(0, k - 1);
      while (k < rows.size() && rows.get(k).taken().isEmpty()) {
        k++;
      }
      double a = unit.fromSi(rows.get(first).values().get(0));
      double b = unit.fromSi(rows.get(Math.min(k, rows.size() - 1)).values().get(0));
      plot.addDomainMarker(
          new IntervalMarker(
              Math.min(a, b),
              Math.max(a, b),
              PaperLook.mixed(PaperLook.SHEET, PaperLook.HAIRLINE, 0.6)),
          Layer.BACKGROUND);
      words.gap((a + b) / 2, sentences.text(Message.of(MessageKey.CHART_NO_READING)));
    }
  }

  private void markValues(XYPlot plot, CurveWords words) {
    Parameter p = axis.parameter();
    double healthy = p.of(sweep.bench().with(Condition.HEALTHY));
    double here = p.of(sweep.bench());
    mark(plot, words, MessageKey.CHART_HEALTHY, healthy, PaperLook.INK, PaperLook.solid(1.4f));
    if (here != healthy) {
      mark(plot, words, MessageKey.CHART_HERE, here, PaperLook.ACCENT, PaperLook.dashed(1.8f));
    }
  }

  private void mark(
      XYPlot plot, CurveWords words, MessageKey key, double si, Color ink, Stroke stroke) {
    if (si >= Math.min(axis.from(), axis.to()) && si <= Math.max(axis.from(), axis.to())) {
      plot.addDomainMarker(new ValueMarker(unit.fromSi(si), ink, stroke), Layer.FOREGROUND);
      Argument value = Argument.text(ValueAxes.value(axis, si, sentences));
      words.mark(unit.fromSi(si), sentences.text(Message.of(key, value)), ink);
    }
  }
}
