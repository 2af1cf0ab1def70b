package halfwave.flame;

import static halfwave.quantity.Constants.VACUUM_PERMITTIVITY_FARADS_PER_METER;

import halfwave.quantity.Guard;
import org.apache.commons.math3.util.FastMath;

/** Positive ions in flame gas at 1 atm: how they move and how they vanish. */
public final class IonGas {

  /** Diffusion coefficient of the ambipolar pair near a sheet, D_a (m²/s) [calc]. */
  public static final double AMBIPOLAR_SQUARE_METERS_PER_SECOND = 7e-4;

  /** Space-charge factor of a plane gap, {@code (9/8)·ε₀} (F/m). Mott and Gurney's law. */
  static final double SPACE_CHARGE_FARADS_PER_METER =
      9.0 / 8 * VACUUM_PERMITTIVITY_FARADS_PER_METER;

  private IonGas() {}

  /**
   * Ion mobility {@code μ = 2.0e-3·(T/2000)^1.07} [calc].
   *
   * @param kelvin gas temperature T (K); above zero
   * @return mobility (m²/Vs)
   */
  public static double mobilitySquareMetersPerVoltSecond(double kelvin) {
    return 2.0e-3 * FastMath.pow(Guard.positive("kelvin", kelvin) / 2000, 1.07);
  }

  /**
   * Recombination of H₃O⁺ with electrons, {@code α = 0.0132·T^-1.37 cm³/s}, measured from 1820 to
   * 2400 K [seen: Guo and Goodings, Chem. Phys. Lett. 329 (2000) 393].
   *
   * @param kelvin gas temperature T (K); above zero
   * @return coefficient (m³/s)
   */
  public static double recombinationCubicMetersPerSecond(double kelvin) {
    return 1.32e-8 * FastMath.pow(Guard.positive("kelvin", kelvin), -1.37);
  }

  /**
   * Ion density downstream of a sheet, {@code n(x) = 1/[1/n_pk + α·x/(u + 6·D_a/x)]}; within 0.70
   * to 1.85 of the full computation over all rows of the table [calc].
   *
   * @param peakIonsPerCubicMeter n_pk at the sheet (1/m³); zero gives zero
   * @param recombinationCubicMetersPerSecond α (m³/s)
   * @param driftMetersPerSecond u, 0.93 of the burnt gas's speed (m/s)
   * @param meters x, normal distance (m); zero or above
   * @return n (1/m³)
   */
  public static double downstreamPerCubicMeter(
      double peakIonsPerCubicMeter,
      double recombinationCubicMetersPerSecond,
      double driftMetersPerSecond,
      double meters) {
    double x = meters;
    double loss =
        recombinationCubicMetersPerSecond
            * x
            * x
            / (driftMetersPerSecond * x + 6 * AMBIPOLAR_SQUARE_METERS_PER_SECOND);
    return peakIonsPerCubicMeter / (1 + peakIonsPerCubicMeter * loss);
  }
}
