package halfwave.picture.chart;

import halfwave.picture.PaperLook;
import java.awt.Color;
import java.awt.Paint;
import java.io.Serializable;
import org.jfree.chart.renderer.PaintScale;

/** Microamps as colour: deeper with size; what has the wrong sign is grey and hatched. */
final class CurrentScale implements PaintScale, Serializable {

  private static final long serialVersionUID = 1L;

  private static final Color DEEP = new Color(0x552604);

  /** Where the ramp passes the colour of current curves. */
  private static final double PURE = 0.7;

  private static final int SHADES = 64;

  /** What a meter of 0.01 µA cannot tell from zero has no sign (µA). */
  static final double NOTHING = 0.005;

  private final double low;
  private final double high;
  private final double most;
  private final transient Paint[] reversed = new Paint[SHADES + 1];

  CurrentScale(double low, double high) {
    this.low = Math.min(0, low);
    this.high = Math.max(0, high);
    most = Math.max(Math.max(-this.low, this.high), 1e-6);
    for (int k = 0; k <= SHADES; k++) {
      Color ground = PaperLook.mixed(PaperLook.SHEET, PaperLook.SOFT_INK, 0.1 + 0.9 * k / SHADES);
      reversed[k] = PaperLook.hatched(ground, PaperLook.mixed(ground, PaperLook.INK, 0.6));
    }
  }

  @Override
  public double getLowerBound() {
    return low;
  }

  @Override
  public double getUpperBound() {
    return high;
  }

  @Override
  public Paint getPaint(double value) {
    if (value < -NOTHING) {
      return reversed[(int) Math.round(Math.min(1, -value / most) * SHADES)];
    }
    double share = Math.min(1, Math.max(0, value) / Math.max(high, 1e-6));
    return share < PURE
        ? PaperLook.mixed(PaperLook.SHEET, PaperLook.MICROAMPS, share / PURE)
        : PaperLook.mixed(PaperLook.MICROAMPS, DEEP, (share - PURE) / (1 - PURE));
  }
}
