package halfwave.instrument;

import halfwave.quantity.Guard;

/**
 * When somebody looks at the display.
 *
 * @param elapsedSeconds since the leads were put on (s)
 * @param seed of the meter's last digits
 * @param timeMillis time of the look (ms)
 */
public record Look(double elapsedSeconds, long seed, long timeMillis) {

  /** Checks the domain. */
  public Look {
    Guard.notNegative("elapsedSeconds", elapsedSeconds);
  }

  /** After a minute, when every meter has settled. */
  public static Look settled(long seed) {
    return new Look(60, seed, 60_000);
  }
}
