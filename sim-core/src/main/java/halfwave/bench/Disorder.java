package halfwave.bench;

/** A part of the appliance that is not as it should be in service: it is, or it is not. */
public enum Disorder {
  /** The gas cock before the valve is shut. */
  GAS_SHUT,
  /** The gas valve stays shut whatever the board does. */
  VALVE_STUCK_SHUT,
  /** The gas valve stays open whatever the board does. */
  VALVE_STUCK_OPEN,
  /** The hot-surface igniter or the spark circuit is broken. */
  IGNITER_BROKEN,
  /** The inducer does not turn. */
  INDUCER_DEAD,
  /** The circulating blower does not turn. */
  BLOWER_DEAD,
  /** The pressure switch stays open. */
  PRESSURE_SWITCH_OPEN,
  /** The pressure switch stays closed. */
  PRESSURE_SWITCH_CLOSED,
  /** The limit is open. */
  LIMIT_OPEN,
  /** The door is off: its switch cuts the power. */
  DOOR_OPEN,
  /** Line and neutral are swapped: the sense source has no voltage against the chassis. */
  LINE_REVERSED,
  /** The board fails its own test. */
  BOARD_FAULT
}
