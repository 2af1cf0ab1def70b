package halfwave.quiz;

/** How a service call came to its end before its conclusion. */
public enum Ending {
  /** Something dangerous was done. */
  DANGER,
  /** The simulated time was used up. */
  TIME_UP
}
