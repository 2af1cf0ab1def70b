package halfwave.circuit;

/** Why a circuit has no periodic steady state to show. */
public enum Failure {
  /** Zero ohms across the ideal source. */
  SOURCE_SHORTED,
  /** The periodic state was not reached within the allowed iterations. */
  NOT_CONVERGED
}
