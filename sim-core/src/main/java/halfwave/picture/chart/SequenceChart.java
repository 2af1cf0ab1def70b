package halfwave.picture.chart;

import halfwave.board.Ignition;
import halfwave.board.Output;
import halfwave.board.Sensing;
import halfwave.display.DisplayUnit;
import halfwave.display.Sentences;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.picture.PaperLook;
import halfwave.picture.Picture;
import halfwave.quantity.Dimension;
import halfwave.sequence.Event;
import halfwave.sequence.Moment;
import halfwave.sequence.Sample;
import halfwave.sequence.Segment;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/**
 * The timeline of a sequence: lanes of what the board does and what burns, above the DC behind its
 * filter with the limits it is judged by. It is fed slice by slice and keeps no more than a picture
 * can show.
 *
 * <pre>{@code
 * SequenceChart chart = new SequenceChart(cold, 120_000, List.of());
 * chart.add(new Sequence().advance(cold, 120_000, acts));
 * Picture picture = chart.picture(Sentences.in(Locale.ENGLISH));
 * }</pre>
 */
public final class SequenceChart {

  /** Width of a picture in a file (pixels). */
  public static final int WIDTH = 1920;

  /** Height of a picture in a file (pixels). */
  public static final int HEIGHT = 1440;

  /** Units of the drawing from top to bottom; type is 15 of them and more. */
  private static final double UNITS = 720;

  private static final int COLUMNS = 1400;

  /** More acts than these are counted, not listed. */
  private static final int MOST_LISTED = 8;

  private final Moment start;
  private final long untilMillis;
  private final List<Message> about;
  private final TimeScale time;
  private final SequenceTrack stages = SequenceTrack.ofStages();
  private final List<SequenceLane> lanes = new ArrayList<>();
  private final CurrentColumns current;
  private final List<Event> acts = new ArrayList<>();

  /**
   * An empty picture.
   *
   * @param start where it begins
   * @param untilMillis where it ends (ms)
   * @param about what stands under the title, a line each
   */
  public SequenceChart(Moment start, long untilMillis, List<Message> about) {
    this.start = start;
    this.untilMillis = untilMillis;
    this.about = List.copyOf(about);
    time = new TimeScale(untilMillis - start.timeMillis());
    current = new CurrentColumns(start.timeMillis(), untilMillis, COLUMNS);
    Ignition ignition = start.settings().ignition();
    int burners = start.bench().design().burnerCount();
    lane(ignition.hotSurface() ? Output.IGNITER : Output.SPARK);
    if (ignition == Ignition.INTERMITTENT_PILOT) {
      lane(Output.PILOT_VALVE);
    }
    lane(Output.MAIN_VALVE);
    lanes.add(
        new SequenceLane(
            Argument.nested(Message.of(MessageKey.SEQUENCE_FLAME)),
            PaperLook.FLAME,
            SequenceTrack.of(sample -> (double) sample.litCount() / burners)));
    lane(Output.INDUCER);
    lane(Output.BLOWER);
  }

  private void lane(Output output) {
    lanes.add(
        new SequenceLane(
            Argument.name(output),
            PaperLook.RUNNING,
            SequenceTrack.of(sample -> output.on(sample.outputs()) ? 1 : 0)));
  }

  /** The next slice. */
  public void add(Segment slice) {
    for (Sample sample : slice.samples()) {
      stages.add(sample);
      lanes.forEach(lane -> lane.track().add(sample));
      current.add(sample);
    }
    slice.events().stream().filter(e -> e.subject() == Event.Subject.ACT).forEach(acts::add);
  }

  /** The picture in its usual size, for a file: two pixels to a unit make {@link #WIDTH}. */
  public Picture picture(Sentences sentences) {
    double width = UNITS * WIDTH / HEIGHT;
    return Picture.of(
        width, UNITS, g -> chart(sentences).draw(g, new Rectangle2D.Double(0, 0, width, UNITS)));
  }

  /**
   * The picture.
   *
   * @param sentences language and units
   * @param width pixels, 600 or more
   * @param height pixels, 450 or more
   */
  public BufferedImage image(Sentences sentences, int width, int height) {
    if (!(width >= 600 && height >= 450)) {
      throw new IllegalArgumentException(
          "width, height = " + width + ", " + height + ": at least 600, 450");
    }
    double scale = height / UNITS;
    return chart(sentences).createBufferedImage(width, height, width / scale, height / scale, null);
  }

  /** The chart, for tests and for a window. */
  JFreeChart chart(Sentences sentences) {
    NumberAxis axis =
        ValueAxes.linear(
            ValueAxes.title(
                sentences.text(Message.of(MessageKey.SEQUENCE_TIME)), time.unit(), sentences),
            sentences);
    axis.setTickUnit(new NumberTickUnit(time.step()), false, true);
    axis.setRange(time.shown(start.timeMillis()), time.shown(untilMillis));
    SequenceLanes drawn = new SequenceLanes(stages, lanes, acts, untilMillis, time, sentences);
    CombinedDomainXYPlot both = new CombinedDomainXYPlot(axis);
    both.setGap(8);
    both.add(dressed(drawn.plot()), 57);
    both.add(dressed(currents(sentences)), 43);
    JFreeChart chart = new JFreeChart(null, PaperLook.TITLE, both, false);
    chart.setBackgroundPaint(PaperLook.GROUND);
    chart.setPadding(new RectangleInsets(14, 16, 14, 16));
    Argument bench = Argument.text(start.bench().name());
    chart.setTitle(title(sentences.text(Message.of(MessageKey.SEQUENCE_TITLE, bench)), true));
    about.forEach(line -> chart.addSubtitle(title(sentences.text(line), false)));
    if (!acts.isEmpty()) {
      TextTitle list = title(listed(sentences), false);
      list.setPosition(RectangleEdge.BOTTOM);
      list.setPaint(PaperLook.INK);
      chart.addSubtitle(list);
    }
    return chart;
  }

  private static XYPlot dressed(XYPlot plot) {
    plot.setBackgroundPaint(PaperLook.SHEET);
    plot.setOutlinePaint(PaperLook.HAIRLINE);
    plot.setDomainGridlinePaint(PaperLook.HAIRLINE);
    plot.setDomainGridlineStroke(PaperLook.solid(0.7f));
    plot.setAxisOffset(new RectangleInsets(0, 0, 0, 0));
    return plot;
  }

  private XYPlot currents(Sentences sentences) {
    String name = sentences.text(Message.of(MessageKey.SEQUENCE_FILTERED));
    XYSeries series = current.series(time, name);
    NumberAxis axis =
        ValueAxes.linear(ValueAxes.title(name, DisplayUnit.MICROAMP, sentences), sentences);
    axis.setLabelFont(PaperLook.LANE);
    ValueAxes.loosen(axis);
    Sensing sensing = start.settings().sensing();
    double most = DisplayUnit.MICROAMP.fromSi(sensing.warningAmps());
    double high = Math.max(series.isEmpty() ? 0 : series.getMaxY(), most) * 1.12;
    double low = series.isEmpty() ? 0 : Math.min(0, series.getMinY() * 1.12);
    axis.setRange(low, high);
    XYLineAndShapeRenderer lines = new XYLineAndShapeRenderer(true, false);
    lines.setDrawSeriesLineAsPath(true);
    lines.setSeriesPaint(0, PaperLook.MICROAMPS);
    lines.setSeriesStroke(0, PaperLook.solid(2.2f));
    XYPlot plot = new XYPlot(new XYSeriesCollection(series), null, axis, lines);
    plot.setRangeGridlinesVisible(false);
    plot.setRangeZeroBaselineVisible(true);
    plot.setRangeZeroBaselinePaint(PaperLook.SOFT_INK);
    WordAxis limits = new WordAxis(low, high);
    limit(plot, limits, MessageKey.SEQUENCE_WARNING, sensing.warningAmps(), 3, sentences);
    limit(plot, limits, MessageKey.SEQUENCE_PICK_UP, sensing.pickUpAmps(), 9, sentences);
    limit(plot, limits, MessageKey.SEQUENCE_DROP_OUT, sensing.dropOutAmps(), 18, sentences);
    plot.setRangeAxis(1, limits);
    for (Event act : acts) {
      plot.addDomainMarker(
          new ValueMarker(time.shown(act.timeMillis()), PaperLook.ACCENT, PaperLook.dashed(1.2f)),
          Layer.FOREGROUND);
    }
    return plot;
  }

  private static void limit(
      XYPlot plot, WordAxis words, MessageKey key, double amps, float dash, Sentences sentences) {
    double shown = DisplayUnit.MICROAMP.fromSi(amps);
    plot.addRangeMarker(
        new ValueMarker(shown, PaperLook.INK, PaperLook.dashed(1.2f, dash)), Layer.BACKGROUND);
    words.word(shown, sentences.text(Message.of(key, Argument.quantity(amps, Dimension.CURRENT))));
  }

  /** The acts by the numbers that they have in the picture. */
  private String listed(Sentences sentences) {
    List<String> lines = new ArrayList<>();
    for (int k = 0; k < Math.min(acts.size(), MOST_LISTED); k++) {
      Event act = acts.get(k);
      lines.add(
          sentences.text(
              Message.of(
                  MessageKey.SEQUENCE_ACT,
                  Argument.count(k + 1),
                  Argument.text(sentences.quantities().time(act.timeMillis())),
                  Argument.text(sentences.sentence(act.message())))));
    }
    if (acts.size() > MOST_LISTED) {
      lines.add(
          sentences.text(
              Message.of(MessageKey.SEQUENCE_MORE, Argument.count(acts.size() - MOST_LISTED))));
    }
    return lines.stream().collect(Collectors.joining(lines.size() <= 4 ? "\n" : "   "));
  }

  private static TextTitle title(String text, boolean main) {
    TextTitle title = new TextTitle(text, main ? PaperLook.TITLE : PaperLook.LANE);
    title.setPaint(main ? PaperLook.INK : PaperLook.SOFT_INK);
    title.setHorizontalAlignment(HorizontalAlignment.LEFT);
    title.setTextAlignment(HorizontalAlignment.LEFT);
    title.setPadding(new RectangleInsets(0, 4, main ? 2 : 4, 4));
    return title;
  }
}
