package halfwave.quiz;

import halfwave.diagnosis.Cause;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
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
   * @param fixed the fault; null: its severity is drawn for each learner, or it has none
   */
  public record Part(FaultKind kind, @Nullable Fault fixed) {

    /** Checks that both are of one kind. */
    public Part {
      if (fixed != null && fixed.kind() != kind) {
        throw new IllegalArgumentException("fixed = " + fixed + ": of kind " + kind);
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
