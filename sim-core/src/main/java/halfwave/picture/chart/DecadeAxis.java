package halfwave.picture.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.TickType;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** A logarithmic axis whose ticks are powers of ten, and 2 and 5 where there are few of them. */
final class DecadeAxis extends LogAxis {

  private static final long serialVersionUID = 1L;

  /** From here on 2 and 5 would crowd the axis (decades). */
  private static final double MANY = 3.5;

  private final NumberFormat numbers;

  DecadeAxis(String title, NumberFormat numbers) {
    super(title);
    this.numbers = numbers;
  }

  @Override
  public List<NumberTick> refreshTicks(
      Graphics2D g, AxisState state, Rectangle2D area, RectangleEdge edge) {
    double low = getRange().getLowerBound();
    double high = getRange().getUpperBound();
    boolean few = Math.log10(high / low) < MANY;
    boolean level = RectangleEdge.isTopOrBottom(edge);
    List<NumberTick> ticks = new ArrayList<>();
    for (int power = (int) Math.floor(Math.log10(low)); Math.pow(10, power) <= high; power++) {
      for (int digit = 1; digit <= 9; digit++) {
        double value = digit * Math.pow(10, power);
        if (value < low * (1 - 1e-9) || value > high * (1 + 1e-9)) {
          continue;
        }
        boolean major = digit == 1 || (few && (digit == 2 || digit == 5));
        ticks.add(
            new NumberTick(
                major ? TickType.MAJOR : TickType.MINOR,
                value,
                major ? numbers.format(value) : "",
                level ? TextAnchor.TOP_CENTER : TextAnchor.CENTER_RIGHT,
                TextAnchor.CENTER,
                0));
      }
    }
    return ticks;
  }
}
