package halfwave.flame;

/** The burner as an electrode: two sheets of flame across the ion-free gap at their feet. */
public final class BurnerCollection {

  private static final double FREE_GAP_METERS = 1e-3;
  private static final double FULL_GAP_METERS = 1.2e-3;
  private static final double ELECTRONS_SQUARE_METERS_PER_VOLT_SECOND = 0.04;

  private BurnerCollection() {}

  /**
   * The burner against the plasma.
   *
   * <p>Ions: {@link GapLaw} summed over mantle and cone. Electrons: free up to a gap of 1 mm;
   * beyond, the voltage at which the gap formula with mobility 0.04 and no saturation passes the
   * current [memory]. Between 1.0 and 1.2 mm that voltage is brought in linearly, so that the law
   * does not jump while the gap opens [practice].
   *
   * @param sheets the flame
   * @param design the burner's metal
   * @param calibration free numbers
   * @return its characteristic
   */
  public static ElectrodeCharacteristic characteristic(
      FlameSheets sheets, BurnerDesign design, FlameCalibration calibration) {
    if (!sheets.state().burning()) {
      return ElectrodeCharacteristic.outOfFlame();
    }
    GapLaw mantle = mantle(sheets, design, calibration);
    GapLaw cone = cone(sheets, design, calibration);
    double[] amps = new double[CurrentCurve.INTERVALS + 1];
    for (int k = 1; k < amps.length; k++) {
      double v = CurrentCurve.tableVolts(k);
      amps[k] = mantle.currentAmps(v) + cone.currentAmps(v);
    }
    return new ElectrodeCharacteristic(
        CurrentCurve.of(amps, 0, 0), electrons(sheets.gapMeters(), mantle, cone));
  }

  /** Law of the outer mantle's foot. */
  public static GapLaw mantle(
      FlameSheets sheets, BurnerDesign design, FlameCalibration calibration) {
    return law(
        sheets, sheets.rootAmpsPerSquareMeter(), GapLaw.MANTLE_OPENING_RATIO, design, calibration);
  }

  /** Law of the inner cone's foot. */
  public static GapLaw cone(FlameSheets sheets, BurnerDesign design, FlameCalibration calibration) {
    return law(
        sheets, sheets.coneAmpsPerSquareMeter(), GapLaw.CONE_OPENING_RATIO, design, calibration);
  }

  private static GapLaw law(
      FlameSheets sheets,
      double supply,
      double opening,
      BurnerDesign design,
      FlameCalibration calibration) {
    return new GapLaw(
        sheets.gapMeters(),
        supply,
        design.attachmentLengthMeters(),
        opening,
        IonGas.mobilitySquareMetersPerVoltSecond(calibration.burnerFaceKelvin()));
  }

  private static CurrentCurve electrons(double gap, GapLaw mantle, GapLaw cone) {
    double share = (gap - FREE_GAP_METERS) / (FULL_GAP_METERS - FREE_GAP_METERS);
    if (!(share > 0)) {
      return CurrentCurve.ohmic(ElectrodeCharacteristic.FREE_SIEMENS);
    }
    double weight = Math.min(1, share);
    double perSquare = unsaturated(mantle) + unsaturated(cone);
    double[] amps = new double[CurrentCurve.INTERVALS + 1];
    for (int k = 1; k < amps.length; k++) {
      double v = CurrentCurve.tableVolts(k) / weight;
      amps[k] = perSquare * v * v;
    }
    return CurrentCurve.of(amps, 0, 0);
  }

  /** Current over V² without saturation, {@code P·(9/8)·ε₀·μ/(2·m·g²)} (A/V²). */
  private static double unsaturated(GapLaw law) {
    double g = law.gapMeters();
    return law.attachmentLengthMeters()
        * IonGas.SPACE_CHARGE_FARADS_PER_METER
        * ELECTRONS_SQUARE_METERS_PER_VOLT_SECOND
        / (2 * law.openingRatio() * g * g);
  }
}
