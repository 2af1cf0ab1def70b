package halfwave.flame;

/**
 * The gases the simulator burns, with what orifice, injector and flame need to know about them.
 *
 * <p>Gas and air volumes are at 15 °C and 1 atm.
 */
public enum Fuel {
  /**
   * Natural gas; its chemistry is methane's. Specific gravity 0.60 and 1025 Btu/ft³ [practice; 950
   * to 1050 seen], 3.5 in w.c. at the manifold.
   */
  NATURAL_GAS(
      0.60, 38.2e6, 9.52, 3.5, "CH4", new double[] {0.18, 0.105, 0.068, 0.051, 0}, Double.NaN),

  /**
   * Propane: specific gravity 1.52, 2572 Btu/ft³ [seen: fuel-gas property table], 10 in w.c. Of the
   * last counterflow value only 0.023 A/m² belong to the mantle, the rest is inner cone [calc].
   * Largest burning velocity 0.42 m/s [memory]; the table's is about 20 % high and is scaled.
   */
  PROPANE(1.52, 95.8e6, 23.8, 10, "C3H8", new double[] {0.20, 0.073, 0.031, 0.023, 0}, 0.42);

  /** One inch of water column (Pa). */
  public static final double INCH_OF_WATER_PASCALS = 249.1;

  private static final double[] COUNTERFLOW_INVERSE_RATIO = {0, 1.0 / 3, 0.5, 0.625, 1};

  private final double specificGravityRatio;
  private final double grossHeatJoulesPerCubicMeter;
  private final double stoichiometricAirRatio;
  private final double manifoldPascals;
  private final double[] counterflowAmpsPerSquareMeter;
  private final FlameTable table;

  Fuel(
      double specificGravityRatio,
      double grossHeatJoulesPerCubicMeter,
      double stoichiometricAirRatio,
      double manifoldInches,
      String formula,
      double[] counterflowAmpsPerSquareMeter,
      double largestBurningVelocity) {
    this.specificGravityRatio = specificGravityRatio;
    this.grossHeatJoulesPerCubicMeter = grossHeatJoulesPerCubicMeter;
    this.stoichiometricAirRatio = stoichiometricAirRatio;
    this.manifoldPascals = manifoldInches * INCH_OF_WATER_PASCALS;
    this.counterflowAmpsPerSquareMeter = counterflowAmpsPerSquareMeter;
    this.table = FlameTable.read(formula, largestBurningVelocity);
  }

  /** Density over that of air, s (1). */
  public double specificGravityRatio() {
    return specificGravityRatio;
  }

  /** Gross heat of combustion (J/m³). */
  public double grossHeatJoulesPerCubicMeter() {
    return grossHeatJoulesPerCubicMeter;
  }

  /** Stoichiometric air volume per gas volume, r_st (1). */
  public double stoichiometricAirRatio() {
    return stoichiometricAirRatio;
  }

  /** Usual manifold gauge pressure (Pa). */
  public double manifoldPascals() {
    return manifoldPascals;
  }

  /** One-dimensional flames of this fuel. */
  public FlameTable table() {
    return table;
  }

  /**
   * Ion saturation current density of the outer diffusion mantle, at the reference strain and
   * without the calibration multiplier [calc, counterflow flames at 0.5 m/s over 15 mm]; linear
   * between the computed points, to zero for a stoichiometric primary mixture.
   *
   * @param equivalenceRatio φ_p of the primary mixture (1); above zero
   * @return current per area of sheet (A/m²), zero or above
   */
  public double counterflowAmpsPerSquareMeter(double equivalenceRatio) {
    double x = 1 / equivalenceRatio;
    for (int k = 1; k < COUNTERFLOW_INVERSE_RATIO.length; k++) {
      double x1 = COUNTERFLOW_INVERSE_RATIO[k];
      if (x <= x1) {
        double x0 = COUNTERFLOW_INVERSE_RATIO[k - 1];
        double j0 = counterflowAmpsPerSquareMeter[k - 1];
        return j0 + (x - x0) / (x1 - x0) * (counterflowAmpsPerSquareMeter[k] - j0);
      }
    }
    return 0;
  }
}
