package halfwave.board;

/**
 * What the status light says: so many long flashes, then so many short ones, then a pause. The
 * table is the project's own; every real board has another, printed inside its door.
 */
public enum StatusCode {
  /** Light off: no power. */
  DARK(0, 0),
  /** One short flash: ready, no call. */
  READY(0, 1),
  /** Two short flashes: on the way to heat. */
  STARTING(0, 2),
  /** One long flash: flame proved, good signal. */
  FLAME(1, 0),
  /** Flame proved, weak signal. */
  WEAK_FLAME(1, 1),
  /** A trial failed: no flame was proved. */
  NO_IGNITION(2, 1),
  /** A proved flame was lost. */
  FLAME_LOST(2, 2),
  /** A flame signal with the valve shut. */
  FALSE_FLAME(2, 3),
  /** AC without DC: the sense circuit is shorted. */
  SENSE_SHORTED(2, 4),
  /** The pressure switch is open where it should be closed. */
  PRESSURE_OPEN(3, 1),
  /** The pressure switch is closed where it should be open. */
  PRESSURE_CLOSED(3, 2),
  /** The limit is open. */
  LIMIT_OPEN(3, 3),
  /** Line and neutral are swapped. */
  LINE_REVERSED(3, 4),
  /** Soft lockout. */
  SOFT_LOCKOUT(4, 1),
  /** Hard lockout. */
  HARD_LOCKOUT(4, 2);

  private final int longFlashes;
  private final int shortFlashes;

  StatusCode(int longFlashes, int shortFlashes) {
    this.longFlashes = longFlashes;
    this.shortFlashes = shortFlashes;
  }

  /** Long flashes, first. */
  public int longFlashes() {
    return longFlashes;
  }

  /** Short flashes, after them. */
  public int shortFlashes() {
    return shortFlashes;
  }
}
