package halfwave.sequence;

import halfwave.circuit.SteadyState.Failed;
import org.jspecify.annotations.Nullable;

/**
 * The current that leaves the board towards the rod. Where the circuit has no solution the board
 * gets nothing, and the reason stands beside it.
 *
 * @param meanAmps DC (A); zero where there is no solution
 * @param alternatingRmsAmps AC (A rms); zero where there is no solution
 * @param unsolved why there is no solution, or null
 */
public record SenseCurrent(double meanAmps, double alternatingRmsAmps, @Nullable Failed unsolved) {

  /** No voltage on the sense terminal. */
  static final SenseCurrent NONE = new SenseCurrent(0, 0, null);

  SenseCurrent towards(SenseCurrent other, double share) {
    if (unsolved != null || share == 0) {
      return this;
    }
    return other.unsolved != null
        ? other
        : new SenseCurrent(
            meanAmps + share * (other.meanAmps - meanAmps),
            alternatingRmsAmps + share * (other.alternatingRmsAmps - alternatingRmsAmps),
            null);
  }
}
