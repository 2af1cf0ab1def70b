package halfwave.flame;

import static halfwave.quantity.Constants.ELEMENTARY_CHARGE_COULOMBS;
import static halfwave.quantity.Constants.VACUUM_PERMITTIVITY_FARADS_PER_METER;

import halfwave.quantity.Guard;
import org.apache.commons.math3.util.FastMath;

/**
 * Cylinder immersed in a uniform ion source: every pair made inside the sheath is collected.
 *
 * <p>{@code I/L = π·e·q·(r_s² − a²)}, {@code V = ½·√(e·q/(ε₀·μ))·[r_s²·ln(r_s/a) − (r_s² − a²)/2]}.
 * Closed form; a one-dimensional drift-diffusion-Poisson solution gives 3 to 20 % more, most at low
 * voltage, where diffusion helps [calc].
 *
 * @param sourcePerCubicMeterSecond q (1/m³s); above zero
 * @param mobilitySquareMetersPerVoltSecond ion mobility μ (m²/Vs); above zero
 * @param radiusMeters a (m); above zero
 * @param lengthMeters L (m); above zero
 */
public record SourceSheath(
    double sourcePerCubicMeterSecond,
    double mobilitySquareMetersPerVoltSecond,
    double radiusMeters,
    double lengthMeters)
    implements ElectrodeLaw {

  /** Checks the domain. */
  public SourceSheath {
    Guard.positive("sourcePerCubicMeterSecond", sourcePerCubicMeterSecond);
    Guard.positive("mobilitySquareMetersPerVoltSecond", mobilitySquareMetersPerVoltSecond);
    Guard.positive("radiusMeters", radiusMeters);
    Guard.positive("lengthMeters", lengthMeters);
  }

  @Override
  public double currentAmps(double volts) {
    double x = sheathRadiusMeters(volts) - radiusMeters;
    double eq = ELEMENTARY_CHARGE_COULOMBS * sourcePerCubicMeterSecond;
    return Math.PI * eq * x * (x + 2 * radiusMeters) * lengthMeters;
  }

  /** Edge of the sheath r_s at a voltage (m). */
  public double sheathRadiusMeters(double volts) {
    return SheathEdge.radiusMeters(this::voltsAt, radiusMeters, ElectrodeLaw.checked(volts));
  }

  private double voltsAt(double rs) {
    double a = radiusMeters;
    double x = (rs - a) / a;
    double field =
        Math.sqrt(
            ELEMENTARY_CHARGE_COULOMBS
                * sourcePerCubicMeterSecond
                / (VACUUM_PERMITTIVITY_FARADS_PER_METER * mobilitySquareMetersPerVoltSecond));
    // for a thin sheath the bracket is the small difference x² + x³/3 − x⁴/12 of large numbers
    double bracket =
        x < 1e-3
            ? x * x * (1 + x / 3 - x * x / 12)
            : (1 + x) * (1 + x) * FastMath.log1p(x) - x * (2 + x) / 2;
    return 0.5 * field * a * a * bracket;
  }

  /**
   * Planar limit, {@code j = √(2V)·(e·q)^(3/4)·(ε₀·μ)^(1/4)} per electrode area.
   *
   * @return current density (A/m²)
   */
  public static double planarAmpsPerSquareMeter(
      double sourcePerCubicMeterSecond, double mobilitySquareMetersPerVoltSecond, double volts) {
    double eq = ELEMENTARY_CHARGE_COULOMBS * sourcePerCubicMeterSecond;
    double em = VACUUM_PERMITTIVITY_FARADS_PER_METER * mobilitySquareMetersPerVoltSecond;
    double v = ElectrodeLaw.checked(volts);
    return Math.sqrt(2 * v) * FastMath.pow(eq, 0.75) * FastMath.pow(em, 0.25);
  }
}
