package halfwave.sequence;

/**
 * A deed and its time.
 *
 * @param timeMillis when (ms); zero or above
 * @param deed what
 */
public record Act(long timeMillis, Deed deed) {

  /** Checks the time. */
  public Act {
    if (!(timeMillis >= 0)) {
      throw new IllegalArgumentException("timeMillis = " + timeMillis + ": zero or above");
    }
  }
}
