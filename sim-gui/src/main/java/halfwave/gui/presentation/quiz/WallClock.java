package halfwave.gui.presentation.quiz;

import java.util.function.LongSupplier;

/** The clock on the wall during a quiz. */
final class WallClock {

  private static final long NANOS = 1_000_000_000L;

  private final LongSupplier nanos;
  private long begunNanos;
  private long begunSeconds;

  /**
   * A clock.
   *
   * @param nanos time (ns), from any zero
   */
  WallClock(LongSupplier nanos) {
    this.nanos = nanos;
  }

  /** Somebody begins, or goes on after so many seconds. */
  void begin(long seconds) {
    begunNanos = nanos.getAsLong();
    begunSeconds = seconds;
  }

  /** Seconds since the quiz began. */
  long seconds() {
    return begunSeconds + (nanos.getAsLong() - begunNanos) / NANOS;
  }
}
