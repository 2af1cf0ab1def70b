package halfwave.flame;

/**
 * One premixed one-dimensional flame at 1 atm and 298 K [calc: GRI-Mech 3.0 with three-species ion
 * chemistry; absolute ion scale uncertain by a factor of 3].
 *
 * @param equivalenceRatio fuel over stoichiometric fuel (1)
 * @param burningMetersPerSecond laminar burning velocity S_u (m/s)
 * @param hottestKelvin largest temperature (K)
 * @param burntGasMetersPerSecond speed of the burnt gas (m/s)
 * @param peakIonsPerCubicMeter largest ion density (1/m³)
 * @param saturationAmpsPerSquareMeter ion saturation current per area of sheet, j_sat (A/m²)
 */
public record FlameRow(
    double equivalenceRatio,
    double burningMetersPerSecond,
    double hottestKelvin,
    double burntGasMetersPerSecond,
    double peakIonsPerCubicMeter,
    double saturationAmpsPerSquareMeter) {

  /** Linear interpolation, or with a share outside 0..1 extrapolation, to another row. */
  FlameRow towards(FlameRow other, double share) {
    return new FlameRow(
        equivalenceRatio + share * (other.equivalenceRatio - equivalenceRatio),
        burningMetersPerSecond + share * (other.burningMetersPerSecond - burningMetersPerSecond),
        hottestKelvin + share * (other.hottestKelvin - hottestKelvin),
        burntGasMetersPerSecond + share * (other.burntGasMetersPerSecond - burntGasMetersPerSecond),
        peakIonsPerCubicMeter + share * (other.peakIonsPerCubicMeter - peakIonsPerCubicMeter),
        saturationAmpsPerSquareMeter
            + share * (other.saturationAmpsPerSquareMeter - saturationAmpsPerSquareMeter));
  }
}
