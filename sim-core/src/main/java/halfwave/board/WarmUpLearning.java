package halfwave.board;

import halfwave.quantity.Guard;

/**
 * A board that learns how long its igniter needs: shorter after a success, longer after a failure.
 *
 * @param stepMillis how much (ms)
 * @param leastMillis never below this (ms)
 * @param mostMillis never above this (ms)
 */
public record WarmUpLearning(long stepMillis, long leastMillis, long mostMillis) {

  /** Checks the domain. */
  public WarmUpLearning {
    Guard.inRange("stepMillis", stepMillis, 1, 60_000);
    Guard.inRange("leastMillis", leastMillis, 1, 120_000);
    Guard.inRange("mostMillis", mostMillis, leastMillis, 120_000);
  }

  long shorter(long millis) {
    return Math.max(leastMillis, millis - stepMillis);
  }

  long longer(long millis) {
    return Math.min(mostMillis, millis + stepMillis);
  }
}
