package halfwave.flame;

/** {@link ThinSheath} keeps the contract of its family. */
class ThinSheathContractTest extends ElectrodeLawContract {

  @Override
  ElectrodeLaw law() {
    return new ThinSheath(1e16, 3, 1.6e-3, 1.6e-3, 0.01);
  }
}
