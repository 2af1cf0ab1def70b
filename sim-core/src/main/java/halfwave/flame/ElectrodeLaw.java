package halfwave.flame;

import halfwave.quantity.Guard;

/**
 * What one piece of electrode passes at a voltage across its boundary layer: one mechanism, uniform
 * conditions. Every law is zero at zero, never falls, and is finite for every finite voltage.
 *
 * <p>{@link RodCollection} and {@link BurnerCollection} integrate the same equations along the real
 * electrodes; these records are the equations one at a time, for checking and for showing.
 */
public sealed interface ElectrodeLaw
    permits SourceSheath,
        ThickSheath,
        ThinSheath,
        BurntGasSheath,
        FlowingSourceSheath,
        GapLaw,
        OutsideLaw,
        ElectronContact {

  /**
   * Current collected.
   *
   * @param volts voltage across the layer, in the direction that collects (V); zero or above
   * @return current (A), zero or above
   * @throws IllegalArgumentException if {@code volts} is NaN, infinite or negative
   */
  double currentAmps(double volts);

  /** Refuses NaN, infinity and negative voltages. */
  static double checked(double volts) {
    return Guard.notNegative("volts", volts);
  }
}
