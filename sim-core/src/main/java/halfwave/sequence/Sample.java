package halfwave.sequence;

import halfwave.board.BoardOutputs;
import halfwave.board.FlameSignal;
import halfwave.board.Stage;
import halfwave.board.StatusCode;

/**
 * Everything worth a curve, at an instant.
 *
 * @param timeMillis when (ms)
 * @param stage what the board is doing
 * @param code what its light says
 * @param outputs what it does
 * @param signal what it makes of its sense current
 * @param filteredAmps DC behind its filter (A)
 * @param sense current towards the rod
 * @param litCount burners that burn
 * @param growthRatio strength of the flame at the rod (1)
 * @param rodKelvin temperature of the rod (K)
 * @param igniterKelvin temperature of the hot surface (K)
 */
public record Sample(
    long timeMillis,
    Stage stage,
    StatusCode code,
    BoardOutputs outputs,
    FlameSignal signal,
    double filteredAmps,
    SenseCurrent sense,
    int litCount,
    double growthRatio,
    double rodKelvin,
    double igniterKelvin) {}
