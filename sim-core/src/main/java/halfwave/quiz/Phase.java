package halfwave.quiz;

/**
 * The stages of going about a fault (after Schaafstal, Schraagen and van Berlo, Human Factors 42
 * (2000) 75).
 */
public enum Phase {
  /** To see what the furnace does. */
  DESCRIBE,
  /** To list what can cause it. */
  LIST_CAUSES,
  /** To test what is on the list. */
  TEST,
  /** To repair. */
  REPAIR,
  /** To prove the repair. */
  PROVE
}
