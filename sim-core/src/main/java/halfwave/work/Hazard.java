package halfwave.work;

/** What can hurt. */
public enum Hazard {
  /** Line voltage, and the sense voltage that comes from it. */
  LINE_VOLTAGE(Caution.LIVE_PARTS, true, false),
  /** Ignition voltage of ten kilovolts and more. */
  SPARK_VOLTAGE(Caution.SPARK_VOLTAGE, true, false),
  /** Wheels and belts. */
  MOVING_PARTS(Caution.MOVING_PARTS, true, false),
  /** Flame that may come out. */
  FLAME(Caution.FLAME, false, true),
  /** Carbon monoxide. */
  CARBON_MONOXIDE(Caution.CARBON_MONOXIDE, false, true),
  /** A gas joint that is opened: it may leak afterwards. */
  GAS_JOINT(Caution.LEAK_TEST, false, false),
  /** Metal or ceramic that stays hot. */
  HOT_SURFACE(Caution.LET_COOL, false, false),
  /** Sheet metal. */
  SHARP_EDGE(Caution.GLOVES, false, false);

  private final Caution caution;
  private final boolean endsWithPower;
  private final boolean endsWithGas;

  Hazard(Caution caution, boolean endsWithPower, boolean endsWithGas) {
    this.caution = caution;
    this.endsWithPower = endsWithPower;
    this.endsWithGas = endsWithGas;
  }

  /**
   * What to be told.
   *
   * @param hot whether the furnace has to be hot meanwhile
   */
  public Caution caution(boolean hot) {
    return this == HOT_SURFACE && hot ? Caution.STAYS_HOT : caution;
  }

  /** Whether it is still there with power or gas off. */
  boolean remains(boolean powerOff, boolean gasOff) {
    return !(endsWithPower && powerOff) && !(endsWithGas && gasOff);
  }
}
