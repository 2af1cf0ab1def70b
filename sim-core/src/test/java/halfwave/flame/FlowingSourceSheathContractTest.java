package halfwave.flame;

/** {@link FlowingSourceSheath} keeps the contract of its family. */
class FlowingSourceSheathContractTest extends ElectrodeLawContract {

  @Override
  ElectrodeLaw law() {
    return new FlowingSourceSheath(2.4e19, 1e16, 3, 1.6e-3, 1.6e-3, 0.01);
  }
}
