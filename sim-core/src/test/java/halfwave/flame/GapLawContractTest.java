package halfwave.flame;

/** {@link GapLaw} keeps the contract of its family. */
class GapLawContractTest extends ElectrodeLawContract {

  @Override
  ElectrodeLaw law() {
    return new GapLaw(0.54e-3, 0.052, 0.22, GapLaw.MANTLE_OPENING_RATIO, 5e-4);
  }
}
