package halfwave.flame;

import halfwave.circuit.ConductionLaw;

/** A path without a flame keeps the contract of a conduction law. */
class OutOfFlamePathContractTest extends FlameLawContract {

  @Override
  ConductionLaw law() {
    return FlameBench.standard().withAirFactor(1.8).path();
  }
}
