package halfwave.flame;

import halfwave.circuit.ConductionLaw;

/** The default flame path keeps the contract of a conduction law. */
class FlamePathContractTest extends FlameLawContract {

  @Override
  ConductionLaw law() {
    return FlameBench.standard().path();
  }
}
