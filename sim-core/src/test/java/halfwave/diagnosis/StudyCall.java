package halfwave.diagnosis;

import java.util.List;
import java.util.Map;

/**
 * One service call of the study.
 *
 * @param bench the bench that it was taken for
 * @param cause what was wrong
 * @param found what every check would have found
 * @param knowing what the engine believes after all of them
 * @param visits what each way of going about it led to
 */
record StudyCall(
    String bench,
    Cause cause,
    Map<Check, Outcome> found,
    Map<Cause, Double> knowing,
    Map<Policy, Visit> visits) {

  /** Where the true cause stands among all, the first at zero. */
  static int rank(Map<Cause, Double> belief, Cause cause) {
    return List.copyOf(belief.keySet()).indexOf(cause);
  }
}
