package halfwave.diagnosis;

import java.util.Map;

/**
 * What one line of the log did to the belief.
 *
 * @param entry the line
 * @param before probability of each cause being what is wrong now, before it
 * @param after the same after it
 * @param expectedProbability how probable such an outcome was beforehand: of what was found, or of
 *     a reading as far out as this one
 */
public record Step(
    Entry entry, Map<Cause, Double> before, Map<Cause, Double> after, double expectedProbability) {

  /** Below this an outcome contradicts what is known, or a cause is missing [judgement]. */
  private static final double SURPRISING_PROBABILITY = 0.02;

  /** Takes copies. */
  public Step {
    before = Map.copyOf(before);
    after = Map.copyOf(after);
  }

  /** Whether it is hard to believe. */
  public boolean surprising() {
    return expectedProbability < SURPRISING_PROBABILITY;
  }
}
