package halfwave.flame;

import static halfwave.quantity.Constants.ELEMENTARY_CHARGE_COULOMBS;

import halfwave.quantity.Guard;
import org.apache.commons.math3.util.FastMath;

/**
 * The electrode as anode: electrons come nearly freely, as far as there is plasma to touch. In
 * series only in the half-cycle in which the electrode is positive.
 *
 * <p>{@code I = G·V}, {@code G = 2π·e·n·μ_e·L/ln 8} (outer radius 8a [practice]): tens of kilohms
 * in the flame, many megohms as the rod leaves it.
 *
 * @param contactSiemens G (S); zero or above
 */
public record ElectronContact(double contactSiemens) implements ElectrodeLaw {

  private static final double LOG_OF_OUTER_RADIUS = FastMath.log(8);

  /** Checks the domain. */
  public ElectronContact {
    Guard.notNegative("contactSiemens", contactSiemens);
  }

  /**
   * Contact of a piece of rod.
   *
   * @param ionsPerCubicMeter plasma density n (1/m³); zero or above
   * @param electronMobilitySquareMetersPerVoltSecond μ_e (m²/Vs); above zero
   * @param lengthMeters L (m); above zero
   * @return its contact
   */
  public static ElectronContact of(
      double ionsPerCubicMeter,
      double electronMobilitySquareMetersPerVoltSecond,
      double lengthMeters) {
    return new ElectronContact(
        siemensPerDensityMeter(electronMobilitySquareMetersPerVoltSecond)
            * ionsPerCubicMeter
            * lengthMeters);
  }

  /** G over n·L (S·m²). */
  static double siemensPerDensityMeter(double electronMobility) {
    return 2 * Math.PI * ELEMENTARY_CHARGE_COULOMBS * electronMobility / LOG_OF_OUTER_RADIUS;
  }

  @Override
  public double currentAmps(double volts) {
    return contactSiemens * ElectrodeLaw.checked(volts);
  }
}
