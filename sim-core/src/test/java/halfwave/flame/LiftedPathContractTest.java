package halfwave.flame;

import halfwave.circuit.ConductionLaw;

/** A path whose burner has no free contact keeps the contract of a conduction law. */
class LiftedPathContractTest extends FlameLawContract {

  @Override
  ConductionLaw law() {
    return FlameBench.standard().withGap(2e-3).path();
  }
}
