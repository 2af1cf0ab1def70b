package halfwave.flame;

import halfwave.circuit.ConductionLaw;

/** A rod against the plasma keeps the contract of a conduction law. */
class ElectrodeCharacteristicContractTest extends FlameLawContract {

  @Override
  ConductionLaw law() {
    return FlameBench.standard().path().rod();
  }
}
