package halfwave.flame;

import static halfwave.quantity.Constants.ELEMENTARY_CHARGE_COULOMBS;
import static halfwave.quantity.Constants.VACUUM_PERMITTIVITY_FARADS_PER_METER;

import halfwave.quantity.Guard;
import org.apache.commons.math3.util.FastMath;

/**
 * Cylinder in flowing burnt gas without a source, sheath thin against the rod.
 *
 * <p>{@code I/L = 5.264·(μ·ε₀)^(1/4)·(n·e·U)^(3/4)·V^(1/2)·a^(1/4)}. Closed form; the sphere's
 * coefficient 12.13 is also seen in a propane/air flame probe study (manuscript.isc.ac, inventory
 * 1421607).
 *
 * @param ionsPerCubicMeter n (1/m³); above zero
 * @param flowMetersPerSecond U, undisturbed (m/s); above zero
 * @param mobilitySquareMetersPerVoltSecond ion mobility μ (m²/Vs); above zero
 * @param radiusMeters a (m); above zero
 * @param lengthMeters L (m); above zero
 */
public record ThinSheath(
    double ionsPerCubicMeter,
    double flowMetersPerSecond,
    double mobilitySquareMetersPerVoltSecond,
    double radiusMeters,
    double lengthMeters)
    implements ElectrodeLaw {

  /** Coefficient of the cylinder (1). */
  public static final double CYLINDER_RATIO = 5.264;

  /** Coefficient of the sphere (1). */
  public static final double SPHERE_RATIO = 12.13;

  /** Checks the domain. */
  public ThinSheath {
    Guard.positive("ionsPerCubicMeter", ionsPerCubicMeter);
    Guard.positive("flowMetersPerSecond", flowMetersPerSecond);
    Guard.positive("mobilitySquareMetersPerVoltSecond", mobilitySquareMetersPerVoltSecond);
    Guard.positive("radiusMeters", radiusMeters);
    Guard.positive("lengthMeters", lengthMeters);
  }

  @Override
  public double currentAmps(double volts) {
    double v = ElectrodeLaw.checked(volts);
    return CYLINDER_RATIO * common(v) * FastMath.pow(radiusMeters, 0.25) * lengthMeters;
  }

  /** What a sphere of radius a collects (A). */
  public double sphereAmps(double volts) {
    double v = ElectrodeLaw.checked(volts);
    return SPHERE_RATIO * common(v) * FastMath.pow(radiusMeters, 1.25);
  }

  private double common(double volts) {
    double em = VACUUM_PERMITTIVITY_FARADS_PER_METER * mobilitySquareMetersPerVoltSecond;
    double neu = ionsPerCubicMeter * ELEMENTARY_CHARGE_COULOMBS * flowMetersPerSecond;
    return FastMath.pow(em, 0.25) * FastMath.pow(neu, 0.75) * Math.sqrt(volts);
  }
}
