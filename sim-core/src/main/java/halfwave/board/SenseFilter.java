package halfwave.board;

import halfwave.quantity.Guard;
import org.apache.commons.math3.util.FastMath;

/**
 * What the sense amplifier remembers: the current at the board's end, behind a first-order filter,
 * and whether that was a flame. Only DC that flows from board to rod counts; AC, whatever its size,
 * and DC of the other sign do not.
 *
 * @param meanAmps filtered DC (A)
 * @param alternatingRmsAmps filtered AC, rms with the mean removed (A)
 * @param signal what the board makes of it
 */
public record SenseFilter(double meanAmps, double alternatingRmsAmps, FlameSignal signal) {

  /** Nothing flows. */
  public static final SenseFilter QUIET = new SenseFilter(0, 0, FlameSignal.NONE);

  /** How far above the warning a weak signal has to rise to count as good again (1). */
  private static final double CLEARLY_RATIO = 1.1;

  /** Differences that no amplifier knows of (A): from here the filter has settled. */
  private static final double SETTLED_AMPS = 1e-13;

  /**
   * The filter after a time with a current through it, {@code y + (x − y)·(1 − exp(−Δt/τ))}.
   *
   * @param sensing the board's settings
   * @param throughMeanAmps DC at the board's end (A), positive towards the rod; finite
   * @param throughRmsAmps AC there (A rms); finite, zero or above
   * @param seconds Δt (s); finite, zero or above
   */
  public SenseFilter after(
      Sensing sensing, double throughMeanAmps, double throughRmsAmps, double seconds) {
    Guard.finite("throughMeanAmps", throughMeanAmps);
    Guard.notNegative("throughRmsAmps", throughRmsAmps);
    Guard.notNegative("seconds", seconds);
    double share = -FastMath.expm1(-seconds / sensing.filterSeconds());
    double mean = towards(meanAmps, throughMeanAmps, share);
    double rms = towards(alternatingRmsAmps, throughRmsAmps, share);
    return new SenseFilter(mean, rms, judged(sensing, mean, rms));
  }

  private static double towards(double from, double to, double share) {
    return Math.abs(to - from) < SETTLED_AMPS ? to : from + share * (to - from);
  }

  /** Pick-up lies above drop-out, so that a signal near the limit does not chatter. */
  private FlameSignal judged(Sensing sensing, double mean, double rms) {
    double least = signal.proves() ? sensing.dropOutAmps() : sensing.pickUpAmps();
    if (mean >= least) {
      // a signal that was weak has to rise clearly, or flicker would change it all the time
      double good = sensing.warningAmps() * (signal == FlameSignal.WEAK ? CLEARLY_RATIO : 1);
      return mean < good ? FlameSignal.WEAK : FlameSignal.GOOD;
    }
    return rms >= sensing.shortRmsAmps() ? FlameSignal.SHORTED : FlameSignal.NONE;
  }
}
