package halfwave.flame;

/** {@link ThickSheath} keeps the contract of its family. */
class ThickSheathContractTest extends ElectrodeLawContract {

  @Override
  ElectrodeLaw law() {
    return new ThickSheath(1e16, 3, 1.6e-3, 1.6e-3, 0.01);
  }
}
