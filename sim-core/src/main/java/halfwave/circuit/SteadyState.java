package halfwave.circuit;

/**
 * The periodic steady state of a circuit, or why there is none.
 *
 * <pre>
 * SteadyState = Solved | Failed
 * </pre>
 */
public sealed interface SteadyState permits Solved, SteadyState.Failed {

  /** Samples per period that serve all readings to 0.1 %. */
  int STANDARD_SAMPLES = 128;

  /**
   * No solution. A value, so that no number is ever shown in its place.
   *
   * @param failure what went wrong
   * @param part the element in trouble
   * @param timeSeconds time within the period at which it was worst (s)
   * @param iterationCount iterations spent
   */
  record Failed(Failure failure, Part part, double timeSeconds, int iterationCount)
      implements SteadyState {}

  /** Solves with the standard number of samples. */
  static SteadyState of(Circuit circuit) {
    return of(circuit, STANDARD_SAMPLES);
  }

  /**
   * Solves for the periodic steady state.
   *
   * @param circuit the circuit
   * @param samples samples per period; even, at least 16
   * @return the solution, or the failure as a value
   */
  static SteadyState of(Circuit circuit, int samples) {
    if (!(samples >= 16 && samples % 2 == 0)) {
      throw new IllegalArgumentException("samples = " + samples + ": even, at least 16");
    }
    Topology topology = new Topology(circuit);
    if (topology.sourceShorted()) {
      return new Failed(Failure.SOURCE_SHORTED, Part.SOURCE, 0, 0);
    }
    return Shooting.solve(new Reduction(circuit, topology), samples);
  }
}
