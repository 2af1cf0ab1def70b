package halfwave.flame;

/** {@link OutsideLaw} keeps the contract of its family. */
class OutsideLawContractTest extends ElectrodeLawContract {

  @Override
  ElectrodeLaw law() {
    return new OutsideLaw(3e-3, 0.044, 5e-4, 1.6e-3, 0.01);
  }
}
