package halfwave.circuit;

import halfwave.circuit.LumpedCircuit.Readings;

/** A circuit whose reduction is made once, so that a benchmark can time what comes after it. */
public final class Prepared {

  private final Reduction reduction;

  /** Reduces a circuit. */
  public Prepared(Circuit circuit) {
    reduction = new Reduction(circuit, new Topology(circuit));
  }

  /** Steady state and five readings. */
  public Readings readings() {
    return Readings.of((Solved) Shooting.solve(reduction, SteadyState.STANDARD_SAMPLES));
  }
}
