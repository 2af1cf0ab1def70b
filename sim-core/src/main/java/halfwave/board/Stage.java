package halfwave.board;

/** What a board is doing. */
public enum Stage {
  /** No power. */
  OFF,
  /** Power, no call. */
  STANDBY,
  /** Power came back during a call: the blower runs first. */
  RESTART,
  /** Limit closed, pressure switch open, no flame where none should be. */
  SELF_CHECK,
  /** The inducer runs, the pressure switch has to close. */
  PRESSURE_PROOF,
  /** The pressure switch did not close in time: a pause. */
  PRESSURE_FAULT,
  /** Air before the trial. */
  PRE_PURGE,
  /** The igniter glows, the valve is shut. */
  WARM_UP,
  /** Valve open, no flame signal yet. */
  TRIAL,
  /** Valve open, there is a signal, it has to hold. */
  PROVING,
  /** Flame proved. */
  RUN,
  /** Air between trials, valve and igniter off. */
  INTER_PURGE,
  /** Air after the burners. */
  POST_PURGE,
  /** The limit is open: no gas, blowers run. */
  LIMIT_OPEN,
  /** A flame signal with the valve shut: no start. */
  FALSE_FLAME,
  /** Given up; ends by time, by cycling the call or by cycling the power. */
  SOFT_LOCKOUT,
  /** Given up; ends only by cycling the power. */
  HARD_LOCKOUT;

  /** Whether gas flows. */
  public boolean gas() {
    return this == TRIAL || this == PROVING || this == RUN;
  }

  /** Whether the board has given up. */
  public boolean lockout() {
    return this == SOFT_LOCKOUT || this == HARD_LOCKOUT;
  }

  /** Whether it is on the way to heat and needs a call to go on. */
  boolean needsCall() {
    return switch (this) {
      case SELF_CHECK,
          PRESSURE_PROOF,
          PRESSURE_FAULT,
          PRE_PURGE,
          WARM_UP,
          TRIAL,
          PROVING,
          RUN,
          INTER_PURGE,
          RESTART ->
          true;
      case OFF, STANDBY, POST_PURGE, LIMIT_OPEN, FALSE_FLAME, SOFT_LOCKOUT, HARD_LOCKOUT -> false;
    };
  }

  /** Whether the pressure switch has to stay closed. */
  boolean needsPressure() {
    return gas() || this == PRE_PURGE || this == WARM_UP || this == INTER_PURGE;
  }

  /** Whether heat has to be carried away: a proved flame, or a limit that opened. */
  boolean heats() {
    return this == RUN || this == LIMIT_OPEN;
  }

  /** Whether the combustion-air blower runs. */
  boolean air() {
    return needsPressure()
        || this == PRESSURE_PROOF
        || this == POST_PURGE
        || this == LIMIT_OPEN
        || this == FALSE_FLAME;
  }
}
