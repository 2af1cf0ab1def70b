package halfwave.quiz;

import halfwave.diagnosis.Cause;
import halfwave.fault.FaultKind;
import halfwave.quantity.RejectedValueException;
import halfwave.quantity.RejectedValueException.Allowed;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What may be wrong on a service call.
 *
 * @param faults none, one or two of different kinds
 */
public record Hidden(List<Part> faults) {

  /**
   * One fault of it.
   *
   * @param kind what it is
   * @param severity how severe, in SI, inside the kind's range; null: drawn for each learner, or
   *     the kind has no severity
   */
  public record Part(FaultKind kind, @Nullable Double severity) {

    /** Checks the severity. */
    public Part {
      if (severity != null && !(severity >= kind.least() && severity <= kind.most())) {
        throw new RejectedValueException(
            "severity", severity.toString(), Allowed.RANGE, kind.least(), kind.most());
      }
    }
  }

  /** Takes a copy. */
  public Hidden {
    faults = List.copyOf(faults);
  }

  /** The same as a cause. */
  public Cause cause() {
    return new Cause(faults.stream().map(Part::kind).toList());
  }
}
