package halfwave.flame;

import static halfwave.quantity.Constants.STANDARD_GRAVITY_METERS_PER_SECOND2;

import org.apache.commons.math3.util.FastMath;

/**
 * Where the two sheets of flame stand and how strong they are: the premixed inner cone and the
 * outer diffusion mantle around it.
 *
 * @param mixture what feeds the flame
 * @param state what it looks like; when it does not burn the ion sources are zero
 * @param portRadiusMeters R (m)
 * @param coneMetersPerSecond S_eff, burning velocity of the wrinkled cone (m/s)
 * @param coneHeightMeters h (m); zero when the cone sits on the port
 * @param stretchRatio χ, rim gradient of speed over the critical one (1)
 * @param gapMeters g, clear distance from metal to flame at the rim (m)
 * @param coneAmpsPerSquareMeter ion source of the cone, with k_ion (A/m²)
 * @param mantleAmpsPerSquareMeter ion source of the mantle, with k_ion (A/m²)
 * @param rootAmpsPerSquareMeter ion source of the mantle at the rim, with k_ion (A/m²)
 * @param mantlePeakIonsPerCubicMeter n_pk of the mantle (1/m³)
 */
public record FlameSheets(
    Mixture mixture,
    FlameState state,
    double portRadiusMeters,
    double coneMetersPerSecond,
    double coneHeightMeters,
    double stretchRatio,
    double gapMeters,
    double coneAmpsPerSquareMeter,
    double mantleAmpsPerSquareMeter,
    double rootAmpsPerSquareMeter,
    double mantlePeakIonsPerCubicMeter) {

  /** Growth of the mantle's radius with z (1) [practice]. */
  static final double MANTLE_SPREAD_RATIO = 0.12;

  private static final double LIFTED_METERS = 3e-3;
  private static final double BLOWN_OFF_METERS = 10e-3;
  private static final double LAZY_PLACE_METERS = 15e-3;
  private static final double LAZY_RISE_METERS = 3e-3;
  private static final double LEAN_RATIO = 1.35;
  private static final double RICH_RATIO = 2.5;
  private static final double KINEMATIC_VISCOSITY = 1.6e-5;
  private static final double REFERENCE_STRAIN = 100;
  private static final double MANTLE_PEAK_IONS = 4e16;
  private static final double MANTLE_FADES_BELOW = 0.02;

  /**
   * The flame of a mixture on a burner.
   *
   * <p>Stand-off: blow-off comes at a critical gradient of speed at the rim [seen: Edmondson and
   * Heap]; {@code G_w = f_ret·max(8, 0.0396·Re^0.75)·U_m/D}, {@code G_b = 1500·X^4.5}, flashback
   * below {@code G_f = 400·exp(−((φ − 1)/0.2)²)} [memory, factor 2], {@code g = g₀/(1 − χ)}.
   *
   * @param mixture what leaves the port
   * @param burner the metal
   * @param calibration free numbers
   * @return the sheets
   */
  public static FlameSheets of(Mixture mixture, BurnerDesign burner, FlameCalibration calibration) {
    double u = mixture.portMetersPerSecond();
    double d = burner.portDiameterMeters();
    double phi = mixture.equivalenceRatio();
    double reynolds = u * d / KINEMATIC_VISCOSITY;
    double profile = Math.max(8, 0.0396 * FastMath.pow(reynolds, 0.75));
    double rimGradient = burner.holder().retentionRatio() * profile * u / d;
    double critical = 1500 * FastMath.pow(mixture.fuelFractionRatio(), 4.5);
    double off = (phi - 1) / 0.2;
    double flashback = 400 * FastMath.exp(-off * off);
    double chi = rimGradient / critical;
    double gap = chi < 1 ? Math.min(1, calibration.restGapMeters() / (1 - chi)) : BLOWN_OFF_METERS;

    FlameState state = state(mixture, chi, gap, rimGradient < flashback);
    double k = state.burning() ? calibration.ionMultiplierRatio() : 0;
    FlameRow cone = mixture.fuel().table().at(phi);
    double counterflow = mixture.fuel().counterflowAmpsPerSquareMeter(phi);
    double mantle = k * counterflow * strainRatio(u / d);
    double burning =
        burner.holder().wrinklingRatio() * Math.max(cone.burningMetersPerSecond(), 0.10);
    return new FlameSheets(
        mixture,
        state,
        burner.portRadiusMeters(),
        burning,
        coneHeight(burner.portRadiusMeters(), u, burning),
        chi,
        gap,
        k * cone.saturationAmpsPerSquareMeter(),
        mantle,
        calibration.rootMultiplierRatio() * mantle,
        state.burning() ? MANTLE_PEAK_IONS * Math.min(1, counterflow / MANTLE_FADES_BELOW) : 0);
  }

  /** A healthy flame with the model's defaults. */
  public static FlameSheets healthy(Fuel fuel, BurnerDesign burner) {
    return of(Mixture.healthy(fuel, burner), burner, FlameCalibration.DEFAULT);
  }

  /**
   * Strain of the mantle against that of the computed counterflow flames, {@code ((U_m/D)/(100
   * 1/s))^1.5} within 0.3 to 3 [calc; the reference strain is practice].
   *
   * @param perSecond U_m/D (1/s)
   * @return multiplier of the mantle's ion source (1)
   */
  static double strainRatio(double perSecond) {
    double x = perSecond / REFERENCE_STRAIN;
    return Math.max(0.3, Math.min(3, x * Math.sqrt(x)));
  }

  private static FlameState state(Mixture mixture, double chi, double gap, boolean runsBack) {
    if (!(mixture.gasCubicMetersPerSecond() > 0)) {
      return FlameState.OUT;
    }
    if (!(chi < 1 && gap <= BLOWN_OFF_METERS)) {
      return FlameState.BLOWN_OFF;
    }
    if (runsBack) {
      return FlameState.FLASHBACK;
    }
    if (gap > LIFTED_METERS) {
      return FlameState.LIFTED;
    }
    if (rise(LAZY_PLACE_METERS, mixture.portMetersPerSecond()) > LAZY_RISE_METERS) {
      return FlameState.LAZY;
    }
    if (mixture.equivalenceRatio() < LEAN_RATIO) {
      return FlameState.LEAN;
    }
    return mixture.equivalenceRatio() > RICH_RATIO ? FlameState.RICH : FlameState.HEALTHY;
  }

  private static double coneHeight(double radius, double speed, double burning) {
    double x = speed / burning;
    return x > 1 ? radius * Math.sqrt(x * x - 1) : 0;
  }

  private static double rise(double z, double speed) {
    double t = z / speed;
    return 0.15 * 5 * STANDARD_GRAVITY_METERS_PER_SECOND2 * t * t;
  }

  /** The same flame at another stand-off, to see what the gap alone does (m). */
  public FlameSheets withGap(double gapMeters) {
    return new FlameSheets(
        mixture,
        state,
        portRadiusMeters,
        coneMetersPerSecond,
        coneHeightMeters,
        stretchRatio,
        gapMeters,
        coneAmpsPerSquareMeter,
        mantleAmpsPerSquareMeter,
        rootAmpsPerSquareMeter,
        mantlePeakIonsPerCubicMeter);
  }

  /** Half the angle at the cone's tip, {@code sin θ = S_eff/U_m} (rad). */
  public double coneHalfAngleRadians() {
    double x = coneMetersPerSecond / mixture.portMetersPerSecond();
    return x < 1 ? FastMath.asin(x) : Math.PI / 2;
  }

  /** Radius of the inner cone, {@code R(1 − z/h)}, zero beyond its tip (m). */
  public double coneRadiusMeters(double zMeters) {
    return zMeters < coneHeightMeters ? portRadiusMeters * (1 - zMeters / coneHeightMeters) : 0;
  }

  /** Radius of the mantle, {@code R + g + 0.12·z} (m) [practice]. */
  public double mantleRadiusMeters(double zMeters) {
    return portRadiusMeters + gapMeters + MANTLE_SPREAD_RATIO * Math.max(0, zMeters);
  }

  /**
   * Rise of the flame's axis by buoyancy, {@code 0.15·5·g·(z/U_m)²} (m): 30 % of a free hot parcel
   * [practice].
   */
  public double axisRiseMeters(double zMeters) {
    double u = mixture.portMetersPerSecond();
    return u > 0 ? rise(Math.max(0, zMeters), u) : 0;
  }

  /** Full width at half height of the wrinkled sheets, {@code 1.2 mm + 0.03·z} (m) [practice]. */
  public double brushWidthMeters(double zMeters) {
    return 1.2e-3 + 0.03 * Math.max(0, zMeters);
  }

  /**
   * Undisturbed gas speed at an electrode in the flame, U: 3 m/s at the default burner, in
   * proportion to U_m (m/s) [practice].
   */
  public double electrodeMetersPerSecond() {
    return 1.2 * mixture.portMetersPerSecond();
  }
}
