package halfwave.board;

import halfwave.quantity.Guard;
import halfwave.quantity.RejectedValueException;
import halfwave.quantity.RejectedValueException.Allowed;
import org.jspecify.annotations.Nullable;

/**
 * Everything that makes one board differ from another.
 *
 * @param name short name in lower-case-hyphen form
 * @param ignition what it is made for
 * @param sensing how it judges the sense current
 * @param times how long its stages last
 * @param counting what it counts and when it gives up
 * @param learning how it learns the warm-up, or null
 */
public record BoardSettings(
    String name,
    Ignition ignition,
    Sensing sensing,
    Times times,
    Counting counting,
    @Nullable WarmUpLearning learning) {

  /** Checks what no part can check alone. */
  public BoardSettings {
    if (!name.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
      throw new RejectedValueException("name", name, Allowed.NAME, Double.NaN, Double.NaN);
    }
    if (ignition.hotSurface()) {
      Guard.positive("times.warmUpMillis", times.warmUpMillis());
      Guard.positive("times.retryWarmUpMillis", times.retryWarmUpMillis());
    } else {
      // gas that nothing lights
      Guard.positive("times.ignitionActivationMillis", times.ignitionActivationMillis());
    }
    if (learning != null) {
      Guard.inRange(
          "times.warmUpMillis",
          times.warmUpMillis(),
          learning.leastMillis(),
          learning.mostMillis());
    }
  }

  /** The longest time that any clock of this board has to tell from a longer one (ms). */
  long longestMillis() {
    // asked at every pace, so without a stream
    long[] all = {
      counting.clearAfterMillis(),
      counting.powerResetMillis(),
      counting.falseFlameClearMillis(),
      orZero(counting.lockoutMillis()),
      orZero(counting.callResetMillis()),
      orZero(counting.falseFlameLockoutMillis()),
      times.restartMillis(),
      times.selfCheckMillis(),
      times.pressureProofMillis(),
      times.pressureRetryMillis(),
      times.prePurgeMillis(),
      times.warmUpMillis(),
      times.retryWarmUpMillis(),
      times.trialMillis(),
      times.interPurgeMillis(),
      times.postPurgeMillis(),
      times.blowerOnMillis(),
      times.blowerOffMillis(),
      learning == null ? 0 : learning.mostMillis(),
      sensing.fadeMillis()
    };
    long longest = 0;
    for (long millis : all) {
      longest = Math.max(longest, millis);
    }
    return longest;
  }

  private static long orZero(@Nullable Long millis) {
    return millis == null ? 0 : millis;
  }
}
