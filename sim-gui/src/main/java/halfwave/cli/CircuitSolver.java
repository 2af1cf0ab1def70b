package halfwave.cli;

import halfwave.bench.Bench;
import halfwave.bench.Readings;
import halfwave.bench.Stages;
import halfwave.circuit.Failure;
import halfwave.circuit.Solved;
import halfwave.circuit.SteadyState;
import halfwave.io.bench.LumpedCircuitFile;
import org.jspecify.annotations.Nullable;

/** Solves a circuit of a file, or says why there is nothing to show. */
final class CircuitSolver {

  private CircuitSolver() {}

  static Solved solved(LumpedCircuitFile.Entry entry) {
    return solved(SteadyState.of(entry.circuit().circuit()), entry);
  }

  /** The undisturbed circuit of a bench. */
  static Solved solved(Bench bench) {
    return solved(Readings.undisturbed(new Stages(), bench), null);
  }

  private static Solved solved(SteadyState state, LumpedCircuitFile.@Nullable Entry entry) {
    if (state instanceof Solved solved) {
      return solved;
    }
    SteadyState.Failed failed = (SteadyState.Failed) state;
    if (entry != null && failed.failure() == Failure.SOURCE_SHORTED) {
      throw entry.unsolvable(failed);
    }
    // a circuit within the allowed ranges has a steady state: not to find it is our failure
    int status =
        failed.failure() == Failure.SOURCE_SHORTED ? Failures.BAD_INPUT : Failures.INTERNAL;
    throw new CommandFailedException(status, LumpedCircuitFile.said(failed));
  }
}
