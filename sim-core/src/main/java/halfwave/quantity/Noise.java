package halfwave.quantity;

import org.apache.commons.math3.util.FastMath;

/**
 * Chance as a pure function of a seed, a purpose and a time. There is no stream to share: whoever
 * asks again gets the same answer, and whoever asks more changes nothing for others.
 */
public final class Noise {

  /** What the chance is for. */
  public enum Purpose {
    /** Flicker of the flame. */
    FLICKER,
    /** Shaking of the inducer. */
    VIBRATION,
    /** The last digits of a meter. */
    READING,
    /** Rates that nobody knows. */
    RATE,
    /** Which furnace a learner meets on a service call. */
    VARIANT
  }

  private static final double TO_UNIT = 0x1.0p-53;

  private Noise() {}

  /** A normal deviate of mean 0 and variance 1 (Box and Muller, Ann. Math. Stat. 29 (1958) 610). */
  public static double gaussian(long seed, Purpose purpose, long timeMillis) {
    long bits = bits(seed, purpose, timeMillis);
    // (0, 1], so that the logarithm is finite
    double u = ((bits >>> 11) + 1) * TO_UNIT;
    double v = (mixed(bits) >>> 11) * TO_UNIT;
    return FastMath.sqrt(-2 * FastMath.log(u)) * FastMath.cos(2 * Math.PI * v);
  }

  /** A number from 0 up to, not including, 1, all alike. */
  public static double uniform(long seed, Purpose purpose, long time) {
    return (bits(seed, purpose, time) >>> 11) * TO_UNIT;
  }

  private static long bits(long seed, Purpose purpose, long time) {
    return mixed(mixed(mixed(seed) ^ (purpose.ordinal() + 1L)) ^ time);
  }

  /** SplitMix64's finaliser (Steele, Lea, Flood, OOPSLA 2014): every bit depends on every bit. */
  private static long mixed(long value) {
    long z = value + 0x9E3779B97F4A7C15L;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }
}
