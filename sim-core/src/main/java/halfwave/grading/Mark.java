package halfwave.grading;

import halfwave.message.Message;
import java.util.List;

/**
 * One mark of a service call.
 *
 * @param criterion for what
 * @param ratio share of what it counts (1), zero to one
 * @param points what it counts (points)
 * @param reasons why, and what would have been better
 */
public record Mark(Criterion criterion, double ratio, double points, List<Message> reasons) {

  /** Takes a copy. */
  public Mark {
    reasons = List.copyOf(reasons);
  }
}
