package halfwave.board;

/**
 * What a board does at an instant.
 *
 * @param inducer the combustion-air blower runs
 * @param igniter the hot surface is powered
 * @param spark it sparks
 * @param pilotValve gas to the pilot
 * @param mainValve gas to the burners
 * @param blower the circulating blower runs
 */
public record BoardOutputs(
    boolean inducer,
    boolean igniter,
    boolean spark,
    boolean pilotValve,
    boolean mainValve,
    boolean blower) {

  /** Everything off. */
  public static final BoardOutputs NONE =
      new BoardOutputs(false, false, false, false, false, false);

  /** Whether any gas valve is powered. */
  public boolean gas() {
    return pilotValve || mainValve;
  }
}
