package halfwave.flame;

/**
 * Cylinder in flowing burnt gas without a source: the smaller of the thick- and the thin-sheath
 * law.
 *
 * @param ionsPerCubicMeter n (1/m³); above zero
 * @param flowMetersPerSecond U, undisturbed (m/s); above zero
 * @param mobilitySquareMetersPerVoltSecond ion mobility μ (m²/Vs); above zero
 * @param radiusMeters a (m); above zero
 * @param lengthMeters L (m); above zero
 */
public record BurntGasSheath(
    double ionsPerCubicMeter,
    double flowMetersPerSecond,
    double mobilitySquareMetersPerVoltSecond,
    double radiusMeters,
    double lengthMeters)
    implements ElectrodeLaw {

  /** Checks the domain. */
  public BurntGasSheath {
    new ThinSheath(
        ionsPerCubicMeter,
        flowMetersPerSecond,
        mobilitySquareMetersPerVoltSecond,
        radiusMeters,
        lengthMeters);
  }

  @Override
  public double currentAmps(double volts) {
    return Math.min(thick().currentAmps(volts), thin().currentAmps(volts));
  }

  /** The thick-sheath law alone. */
  public ThickSheath thick() {
    return new ThickSheath(
        ionsPerCubicMeter,
        flowMetersPerSecond,
        mobilitySquareMetersPerVoltSecond,
        radiusMeters,
        lengthMeters);
  }

  /** The thin-sheath law alone. */
  public ThinSheath thin() {
    return new ThinSheath(
        ionsPerCubicMeter,
        flowMetersPerSecond,
        mobilitySquareMetersPerVoltSecond,
        radiusMeters,
        lengthMeters);
  }
}
