package halfwave.flame;

import static halfwave.quantity.Constants.ELEMENTARY_CHARGE_COULOMBS;
import static halfwave.quantity.Constants.VACUUM_PERMITTIVITY_FARADS_PER_METER;

import halfwave.quantity.Guard;

/**
 * Cylinder in a uniform ion source and a flow of ions at once; contains {@link SourceSheath} and
 * {@link ThickSheath} as limits, without a switch.
 *
 * <p>With {@code A = e·q/(4·ε₀·μ)}, {@code B = 2·e·n·U·r_s/(2π·ε₀·μ)}: {@code V = ∫ from a to r_s
 * of √(A·(r_s² − r²)² + B·(r_s² − r²))/r dr}, {@code I/L = π·e·q·(r_s² − a²) + 2·e·n·U·r_s}. Closed
 * form up to the integral.
 *
 * @param sourcePerCubicMeterSecond q (1/m³s); zero or above
 * @param ionsPerCubicMeter n (1/m³); zero or above, not zero together with q
 * @param flowMetersPerSecond U (m/s); above zero
 * @param mobilitySquareMetersPerVoltSecond ion mobility μ (m²/Vs); above zero
 * @param radiusMeters a (m); above zero
 * @param lengthMeters L (m); above zero
 */
public record FlowingSourceSheath(
    double sourcePerCubicMeterSecond,
    double ionsPerCubicMeter,
    double flowMetersPerSecond,
    double mobilitySquareMetersPerVoltSecond,
    double radiusMeters,
    double lengthMeters)
    implements ElectrodeLaw {

  /** Checks the domain. */
  public FlowingSourceSheath {
    Guard.notNegative("sourcePerCubicMeterSecond", sourcePerCubicMeterSecond);
    Guard.notNegative("ionsPerCubicMeter", ionsPerCubicMeter);
    Guard.positive("ionsPerCubicMeter", sourcePerCubicMeterSecond + ionsPerCubicMeter);
    Guard.positive("flowMetersPerSecond", flowMetersPerSecond);
    Guard.positive("mobilitySquareMetersPerVoltSecond", mobilitySquareMetersPerVoltSecond);
    Guard.positive("radiusMeters", radiusMeters);
    Guard.positive("lengthMeters", lengthMeters);
  }

  @Override
  public double currentAmps(double volts) {
    double rs = sheathRadiusMeters(volts);
    double x = rs - radiusMeters;
    double source =
        Math.PI
            * ELEMENTARY_CHARGE_COULOMBS
            * sourcePerCubicMeterSecond
            * x
            * (x + 2 * radiusMeters);
    return (source + flow() * rs * ThickSheath.startRatio(volts)) * lengthMeters;
  }

  /** Edge of the sheath r_s at a voltage (m). */
  public double sheathRadiusMeters(double volts) {
    return SheathEdge.radiusMeters(this::voltsAt, radiusMeters, ElectrodeLaw.checked(volts));
  }

  private double flow() {
    return 2 * ELEMENTARY_CHARGE_COULOMBS * ionsPerCubicMeter * flowMetersPerSecond;
  }

  private double voltsAt(double rs) {
    double em = VACUUM_PERMITTIVITY_FARADS_PER_METER * mobilitySquareMetersPerVoltSecond;
    double capitalA = ELEMENTARY_CHARGE_COULOMBS * sourcePerCubicMeterSecond / (4 * em);
    double capitalB = flow() * rs / (2 * Math.PI * em);
    return new SheathShape(rs / radiusMeters).volts(capitalA, capitalB, rs);
  }
}
