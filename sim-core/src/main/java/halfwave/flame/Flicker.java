package halfwave.flame;

import halfwave.quantity.Guard;
import org.apache.commons.math3.util.FastMath;

/** The unrest of a flame: the logarithm of its ion source wanders about its mean. */
public final class Flicker {

  /** Rms of that logarithm (1) [practice]. */
  public static final double SOURCE_RATIO = 0.07;

  /** Its correlation time (s) [practice]. */
  public static final double CORRELATION_SECONDS = 0.03;

  private Flicker() {}

  /**
   * Rms that is left of it behind a first-order average: a variance of {@code τ/(τ + T)} of the
   * whole, closed form for a correlation of {@code exp(−t/τ)}.
   *
   * @param averagingSeconds time constant of the average T (s); zero or above
   * @return rms of the logarithm of the ion source (1)
   */
  public static double averagedRatio(double averagingSeconds) {
    Guard.notNegative("averagingSeconds", averagingSeconds);
    return SOURCE_RATIO
        * FastMath.sqrt(CORRELATION_SECONDS / (CORRELATION_SECONDS + averagingSeconds));
  }
}
