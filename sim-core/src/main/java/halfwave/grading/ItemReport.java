package halfwave.grading;

import halfwave.quiz.ServiceCall;
import java.util.List;

/**
 * How a class fared at one call.
 *
 * @param call the call
 * @param count how many handed it in
 * @param difficultyRatio mean mark (1): the item's p
 * @param discriminationRatio correlation of its mark with the mean of the other calls (1),
 *     corrected item-total correlation; NaN for fewer than three sheets, one call, or marks that
 *     are all the same
 * @param medianMinutes median of the simulated minutes (min); NaN where nobody handed it in
 * @param wrongTurns moves that were marked down, the most frequent first
 * @param wrongCauses causes that were named and are not, the most frequent first
 */
public record ItemReport(
    ServiceCall call,
    int count,
    double difficultyRatio,
    double discriminationRatio,
    double medianMinutes,
    List<Turn> wrongTurns,
    List<Turn> wrongCauses) {

  /**
   * Something that several did.
   *
   * @param what in the words of the files
   * @param count how many did
   */
  public record Turn(String what, int count) {}

  /** Takes copies. */
  public ItemReport {
    wrongTurns = List.copyOf(wrongTurns);
    wrongCauses = List.copyOf(wrongCauses);
  }
}
