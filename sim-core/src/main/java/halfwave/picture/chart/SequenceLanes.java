package halfwave.picture.chart;

import halfwave.board.Stage;
import halfwave.display.Sentences;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.picture.PaperLook;
import halfwave.picture.chart.SequenceTrack.Span;
import halfwave.sequence.Event;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.data.xy.XYSeriesCollection;

/** The lanes of a timeline, from top to bottom: acts, stages with their names, what is on. */
final class SequenceLanes extends AbstractXYAnnotation {

  private static final long serialVersionUID = 1L;

  /** Heights, in lanes. */
  private static final double ACTS = 1.15;

  private static final double CALLOUTS = 2.7;
  private static final double STAGES = 1.15;

  /** Rows of names above the stages that are too short for their name. */
  private static final int ROWS = 3;

  /** A shorter stage has no name of its own (units of the drawing). */
  private static final double SHORTEST_NAMED = 3;

  private final transient SequenceTrack stages;
  private final transient List<SequenceLane> lanes;
  private final transient List<Event> acts;
  private final long untilMillis;
  private final transient TimeScale time;
  private final transient Sentences sentences;

  SequenceLanes(
      SequenceTrack stages,
      List<SequenceLane> lanes,
      List<Event> acts,
      long untilMillis,
      TimeScale time,
      Sentences sentences) {
    this.stages = stages;
    this.lanes = lanes;
    this.acts = acts;
    this.untilMillis = untilMillis;
    this.time = time;
    this.sentences = sentences;
  }

  XYPlot plot() {
    double top = ACTS + CALLOUTS + STAGES;
    WordAxis names = new WordAxis(0, top + lanes.size() + 0.15);
    names.setInverted(true);
    names.word(ACTS / 2, sentences.text(Message.of(MessageKey.SEQUENCE_ACTS)));
    names.word(
        top - STAGES / 2,
        ValueAxes.uncapital(sentences.text(Message.of(MessageKey.SEQUENCE_STAGE))));
    for (int k = 0; k < lanes.size(); k++) {
      names.word(top + k + 0.5, sentences.text(lanes.get(k).name()));
    }
    XYPlot plot = new XYPlot(new XYSeriesCollection(), null, names, new XYLineAndShapeRenderer());
    plot.setRangeGridlinesVisible(false);
    plot.addAnnotation(this);
    return plot;
  }

  /** Where a stretch is drawn. */
  private final class Place {
    private final Rectangle2D area;
    private final ValueAxis domain;
    private final ValueAxis range;

    Place(Rectangle2D area, ValueAxis domain, ValueAxis range) {
      this.area = area;
      this.domain = domain;
      this.range = range;
    }

    double x(long millis) {
      return domain.valueToJava2D(
          time.shown(Math.min(millis, untilMillis)), area, RectangleEdge.BOTTOM);
    }

    double y(double lane) {
      return range.valueToJava2D(lane, area, RectangleEdge.LEFT);
    }

    Rectangle2D bar(Span span, double top, double bottom) {
      Rectangle2D bar = new Rectangle2D.Double();
      double left = x(span.fromMillis());
      bar.setFrameFromDiagonal(
          left, y(top), Math.max(left + 0.6, x(span.untilMillis())), y(bottom));
      return bar;
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
    Place place = new Place(area, domain, range);
    for (int k = 0; k < lanes.size(); k++) {
      lane(g, place, lanes.get(k), ACTS + CALLOUTS + STAGES + k);
    }
    lines(g, place);
    stages(g, place);
    flags(g, place);
  }

  private static void lane(Graphics2D g, Place place, SequenceLane lane, double top) {
    g.setStroke(PaperLook.solid(0.7f));
    g.setPaint(PaperLook.HAIRLINE);
    double foot = place.y(top + 0.87);
    g.draw(new Line2D.Double(place.area.getMinX(), foot, place.area.getMaxX(), foot));
    for (Span span : lane.track().spans()) {
      if (span.levelRatio() > 0) {
        // a row that burns only in part stands lower
        Rectangle2D bar = place.bar(span, top + 0.87 - 0.72 * span.levelRatio(), top + 0.87);
        g.setPaint(lane.ink());
        g.fill(bar);
      }
    }
  }

  private void stages(Graphics2D g, Place place) {
    double top = ACTS + CALLOUTS + 0.05;
    List<Rectangle2D> bars = new ArrayList<>();
    for (Span span : stages.spans()) {
      Rectangle2D bar = place.bar(span, top, top + STAGES - 0.15);
      bars.add(bar);
      g.setPaint(ground(span.stage()));
      g.fill(bar);
      if (bar.getWidth() > 2) {
        g.setPaint(PaperLook.SOFT_INK);
        g.setStroke(PaperLook.solid(1));
        g.draw(bar);
      }
    }
    StageNames outside = new StageNames(ROWS);
    for (int k = 0; k < bars.size(); k++) {
      Stage stage = stages.spans().get(k).stage();
      if (!inside(g, bars.get(k), sentences.name(stage))
          && !inside(g, bars.get(k), sentences.brief(stage))
          && bars.get(k).getWidth() >= SHORTEST_NAMED) {
        outside.add(sentences.brief(stage), bars.get(k).getCenterX(), g);
      }
    }
    outside.draw(g, place.area, place.y(ACTS + CALLOUTS), place.y(CALLOUTS / ROWS) - place.y(0));
  }

  /** What burns is dark, what waits is bright, what has given up is ruled. */
  private static Paint ground(Stage stage) {
    if (stage.lockout()) {
      return PaperLook.hatched(PaperLook.SHEET, PaperLook.SOFT_INK);
    }
    if (stage == Stage.OFF || stage == Stage.STANDBY) {
      return PaperLook.SHEET;
    }
    return PaperLook.mixed(PaperLook.SHEET, PaperLook.INK, stage.gas() ? 0.2 : 0.07);
  }

  private static boolean inside(Graphics2D g, Rectangle2D bar, String name) {
    double width = PaperLook.width(g, name, PaperLook.LANE);
    if (width + 8 > bar.getWidth()) {
      return false;
    }
    PaperLook.words(
        g,
        name,
        PaperLook.LANE,
        PaperLook.INK,
        bar.getCenterX() - width / 2,
        bar.getCenterY() + 5.5);
    return true;
  }

  /** One number or several, and where the flag stands that shows them. */
  private static final class Flag {
    private final int first;
    private final int last;
    private final double left;
    private final double right;

    Flag(int first, int last, double centre, Rectangle2D area, Graphics2D g) {
      this.first = first;
      this.last = last;
      double half = Math.max(9, PaperLook.width(g, text(), PaperLook.LANE) / 2 + 6);
      double fits = Math.min(area.getMaxX() - half - 1, centre);
      left = Math.max(area.getMinX() + 1, fits - half);
      right = left + 2 * half;
    }

    final String text() {
      return last == first ? Integer.toString(first) : first + "–" + last;
    }
  }

  /** Numbers of the acts; those that would meet share a flag. */
  private void flags(Graphics2D g, Place place) {
    Deque<Flag> flags = new ArrayDeque<>();
    for (int k = 0; k < acts.size(); k++) {
      double x = place.x(acts.get(k).timeMillis());
      Flag flag = new Flag(k + 1, k + 1, x, place.area, g);
      // a flag that grows may meet the one before it
      while (!flags.isEmpty() && flag.left < flags.getLast().right + 2) {
        int first = flags.removeLast().first;
        double centre = (place.x(acts.get(first - 1).timeMillis()) + x) / 2;
        flag = new Flag(first, k + 1, centre, place.area, g);
      }
      flags.add(flag);
    }
    double y = place.y(ACTS / 2);
    for (Flag flag : flags) {
      RoundRectangle2D plate =
          new RoundRectangle2D.Double(flag.left, y - 9, flag.right - flag.left, 18, 18, 18);
      g.setPaint(PaperLook.SHEET);
      g.fill(plate);
      g.setPaint(PaperLook.ACCENT);
      g.setStroke(PaperLook.solid(1.4f));
      g.draw(plate);
      double middle =
          (flag.left + flag.right - PaperLook.width(g, flag.text(), PaperLook.LANE)) / 2;
      g.setFont(PaperLook.LANE);
      g.drawString(flag.text(), (float) middle, (float) (y + 5.5));
    }
  }

  /** A thin line down from each act, to compare times by. */
  private void lines(Graphics2D g, Place place) {
    g.setPaint(PaperLook.ACCENT);
    g.setStroke(PaperLook.dashed(1.2f));
    for (Event act : acts) {
      double x = place.x(act.timeMillis());
      g.draw(new Line2D.Double(x, place.y(ACTS / 2), x, place.area.getMaxY()));
    }
  }
}
