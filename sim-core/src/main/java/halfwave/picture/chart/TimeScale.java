package halfwave.picture.chart;

import halfwave.display.DisplayUnit;
import java.util.Arrays;

/** The unit that a time axis is drawn in, and times in it. */
final class TimeScale {

  private static final long MOST_SECONDS_MILLIS = 400_000;
  private static final long MOST_MINUTES_MILLIS = 5 * 3_600_000L;

  /** More numbers than these would touch. */
  private static final int MOST_NUMBERS = 13;

  /** Distances of numbers that a person counts by, in each unit. */
  private static final double[] SECONDS = {
    0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 30, 60
  };

  private static final double[] MINUTES = {1, 2, 5, 10, 15, 30};
  private static final double[] HOURS = {0.5, 1, 2, 3, 6, 12, 24};

  private final DisplayUnit unit;
  private final double step;

  TimeScale(long lengthMillis) {
    double[] steps;
    if (lengthMillis <= MOST_SECONDS_MILLIS) {
      unit = DisplayUnit.SECOND;
      steps = SECONDS;
    } else {
      boolean minutes = lengthMillis <= MOST_MINUTES_MILLIS;
      unit = minutes ? DisplayUnit.MINUTE : DisplayUnit.HOUR;
      steps = minutes ? MINUTES : HOURS;
    }
    double wanted = shown(lengthMillis) / MOST_NUMBERS;
    step =
        Arrays.stream(steps).filter(s -> s >= wanted).findFirst().orElse(steps[steps.length - 1]);
  }

  DisplayUnit unit() {
    return unit;
  }

  /** Distance of the numbers along the axis, in the unit: the finest that leaves them room. */
  double step() {
    return step;
  }

  final double shown(long millis) {
    return unit.fromSi(millis / 1000.0);
  }
}
