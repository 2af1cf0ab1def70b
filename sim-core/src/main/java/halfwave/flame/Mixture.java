package halfwave.flame;

import halfwave.quantity.Guard;

/**
 * What leaves the burner's port: gas with its primary air.
 *
 * @param fuel the gas
 * @param gasCubicMetersPerSecond gas flow Q at 15 °C (m³/s); zero when the valve is shut
 * @param airRatio primary air volume per gas volume r (1)
 * @param equivalenceRatio φ_p = r_st/r of the primary mixture (1)
 * @param portMetersPerSecond mean speed U_m in the port (m/s)
 * @param firingWatts gross heat released (W)
 */
public record Mixture(
    Fuel fuel,
    double gasCubicMetersPerSecond,
    double airRatio,
    double equivalenceRatio,
    double portMetersPerSecond,
    double firingWatts) {

  /** Healthy share of the clean injector's air (1): losses of tube and ports [practice]. */
  public static final double HEALTHY_AIR_RATIO = 0.95;

  /** Density of air at 15 °C, 1 atm (kg/m³). */
  static final double AIR_KILOGRAMS_PER_CUBIC_METER = 1.225;

  /**
   * The mixture a burner makes.
   *
   * @param fuel the gas
   * @param burner the metal
   * @param manifoldPascals gauge pressure at the orifice (Pa); zero or above
   * @param airFactorRatio f_air, share of the clean injector's primary air (1): 0.95 healthy, 0.3
   *     to 0.9 shutter or intake blocked, up to 1.6 too much air [practice]; 0.1 to 3
   * @return the mixture
   */
  public static Mixture of(
      Fuel fuel, BurnerDesign burner, double manifoldPascals, double airFactorRatio) {
    Guard.inRange("airFactorRatio", airFactorRatio, 0.1, 3);
    double q = burner.gasCubicMetersPerSecond(fuel, manifoldPascals);
    double r = airFactorRatio * burner.entrainmentRatio(fuel);
    Guard.positive("airRatio", r);
    double port = Math.PI * burner.portRadiusMeters() * burner.portRadiusMeters();
    return new Mixture(
        fuel,
        q,
        r,
        fuel.stoichiometricAirRatio() / r,
        q * (1 + r) / port,
        q * fuel.grossHeatJoulesPerCubicMeter());
  }

  /** The fuel's usual pressure and healthy primary air. */
  public static Mixture healthy(Fuel fuel, BurnerDesign burner) {
    return of(fuel, burner, fuel.manifoldPascals(), HEALTHY_AIR_RATIO);
  }

  /**
   * X: fuel fraction over the stoichiometric mixture's fuel fraction, {@code φ(1 + r_st)/(φ +
   * r_st)}.
   */
  public double fuelFractionRatio() {
    double rst = fuel.stoichiometricAirRatio();
    return equivalenceRatio * (1 + rst) / (equivalenceRatio + rst);
  }
}
