package halfwave.forecast;

import halfwave.quantity.Guard;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * Dates of a furnace: how much of its time it burns.
 *
 * @param first day on which time with flame is counted from
 * @param burningRatio time with flame over time (1), over whole years; 0.001 to 1
 */
public record Calendar(LocalDate first, double burningRatio) {

  /** Hours of flame in a year of a usual house (h) [practice]. */
  public static final double USUAL_HOURS = 1000;

  private static final double DAY_SECONDS = 86_400;
  private static final double YEAR_HOURS = 365.25 * 24;

  /** Checks the domain. */
  public Calendar {
    Guard.inRange("burningRatio", burningRatio, 0.001, 1);
  }

  /** Time with flame over time (1) for so many hours of flame a year. */
  public static double burningRatio(double hoursPerYear) {
    return hoursPerYear / YEAR_HOURS;
  }

  /** Time with flame by a day (s). */
  public double flameSeconds(LocalDate day) {
    return ChronoUnit.DAYS.between(first, day) * DAY_SECONDS * burningRatio;
  }

  /** The day by which there has been so much flame, its seconds cut off. */
  public LocalDate day(double flameSeconds) {
    return first.plusDays((long) Math.floor(flameSeconds / (DAY_SECONDS * burningRatio)));
  }
}
