package halfwave.quiz;

/** How much a service call asks for. */
public enum Level {
  /** One fault with its usual signs. */
  BASIC,
  /** It looks like something else. */
  WORKING,
  /** It comes and goes, it is two at once, or it is nothing. */
  ADVANCED
}
