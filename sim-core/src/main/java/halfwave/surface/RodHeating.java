package halfwave.surface;

import static halfwave.quantity.Constants.STEFAN_BOLTZMANN_WATTS_PER_SQUARE_METER_KELVIN4;

import halfwave.quantity.Guard;

/**
 * How a rod warms in the flame and cools out of it, as one lump.
 *
 * <p>{@code dT/dt = 4/(ρ·c·d)·[h·(T_g − T) − ε·σ·(T⁴ − T_w⁴)]}, d the thickness; ρ·c 4.7e6 J/m³K, h
 * 100 W/m²K (cross-flow at 3 m/s), ε 0.8 [memory].
 *
 * @param gasKelvin T_g (K): 1900 in the flame, the walls' out of it; above zero
 * @param wallKelvin T_w the rod radiates to (K): 500; above zero
 * @param thicknessMeters d (m); above zero
 */
public record RodHeating(double gasKelvin, double wallKelvin, double thicknessMeters) {

  /** T_g in the flame (K) [memory]. */
  public static final double FLAME_KELVIN = 1900;

  /** T_w, what the rod sees around it in service (K) [memory]. */
  public static final double WALL_KELVIN = 500;

  private static final double HEAT_JOULES_PER_CUBIC_METER_KELVIN = 4.7e6;
  private static final double TRANSFER_WATTS_PER_SQUARE_METER_KELVIN = 100;
  private static final double EMISSIVITY = 0.8;
  private static final double LONGEST_STEP_SECONDS = 0.25;
  private static final double SETTLED_SECONDS = 1200;

  /** Checks the domain. */
  public RodHeating {
    Guard.positive("gasKelvin", gasKelvin);
    Guard.positive("wallKelvin", wallKelvin);
    Guard.positive("thicknessMeters", thicknessMeters);
  }

  /** A rod in the flame. */
  public static RodHeating inFlame(double thicknessMeters) {
    return new RodHeating(FLAME_KELVIN, WALL_KELVIN, thicknessMeters);
  }

  /** A rod out of the flame, among walls of a temperature (K). */
  public static RodHeating outOfFlame(double wallKelvin, double thicknessMeters) {
    return new RodHeating(wallKelvin, wallKelvin, thicknessMeters);
  }

  /** dT/dt at a rod temperature (K/s). */
  public double kelvinPerSecond(double kelvin) {
    double t4 = kelvin * kelvin * kelvin * kelvin;
    double w4 = wallKelvin * wallKelvin * wallKelvin * wallKelvin;
    double flux =
        TRANSFER_WATTS_PER_SQUARE_METER_KELVIN * (gasKelvin - kelvin)
            - EMISSIVITY * STEFAN_BOLTZMANN_WATTS_PER_SQUARE_METER_KELVIN4 * (t4 - w4);
    return 4 / (HEAT_JOULES_PER_CUBIC_METER_KELVIN * thicknessMeters) * flux;
  }

  /**
   * Temperature after a time, by fourth-order Runge–Kutta in steps of at most 0.25 s for a rod of 3
   * mm, shorter for a thinner one.
   *
   * @param startKelvin temperature at the beginning (K); above zero
   * @param seconds time (s); zero or above; more than 1200 s for a rod of 3 mm counts as for ever
   * @return temperature (K)
   */
  public double kelvinAfter(double startKelvin, double seconds) {
    Guard.positive("startKelvin", startKelvin);
    double scale = thicknessMeters / 3e-3;
    double time = Math.min(Guard.notNegative("seconds", seconds), SETTLED_SECONDS * scale);
    int steps = (int) Math.ceil(time / (LONGEST_STEP_SECONDS * scale));
    double h = time / Math.max(1, steps);
    double t = startKelvin;
    for (int k = 0; k < steps; k++) {
      double k1 = kelvinPerSecond(t);
      double k2 = kelvinPerSecond(t + 0.5 * h * k1);
      double k3 = kelvinPerSecond(t + 0.5 * h * k2);
      double k4 = kelvinPerSecond(t + h * k3);
      t += h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
    }
    return t;
  }

  /** Temperature at the end (K). */
  public double settledKelvin() {
    double low = Math.min(gasKelvin, wallKelvin);
    double high = Math.max(gasKelvin, wallKelvin);
    for (int k = 0; k < 60; k++) {
      double middle = 0.5 * (low + high);
      if (kelvinPerSecond(middle) > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }
}
