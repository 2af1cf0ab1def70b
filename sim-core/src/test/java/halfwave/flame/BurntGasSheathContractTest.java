package halfwave.flame;

/** {@link BurntGasSheath} keeps the contract of its family. */
class BurntGasSheathContractTest extends ElectrodeLawContract {

  @Override
  ElectrodeLaw law() {
    return new BurntGasSheath(1e16, 3, 1.6e-3, 1.6e-3, 0.01);
  }
}
