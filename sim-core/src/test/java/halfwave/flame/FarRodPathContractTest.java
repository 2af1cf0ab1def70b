package halfwave.flame;

import halfwave.circuit.ConductionLaw;

/** A path through the air outside the flame keeps the contract of a conduction law. */
class FarRodPathContractTest extends FlameLawContract {

  @Override
  ConductionLaw law() {
    return FlameBench.standard().withRod(Rod.across(15e-3, 24e-3, -40e-3, 12e-3, 1.6e-3)).path();
  }
}
