package halfwave.board;

import halfwave.quantity.Guard;
import org.jspecify.annotations.Nullable;

/**
 * What a board counts, when it gives up, and what lets it try again.
 *
 * @param mostTrials failed trials that end in soft lockout; 1 to 9
 * @param mostLosses lost flames in one call that do; 0: any number is allowed
 * @param lossCounts which losses count as failed trials besides
 * @param clearAfterMillis a flame that has held for this clears the failed trials (ms); above zero
 * @param lockoutMillis soft lockout ends by itself (ms), or null: never
 * @param callResetMillis it ends when there was no call for this (ms), or null: that does not help
 * @param powerResetMillis any lockout ends when there was no power for this (ms)
 * @param falseFlameClearMillis how long a false flame has to be gone before the next start (ms)
 * @param falseFlameLockoutMillis a false flame that was not gone for good after this ends in hard
 *     lockout (ms), or null: never
 */
public record Counting(
    int mostTrials,
    int mostLosses,
    LossCount lossCounts,
    long clearAfterMillis,
    @Nullable Long lockoutMillis,
    @Nullable Long callResetMillis,
    long powerResetMillis,
    long falseFlameClearMillis,
    @Nullable Long falseFlameLockoutMillis) {

  private static final long DAY_MILLIS = 86_400_000;

  /** Checks the domain. */
  public Counting {
    Guard.inRange("mostTrials", mostTrials, 1, 9);
    Guard.inRange("mostLosses", mostLosses, 0, 99);
    Guard.inRange("clearAfterMillis", clearAfterMillis, 1, DAY_MILLIS);
    Guard.inRange("powerResetMillis", powerResetMillis, 1, DAY_MILLIS);
    Guard.inRange("falseFlameClearMillis", falseFlameClearMillis, 1, DAY_MILLIS);
    orNull("lockoutMillis", lockoutMillis);
    orNull("callResetMillis", callResetMillis);
    orNull("falseFlameLockoutMillis", falseFlameLockoutMillis);
  }

  private static void orNull(String field, @Nullable Long millis) {
    if (millis != null) {
      Guard.inRange(field, millis, 1, DAY_MILLIS);
    }
  }
}
