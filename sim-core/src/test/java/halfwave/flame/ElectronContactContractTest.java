package halfwave.flame;

/** {@link ElectronContact} keeps the contract of its family. */
class ElectronContactContractTest extends ElectrodeLawContract {

  @Override
  ElectrodeLaw law() {
    return ElectronContact.of(1e16, 0.4, 0.025);
  }
}
