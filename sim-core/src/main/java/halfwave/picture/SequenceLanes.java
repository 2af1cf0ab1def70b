package halfwave.picture;

import halfwave.board.Stage;
import halfwave.display.Sentences;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.picture.SequenceTrack.Span;
import halfwave.sequence.Event;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;

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

  /** Distance of two names in a row. */
  private static final double APART = 8;

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
    XYPlot plot = new XYPlot(null, null, names, null);
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
    stages(g, place);
    flags(g, place);
  }

  private static void lane(Graphics2D g, Place place, SequenceLane lane, double top) {
    g.setStroke(Look.solid(0.7f));
    g.setPaint(Look.HAIRLINE);
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
        g.setPaint(Look.SOFT_INK);
        g.setStroke(Look.solid(1));
        g.draw(bar);
      }
    }
    List<StageName> outside = new ArrayList<>();
    for (int k = 0; k < bars.size(); k++) {
      Stage stage = stages.spans().get(k).stage();
      if (!inside(g, bars.get(k), sentences.name(stage))
          && !inside(g, bars.get(k), sentences.brief(stage))
          && bars.get(k).getWidth() >= SHORTEST_NAMED) {
        outside.add(new StageName(sentences.brief(stage), bars.get(k).getCenterX(), g));
      }
    }
    callouts(g, place, outside);
  }

  /** What burns is dark, what waits is bright, what has given up is ruled. */
  private static Paint ground(Stage stage) {
    if (stage.lockout()) {
      return Look.hatched(Look.SHEET, Look.SOFT_INK);
    }
    if (stage == Stage.OFF || stage == Stage.STANDBY) {
      return Look.SHEET;
    }
    return Look.mixed(Look.SHEET, Look.INK, stage.gas() ? 0.2 : 0.07);
  }

  private static boolean inside(Graphics2D g, Rectangle2D bar, String name) {
    double width = Look.width(g, name, Look.LANE);
    if (width + 8 > bar.getWidth()) {
      return false;
    }
    Look.words(g, name, Look.LANE, Look.INK, bar.getCenterX() - width / 2, bar.getCenterY() + 5.5);
    return true;
  }

  /** The name of a stage that is too short to hold it. */
  private static final class StageName {
    private final String text;
    private final double x;
    private final double width;
    private int row;

    StageName(String text, double x, Graphics2D g) {
      this.text = text;
      this.x = x;
      width = Look.width(g, text, Look.LANE);
    }
  }

  /**
   * Names stand to the right of a line that leads down to their stage; of names that would meet,
   * the earlier one stands higher, so that no line crosses a name. What finds no row stays without.
   */
  private static void callouts(Graphics2D g, Place place, List<StageName> names) {
    for (int k = names.size() - 1; k >= 0; k--) {
      StageName name = names.get(k);
      for (int later = k + 1; later < names.size(); later++) {
        StageName other = names.get(later);
        if (other.row < ROWS && other.x < name.x + name.width + APART) {
          name.row = Math.max(name.row, other.row + 1);
        }
      }
      if (name.row < ROWS && name.x + name.width < place.area.getMaxX()) {
        double step = place.y(CALLOUTS / ROWS) - place.y(0);
        double foot = place.y(ACTS + CALLOUTS);
        double line = foot - name.row * step - 6;
        g.setPaint(Look.SOFT_INK);
        g.setStroke(Look.solid(0.8f));
        g.draw(new Line2D.Double(name.x, foot, name.x, line - 11));
        Look.words(g, name.text, Look.LANE, Look.INK, name.x + 3, line);
      }
    }
  }

  /** Numbers of the acts; those at one place share a flag. */
  private void flags(Graphics2D g, Place place) {
    double y = place.y(ACTS / 2);
    int k = 0;
    while (k < acts.size()) {
      double x = place.x(acts.get(k).timeMillis());
      int last = k;
      while (last + 1 < acts.size() && place.x(acts.get(last + 1).timeMillis()) - x < 44) {
        last++;
        if (place.x(acts.get(last).timeMillis()) - x > 24) {
          last--;
          break;
        }
      }
      String text = last == k ? Integer.toString(k + 1) : (k + 1) + "–" + (last + 1);
      double width = Look.width(g, text, Look.LANE);
      double half = Math.max(9, width / 2 + 5);
      double centre = Math.max(place.area.getMinX() + half + 1, x);
      centre = Math.min(place.area.getMaxX() - half - 1, centre);
      Ellipse2D flag = new Ellipse2D.Double(centre - half, y - 9, 2 * half, 18);
      g.setPaint(Look.SHEET);
      g.fill(flag);
      g.setPaint(Look.ACCENT);
      g.setStroke(Look.solid(1.4f));
      g.draw(flag);
      g.setFont(Look.LANE);
      g.drawString(text, (float) (centre - width / 2), (float) (y + 5.5));
      k = last + 1;
    }
  }
}
