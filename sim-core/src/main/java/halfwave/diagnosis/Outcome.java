package halfwave.diagnosis;

import java.util.Set;

/**
 * What came of a check.
 *
 * <pre>
 * Outcome = Found | Amps | Volts | NotReached | Unsure
 * </pre>
 */
public sealed interface Outcome {

  /**
   * What was seen.
   *
   * @param what one of the check's outcomes
   */
  record Found(Enum<?> what) implements Outcome {}

  /** What a meter showed. */
  sealed interface Metered extends Outcome {}

  /**
   * A current in series; NaN for a figure that was not read.
   *
   * @param meanAmps DC (A)
   * @param alternatingRmsAmps AC (A rms)
   */
  record Amps(double meanAmps, double alternatingRmsAmps) implements Metered {

    /** Only the DC figure. */
    public static Amps ofMean(double meanAmps) {
      return new Amps(meanAmps, Double.NaN);
    }
  }

  /**
   * An alternating voltage; NaN where the circuit has no solution.
   *
   * @param alternatingRmsVolts AC (V rms)
   */
  record Volts(double alternatingRmsVolts) implements Metered {}

  /** It never came to that: no trial, no flame that could have been lost. */
  record NotReached() implements Outcome {}

  /**
   * One of these, it was not clear which; all of them is no evidence at all.
   *
   * @param what some of the check's outcomes
   */
  record Unsure(Set<Enum<?>> what) implements Outcome {

    /** Takes a copy. */
    public Unsure {
      what = Set.copyOf(what);
    }
  }
}
