package halfwave.flame;

import static halfwave.quantity.Constants.VACUUM_PERMITTIVITY_FARADS_PER_METER;

import halfwave.quantity.Guard;

/**
 * A piece of rod in clear air outside the mantle, collecting across the air gap.
 *
 * <p>{@code I/L = π·ε₀·μ·V²/[Rc·arccosh(Rc/a) − √(Rc² − a²)]²}, {@code Rc = a + d}: half the
 * circumference of a cylinder of space charge; no more than the sheet supplies, {@code 2·Rc·j}
 * [practice]. The same for both signs, because in cold air electrons attach to oxygen within a
 * fraction of a millimetre [seen: Pack and Phelps 1966].
 *
 * @param clearMeters d, clear distance from rod surface to flame (m); above zero
 * @param supplyAmpsPerSquareMeter j of the mantle, with k_ion (A/m²); zero or above
 * @param mobilitySquareMetersPerVoltSecond ion mobility μ in the air gap (m²/Vs); above zero
 * @param radiusMeters a (m); above zero
 * @param lengthMeters L (m); above zero
 */
public record OutsideLaw(
    double clearMeters,
    double supplyAmpsPerSquareMeter,
    double mobilitySquareMetersPerVoltSecond,
    double radiusMeters,
    double lengthMeters)
    implements ElectrodeLaw {

  /** Ion mobility in the air outside the flame (m²/Vs) [calc]. */
  public static final double AIR_SQUARE_METERS_PER_VOLT_SECOND = 5e-4;

  /** Least clear distance the law is used for (m) [practice]. */
  public static final double LEAST_CLEAR_METERS = 0.2e-3;

  /** Checks the domain. */
  public OutsideLaw {
    Guard.positive("clearMeters", clearMeters);
    Guard.notNegative("supplyAmpsPerSquareMeter", supplyAmpsPerSquareMeter);
    Guard.positive("mobilitySquareMetersPerVoltSecond", mobilitySquareMetersPerVoltSecond);
    Guard.positive("radiusMeters", radiusMeters);
    Guard.positive("lengthMeters", lengthMeters);
  }

  @Override
  public double currentAmps(double volts) {
    double v = ElectrodeLaw.checked(volts);
    return Math.min(coefficient() * v * v, supplyAmps());
  }

  /** Unlimited current over V² (A/V²). */
  double coefficient() {
    double x = ThickSheath.spaceChargeMeters(radiusMeters, radiusMeters + clearMeters);
    return Math.PI
        * VACUUM_PERMITTIVITY_FARADS_PER_METER
        * mobilitySquareMetersPerVoltSecond
        * lengthMeters
        / (x * x);
  }

  /** Most the sheet supplies to this piece, 2·Rc·j·L (A). */
  public double supplyAmps() {
    return 2 * (radiusMeters + clearMeters) * supplyAmpsPerSquareMeter * lengthMeters;
  }
}
