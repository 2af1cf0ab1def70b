package halfwave.picture;

import halfwave.display.DisplayUnit;

/** The unit that a time axis is drawn in, and times in it. */
final class TimeScale {

  private static final long MOST_SECONDS_MILLIS = 400_000;
  private static final long MOST_MINUTES_MILLIS = 5 * 3_600_000L;

  private final DisplayUnit unit;

  TimeScale(long lengthMillis) {
    if (lengthMillis <= MOST_SECONDS_MILLIS) {
      unit = DisplayUnit.SECOND;
    } else {
      unit = lengthMillis <= MOST_MINUTES_MILLIS ? DisplayUnit.MINUTE : DisplayUnit.HOUR;
    }
  }

  DisplayUnit unit() {
    return unit;
  }

  double shown(long millis) {
    return unit.fromSi(millis / 1000.0);
  }
}
