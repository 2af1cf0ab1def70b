package halfwave.board;

/**
 * What is around a board, as far as the board sees it.
 *
 * @param power control power
 * @param call call for heat
 * @param limitClosed limit
 * @param lineRight line and neutral
 * @param selfTestPassed the board's own circuits
 * @param pressure pressure switch
 * @param flame what a burning gas, or what is taken for it, signals
 * @param burns the signal is there only while a valve is open
 */
record BoardPlant(
    boolean power,
    boolean call,
    boolean limitClosed,
    boolean lineRight,
    boolean selfTestPassed,
    Pressure pressure,
    FlameSignal flame,
    boolean burns) {

  enum Pressure {
    FOLLOWS_THE_INDUCER,
    STUCK_OPEN,
    STUCK_CLOSED
  }

  /** All in order, no call. */
  static final BoardPlant IDLE =
      new BoardPlant(
          true, false, true, true, true, Pressure.FOLLOWS_THE_INDUCER, FlameSignal.GOOD, true);

  /** All in order, a call. */
  static final BoardPlant HEALTHY = IDLE.withCall(true);

  BoardPlant withPower(boolean on) {
    return new BoardPlant(on, call, limitClosed, lineRight, selfTestPassed, pressure, flame, burns);
  }

  BoardPlant withCall(boolean on) {
    return new BoardPlant(
        power, on, limitClosed, lineRight, selfTestPassed, pressure, flame, burns);
  }

  BoardPlant withLimitClosed(boolean closed) {
    return new BoardPlant(power, call, closed, lineRight, selfTestPassed, pressure, flame, burns);
  }

  BoardPlant withLineRight(boolean right) {
    return new BoardPlant(power, call, limitClosed, right, selfTestPassed, pressure, flame, burns);
  }

  BoardPlant withSelfTestPassed(boolean passed) {
    return new BoardPlant(power, call, limitClosed, lineRight, passed, pressure, flame, burns);
  }

  BoardPlant withPressure(Pressure as) {
    return new BoardPlant(power, call, limitClosed, lineRight, selfTestPassed, as, flame, burns);
  }

  BoardPlant withFlame(FlameSignal signal, boolean onlyWithGas) {
    return new BoardPlant(
        power, call, limitClosed, lineRight, selfTestPassed, pressure, signal, onlyWithGas);
  }

  boolean pressureClosed(BoardOutputs out) {
    return switch (pressure) {
      case FOLLOWS_THE_INDUCER -> out.inducer();
      case STUCK_OPEN -> false;
      case STUCK_CLOSED -> true;
    };
  }

  /** What the board sees of it, with the sense circuit left out. */
  BoardInputs inputs(BoardOutputs out) {
    return inputs(out, out.gas() || !burns ? flame : FlameSignal.NONE);
  }

  BoardInputs inputs(BoardOutputs out, FlameSignal signal) {
    return new BoardInputs(
        power, call, pressureClosed(out), limitClosed, lineRight, selfTestPassed, signal);
  }
}
