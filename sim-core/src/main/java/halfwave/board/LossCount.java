package halfwave.board;

/** Which lost flames a board counts among its failed trials. */
public enum LossCount {
  /** None. */
  NEVER,
  /** Those lost before they had held long enough to clear the count. */
  EARLY,
  /** All. */
  ALWAYS
}
