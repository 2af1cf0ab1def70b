package halfwave.flame;

/** {@link SourceSheath} keeps the contract of its family. */
class SourceSheathContractTest extends ElectrodeLawContract {

  @Override
  ElectrodeLaw law() {
    return new SourceSheath(2.4e19, 1.6e-3, 1.6e-3, 0.01);
  }
}
