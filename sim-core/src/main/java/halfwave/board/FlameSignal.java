package halfwave.board;

/** What the sense circuit tells the board. */
public enum FlameSignal {
  /** Not enough DC of the right sign. */
  NONE,
  /** No DC, but far too much AC: the sense circuit is shorted. */
  SHORTED,
  /** A flame, near the limit. */
  WEAK,
  /** A flame. */
  GOOD;

  /** Whether it counts as a flame. */
  public boolean proves() {
    return this == WEAK || this == GOOD;
  }
}
