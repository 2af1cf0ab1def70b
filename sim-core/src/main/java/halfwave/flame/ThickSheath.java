package halfwave.flame;

import static halfwave.quantity.Constants.ELEMENTARY_CHARGE_COULOMBS;
import static halfwave.quantity.Constants.VACUUM_PERMITTIVITY_FARADS_PER_METER;

import halfwave.quantity.Guard;
import org.apache.commons.math3.util.FastMath;

/**
 * Cylinder in flowing burnt gas without a source, sheath thicker than the rod: the sheath catches
 * what flows onto its frontal area.
 *
 * <p>{@code I/L = 2·e·n·U·r_s}, {@code V = √(I/(2π·ε₀·μ·L))·[r_s·arccosh(r_s/a) − √(r_s² − a²)]}.
 * Closed form.
 *
 * @param ionsPerCubicMeter n (1/m³); above zero
 * @param flowMetersPerSecond U, undisturbed (m/s); above zero
 * @param mobilitySquareMetersPerVoltSecond ion mobility μ (m²/Vs); above zero
 * @param radiusMeters a (m); above zero
 * @param lengthMeters L (m); above zero
 */
public record ThickSheath(
    double ionsPerCubicMeter,
    double flowMetersPerSecond,
    double mobilitySquareMetersPerVoltSecond,
    double radiusMeters,
    double lengthMeters)
    implements ElectrodeLaw {

  private static final double START_VOLTS = 0.3;

  /** Checks the domain. */
  public ThickSheath {
    Guard.positive("ionsPerCubicMeter", ionsPerCubicMeter);
    Guard.positive("flowMetersPerSecond", flowMetersPerSecond);
    Guard.positive("mobilitySquareMetersPerVoltSecond", mobilitySquareMetersPerVoltSecond);
    Guard.positive("radiusMeters", radiusMeters);
    Guard.positive("lengthMeters", lengthMeters);
  }

  @Override
  public double currentAmps(double volts) {
    return amps(sheathRadiusMeters(volts)) * startRatio(volts);
  }

  /**
   * Share of the flow's current that a small voltage collects, {@code min(1, √(V/0.3 V))}. A sheath
   * without voltage would still catch what flows onto the bare rod, 2·e·n·U·a; that is less than a
   * volt's worth of plasma drop, about which the model says nothing, and a passive law needs zero.
   */
  static double startRatio(double volts) {
    return volts < START_VOLTS ? Math.sqrt(volts / START_VOLTS) : 1;
  }

  private double amps(double rs) {
    return 2
        * ELEMENTARY_CHARGE_COULOMBS
        * ionsPerCubicMeter
        * flowMetersPerSecond
        * rs
        * lengthMeters;
  }

  /** Edge of the sheath r_s at a voltage (m). */
  public double sheathRadiusMeters(double volts) {
    return SheathEdge.radiusMeters(this::voltsAt, radiusMeters, ElectrodeLaw.checked(volts));
  }

  private double voltsAt(double rs) {
    double field =
        Math.sqrt(
            amps(rs)
                / lengthMeters
                / (2
                    * Math.PI
                    * VACUUM_PERMITTIVITY_FARADS_PER_METER
                    * mobilitySquareMetersPerVoltSecond));
    return field * spaceChargeMeters(radiusMeters, rs);
  }

  /**
   * {@code R·arccosh(R/a) − √(R² − a²)}, of which the voltage of a cylinder of space charge with no
   * field at its edge R is made (m).
   */
  static double spaceChargeMeters(double a, double edge) {
    double x = edge / a;
    double root = Math.sqrt((x - 1) * (x + 1));
    // near the wall the terms cancel: ξ = arccosh x, x·ξ − sinh ξ = ξ³/3 + ξ⁵/30
    if (root < 0.02) {
      double t = root - root * root * root / 6;
      return a * t * t * t * (1.0 / 3 + t * t / 30);
    }
    return a * (x * FastMath.log(x + root) - root);
  }
}
