package halfwave.quiz;

import halfwave.quantity.Guard;

/**
 * How a quiz is taken.
 *
 * @param wallMinutes minutes by the clock on the wall; zero: no limit
 * @param hints whether hints may be asked for
 */
public record Rules(double wallMinutes, boolean hints) {

  /** No limit but the simulated one, no hints. */
  public static final Rules STANDARD = new Rules(0, false);

  /** A day is more than anybody examines. */
  public static final double MOST_MINUTES = 1440;

  /** Checks the domain. */
  public Rules {
    Guard.inRange("wallMinutes", wallMinutes, 0, MOST_MINUTES);
  }
}
