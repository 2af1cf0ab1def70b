package halfwave.board;

/**
 * What a board sees at an instant.
 *
 * @param power the board has control power: supply on, door switch closed
 * @param call the thermostat calls for heat
 * @param pressureClosed the pressure switch is closed
 * @param limitClosed the limit is closed
 * @param lineRight line and neutral are where they belong
 * @param selfTestPassed the board's own circuits work
 * @param signal what the sense circuit tells
 */
public record BoardInputs(
    boolean power,
    boolean call,
    boolean pressureClosed,
    boolean limitClosed,
    boolean lineRight,
    boolean selfTestPassed,
    FlameSignal signal) {}
