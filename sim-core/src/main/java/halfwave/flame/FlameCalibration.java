package halfwave.flame;

import halfwave.quantity.Guard;

/**
 * The few free numbers of the flame model, each with its range.
 *
 * @param ionMultiplierRatio k_ion, multiplies every ion source (1), 0.2 to 1; the absolute scale is
 *     uncertain by a factor of 3 [calc]; 0 to 10
 * @param rootMultiplierRatio f_root, mantle's ion source at the rim over that of the counterflow
 *     flame (1), 1 to 3: outside air mixes in at the rim [seen: Ikeda et al.]; 0 to 10
 * @param restGapMeters g₀, stand-off of a flame far from blow-off (m), 0.3 to 1 mm; above zero
 * @param columnOhms resistance of the plasma between the electrodes (Ω) [practice]; zero or above
 * @param electronMobilitySquareMetersPerVoltSecond μ_e (m²/Vs), 0.2 to 1 [seen as a default of a
 *     chemistry code]; above zero
 * @param burnerFaceKelvin gas temperature in the burner's gap (K), 400 to 800; above zero
 */
public record FlameCalibration(
    double ionMultiplierRatio,
    double rootMultiplierRatio,
    double restGapMeters,
    double columnOhms,
    double electronMobilitySquareMetersPerVoltSecond,
    double burnerFaceKelvin) {

  /** The model's defaults. */
  public static final FlameCalibration DEFAULT =
      new FlameCalibration(0.7, 1.2, 0.5e-3, 5e4, 0.4, 547);

  /** Checks the domain. */
  public FlameCalibration {
    Guard.inRange("ionMultiplierRatio", ionMultiplierRatio, 0, 10);
    Guard.inRange("rootMultiplierRatio", rootMultiplierRatio, 0, 10);
    Guard.positive("restGapMeters", restGapMeters);
    Guard.notNegative("columnOhms", columnOhms);
    Guard.positive(
        "electronMobilitySquareMetersPerVoltSecond", electronMobilitySquareMetersPerVoltSecond);
    Guard.positive("burnerFaceKelvin", burnerFaceKelvin);
  }

  /** The same with another k_ion (1). */
  public FlameCalibration withIonMultiplier(double ratio) {
    return new FlameCalibration(
        ratio,
        rootMultiplierRatio,
        restGapMeters,
        columnOhms,
        electronMobilitySquareMetersPerVoltSecond,
        burnerFaceKelvin);
  }
}
