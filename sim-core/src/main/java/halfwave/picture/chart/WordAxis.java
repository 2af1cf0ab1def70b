package halfwave.picture.chart;

import halfwave.picture.PaperLook;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** An upright axis with words at a few places instead of numbers; close ones move apart. */
final class WordAxis extends NumberAxis {

  private static final long serialVersionUID = 1L;

  /** Least distance of two words (units of the drawing). */
  private static final double APART = 19;

  private final transient TreeMap<Double, String> words = new TreeMap<>();

  WordAxis(double low, double high) {
    setRange(low, high);
    setTickMarksVisible(false);
    setAxisLineVisible(false);
    setTickLabelFont(PaperLook.LANE);
    setTickLabelPaint(PaperLook.INK);
  }

  void word(double place, String text) {
    words.put(place, text);
  }

  @Override
  @SuppressWarnings("rawtypes") // as the library has it
  public List refreshTicks(Graphics2D g, AxisState state, Rectangle2D area, RectangleEdge edge) {
    boolean right = edge == RectangleEdge.RIGHT;
    TextAnchor anchor = right ? TextAnchor.CENTER_LEFT : TextAnchor.CENTER_RIGHT;
    List<NumberTick> ticks = new ArrayList<>();
    double before = Double.POSITIVE_INFINITY;
    for (Map.Entry<Double, String> word : words.entrySet()) {
      double wanted = valueToJava2D(word.getKey(), area, edge);
      double y = isInverted() ? wanted : Math.min(wanted, before - APART);
      before = y;
      ticks.add(
          new NumberTick(
              java2DToValue(y, area, edge), word.getValue(), anchor, TextAnchor.CENTER, 0));
    }
    return ticks;
  }
}
