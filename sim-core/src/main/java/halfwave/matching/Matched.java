package halfwave.matching;

import halfwave.circuit.SteadyState;
import halfwave.quantity.RejectedValueException;

/**
 * What came of a fit.
 *
 * <pre>
 * Matched = Match | Impossible | Unsolved | Unsettled
 * </pre>
 */
public sealed interface Matched
    permits Match, Matched.Impossible, Matched.Unsolved, Matched.Unsettled {

  /**
   * A reading was taken where this bench has no place for the rod.
   *
   * @param sight which
   * @param reason what is in the way
   */
  record Impossible(Sight sight, RejectedValueException reason) implements Matched {}

  /**
   * A circuit on the way had no steady state.
   *
   * @param sight the reading it was solved for
   * @param reason why, naming the part
   */
  record Unsolved(Sight sight, SteadyState.Failed reason) implements Matched {}

  /**
   * The search did not come to rest.
   *
   * @param searchCount how many sets of values were tried
   */
  record Unsettled(int searchCount) implements Matched {}
}
