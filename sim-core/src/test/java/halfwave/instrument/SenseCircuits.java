package halfwave.instrument;

import halfwave.circuit.Circuit;
import halfwave.circuit.ConductionLaw;
import halfwave.circuit.LumpedCircuit;
import halfwave.circuit.LumpedCircuit.Film;
import halfwave.circuit.LumpedCircuit.Ground;
import halfwave.circuit.LumpedCircuit.Lead;
import halfwave.circuit.LumpedCircuit.Source;
import halfwave.circuit.SquareRootLaw;
import org.jspecify.annotations.Nullable;

/** Lumped sense circuits that meters are put on in tests. */
final class SenseCircuits {

  static final double OPEN = Double.POSITIVE_INFINITY;

  /** Coefficients of the order of the shipped benches'. */
  static final SquareRootLaw FLAME = new SquareRootLaw(0.35e-6, 1.1e-6, 5e4);

  /** An ordinary board: 120 V behind 2.2 MΩ. */
  static final Source BOARD = new Source(120, 60, 2.2e6, null, null);

  /** A source without resistance. */
  static Source stiff(double rmsVolts) {
    return new Source(rmsVolts, 60, 0, null, null);
  }

  private SenseCircuits() {}

  static Circuit of(Source source, Lead lead, @Nullable Film film, @Nullable ConductionLaw flame) {
    return new LumpedCircuit(source, lead, film, flame, null, new Ground(0.3)).circuit();
  }

  static Circuit burning() {
    return of(BOARD, new Lead(1, 200e6, 80e-12), null, FLAME);
  }

  static Circuit leadOff() {
    return of(BOARD, new Lead(OPEN, null, null), null, null);
  }
}
