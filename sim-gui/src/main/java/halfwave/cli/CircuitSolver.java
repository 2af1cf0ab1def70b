package halfwave.cli;

import halfwave.circuit.Failure;
import halfwave.circuit.Solved;
import halfwave.circuit.SteadyState;
import halfwave.io.LumpedCircuitFile;

/** Solves a circuit of a file, or says why there is nothing to show. */
final class CircuitSolver {

  private CircuitSolver() {}

  static Solved solved(LumpedCircuitFile.Entry entry) {
    SteadyState state = SteadyState.of(entry.circuit().circuit());
    if (state instanceof Solved solved) {
      return solved;
    }
    SteadyState.Failed failed = (SteadyState.Failed) state;
    if (failed.failure() == Failure.SOURCE_SHORTED) {
      throw entry.unsolvable(failed);
    }
    // a circuit within the allowed ranges has a steady state: not to find it is our failure
    throw new CommandFailedException(Failures.INTERNAL, LumpedCircuitFile.said(failed));
  }
}
