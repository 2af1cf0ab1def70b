package halfwave.quiz;

import halfwave.diagnosis.Outcome;
import halfwave.quantity.Noise;

/**
 * What a meter adds to a reading. Measured twice without a repair between, the same is read: nobody
 * gets a better number by asking again. Sizes: common practice, no source.
 */
final class Scatter {

  private static final double CURRENT_RATIO = 0.03;
  private static final double CURRENT_AMPS = 0.03e-6;
  private static final double VOLTS_RATIO = 0.008;
  private static final double VOLTS = 0.5;

  /** What a meter shows last: 0.01 µA and 0.1 V. */
  private static final double LAST_AMPS = 1e-8;

  private static final double LAST_VOLTS = 0.1;

  private static final int CHECKS = 1000;

  private Scatter() {}

  /**
   * The reading.
   *
   * @param outcome without any error
   * @param seed of all chance
   * @param turns repairs before it
   * @param place which check it is, below a thousand
   */
  static Outcome of(Outcome outcome, long seed, int turns, int place) {
    long index = (long) CHECKS * (3 * turns) + place;
    if (outcome instanceof Outcome.Amps amps) {
      double mean =
          amps.meanAmps() * (1 + CURRENT_RATIO * normal(seed, index))
              + CURRENT_AMPS * normal(seed, index + CHECKS);
      double alternating =
          amps.alternatingRmsAmps() * (1 + CURRENT_RATIO * normal(seed, index + 2 * CHECKS));
      return new Outcome.Amps(shown(mean, LAST_AMPS), shown(alternating, LAST_AMPS));
    } else if (outcome instanceof Outcome.Volts volts) {
      double read =
          volts.alternatingRmsVolts() * (1 + VOLTS_RATIO * normal(seed, index))
              + VOLTS * normal(seed, index + CHECKS);
      return new Outcome.Volts(shown(Math.max(0, read), LAST_VOLTS));
    }
    return outcome;
  }

  private static double normal(long seed, long index) {
    return Noise.gaussian(seed, Noise.Purpose.READING, index);
  }

  private static double shown(double value, double last) {
    return Double.isNaN(value) ? value : Math.round(value / last) * last;
  }
}
