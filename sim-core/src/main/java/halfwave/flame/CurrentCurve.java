package halfwave.flame;

import halfwave.quantity.Guard;

/**
 * One side of a conduction law, prepared for speed: a smooth monotone table of current against the
 * root of the voltage, a conductance parallel to it and a resistance in series with both.
 *
 * <p>{@code I(s) = T(s) + G·s²}, {@code V(s) = s² + R·I(s)}, s the root of the voltage without the
 * series drop. T is a monotone cubic (Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980) 238, with
 * Butland's harmonic slopes) through {@value #INTERVALS} intervals uniform in s from 0 to 300 V; a
 * square-root law is a straight line in s and is met exactly. Beyond 300 V T goes on with its last
 * slope.
 */
public final class CurrentCurve {

  /** Number of intervals of the table. */
  public static final int INTERVALS = 32;

  /** Largest voltage of the table (V). */
  public static final double LARGEST_VOLTS = 300;

  /** Conductance of the air, so that every law rises strictly (S) [practice]. */
  static final double AIR_SIEMENS = 1e-15;

  private static final double STEP = Math.sqrt(LARGEST_VOLTS) / INTERVALS;
  private static final double PER_STEP = 1 / STEP;
  private static final int TYPICAL = INTERVALS / 2;
  private static final double CLOSE = 3e-6;

  /** Per interval the coefficients of T in the share of the interval; last one straight. */
  private final double[] cubic;

  private final double[] tableAmps;
  private final double parallelSiemens;
  private final double seriesOhms;
  private final double typicalAmpsPerRootVolt;

  private CurrentCurve(double[] amps, double[] cubic, double parallelSiemens, double seriesOhms) {
    this.tableAmps = amps;
    this.cubic = cubic;
    this.parallelSiemens = parallelSiemens;
    this.seriesOhms = seriesOhms;
    double s = TYPICAL * STEP;
    this.typicalAmpsPerRootVolt = amps[TYPICAL] / s + parallelSiemens * s;
  }

  /**
   * Makes a curve.
   *
   * @param amps T at {@link #tableVolts}, from zero at zero, never falling (A)
   * @param parallelSiemens G (S); zero or above
   * @param seriesOhms R (Ω); zero or above
   * @return the curve
   */
  static CurrentCurve of(double[] amps, double parallelSiemens, double seriesOhms) {
    if (amps.length != INTERVALS + 1 || amps[0] != 0) {
      throw new IllegalArgumentException("a curve needs a zero and " + INTERVALS + " currents");
    }
    for (int k = 0; k < INTERVALS; k++) {
      if (!(amps[k + 1] >= amps[k] && amps[k + 1] < Double.POSITIVE_INFINITY)) {
        throw new IllegalStateException("current falls at " + tableVolts(k + 1) + " V");
      }
    }
    return new CurrentCurve(
        amps.clone(),
        cubic(amps),
        Guard.notNegative("parallelSiemens", parallelSiemens) + AIR_SIEMENS,
        Guard.notNegative("seriesOhms", seriesOhms));
  }

  /** A plain conductance (S). */
  static CurrentCurve ohmic(double siemens) {
    return of(new double[INTERVALS + 1], siemens, 0);
  }

  /** The same with more resistance in series (Ω). */
  public CurrentCurve inSeriesWith(double ohms) {
    return new CurrentCurve(tableAmps, cubic, parallelSiemens, seriesOhms + ohms);
  }

  /** Voltage of knot k of the table, without the series drop (V). */
  static double tableVolts(int k) {
    double s = k * STEP;
    return s * s;
  }

  private static double[] cubic(double[] y) {
    int n = INTERVALS;
    double[] slope = new double[n + 1];
    for (int k = 1; k < n; k++) {
      double left = y[k] - y[k - 1];
      double right = y[k + 1] - y[k];
      slope[k] = left > 0 && right > 0 ? 2 * left * right / (left + right) : 0;
    }
    slope[0] = endSlope(y[1] - y[0], y[2] - y[1]);
    slope[n] = endSlope(y[n] - y[n - 1], y[n - 1] - y[n - 2]);
    double[] c = new double[4 * (n + 1)];
    for (int k = 0; k < n; k++) {
      double rise = y[k + 1] - y[k];
      c[4 * k] = y[k];
      c[4 * k + 1] = slope[k];
      c[4 * k + 2] = 3 * rise - 2 * slope[k] - slope[k + 1];
      c[4 * k + 3] = slope[k] + slope[k + 1] - 2 * rise;
    }
    c[4 * n] = y[n];
    c[4 * n + 1] = slope[n];
    return c;
  }

  private static double endSlope(double near, double next) {
    return Math.max(0, Math.min(1.5 * near - 0.5 * next, 3 * near));
  }

  /**
   * Current (A).
   *
   * @param volts V (V); zero or above, finite
   * @return I (A)
   */
  public double currentAmps(double volts) {
    return currentInSeriesAmps(volts, 0);
  }

  /**
   * Current when a resistance stands in series.
   *
   * @param emfVolts source (V); zero or above, finite
   * @param ohms further series resistance (Ω); zero or above
   * @return I (A)
   */
  public double currentInSeriesAmps(double emfVolts, double ohms) {
    if (!(emfVolts >= 0 && emfVolts < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("volts = " + emfVolts + " is not in 0 .. infinity");
    }
    double r = seriesOhms + ohms;
    return r == 0 ? tableAt(Math.sqrt(emfVolts)) : solvedAmps(emfVolts, r);
  }

  /**
   * Slope dI/dE at a source in series.
   *
   * @param emfVolts source (V); zero or above, finite
   * @param currentAmps the current that flows (A)
   * @param ohms further series resistance (Ω)
   * @return slope (S), above zero
   */
  double seriesSlopeSiemens(double emfVolts, double currentAmps, double ohms) {
    double r = seriesOhms + ohms;
    double s = Math.sqrt(Math.max(emfVolts - currentAmps * r, LEAST_VOLTS));
    double slope = slopeAt(s);
    return slope / (2 * s + r * slope);
  }

  private static final double LEAST_VOLTS = 1e-12;

  /** Slope dI/dV (S), above zero, at V (V). */
  public double differentialSiemens(double volts) {
    return seriesSlopeSiemens(volts, currentAmps(volts), 0);
  }

  /**
   * Solves {@code s² + r·I(s) = emf} by Newton inside a bracket. Convergence is quadratic, so after
   * a step below 3e-6 of s the error is below 1e-10; the last step is applied to the current along
   * its tangent. Where a step has not halved the excess the bracket is halved instead: on a table
   * that bends both ways Newton alone can go to and fro between two places for ever.
   */
  private double solvedAmps(double emf, double r) {
    double low = 0;
    double high = Double.POSITIVE_INFINITY;
    double rk = r * typicalAmpsPerRootVolt;
    double s = emf == 0 ? 0 : 2 * emf / (rk + Math.sqrt(rk * rk + 4 * emf));
    double amps = 0;
    double before = Double.POSITIVE_INFINITY;
    for (int k = 0; k < 100 && s > 0; k++) {
      double place = s * PER_STEP;
      int cell = Math.min((int) place, INTERVALS);
      double x = place - cell;
      int c = 4 * cell;
      double c1 = cubic[c + 1];
      double c2 = cubic[c + 2];
      double c3 = cubic[c + 3];
      double gs = parallelSiemens * s;
      amps = cubic[c] + x * (c1 + x * (c2 + x * c3)) + gs * s;
      double slope = PER_STEP * (c1 + x * (2 * c2 + x * 3 * c3)) + 2 * gs;
      double excess = s * s + r * amps - emf;
      double step = -excess / (2 * s + r * slope);
      if (Math.abs(step) <= CLOSE * s) {
        return amps + slope * step;
      }
      if (excess > 0) {
        high = s;
      } else {
        low = s;
      }
      double next = s + step;
      boolean good = next > low && next < high && Math.abs(excess) < 0.5 * before;
      before = Math.abs(excess);
      s = good ? next : 0.5 * (low + Math.min(high, Math.sqrt(emf)));
    }
    return amps;
  }

  private double tableAt(double s) {
    int cell = Math.min((int) (s * PER_STEP), INTERVALS);
    double x = s * PER_STEP - cell;
    int c = 4 * cell;
    return cubic[c]
        + x * (cubic[c + 1] + x * (cubic[c + 2] + x * cubic[c + 3]))
        + parallelSiemens * s * s;
  }

  private double slopeAt(double s) {
    int cell = Math.min((int) (s * PER_STEP), INTERVALS);
    double x = s * PER_STEP - cell;
    int c = 4 * cell;
    return PER_STEP * (cubic[c + 1] + x * (2 * cubic[c + 2] + x * 3 * cubic[c + 3]))
        + 2 * parallelSiemens * s;
  }

  /**
   * Voltage at which a current flows, by bisection; for showing where the voltage goes.
   *
   * @param amps I (A); zero or above, finite
   * @return V (V)
   */
  public double voltsAt(double amps) {
    Guard.notNegative("amps", amps);
    double low = 0;
    double high = STEP;
    while (tableAt(high) < amps && high < 1e12) {
      low = high;
      high *= 2;
    }
    for (int k = 0; k < 70; k++) {
      double middle = 0.5 * (low + high);
      if (tableAt(middle) < amps) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double s = 0.5 * (low + high);
    return s * s + seriesOhms * amps;
  }

  /** Conductance parallel to the table (S). */
  public double parallelSiemens() {
    return parallelSiemens;
  }

  /** Resistance in series (Ω). */
  public double seriesOhms() {
    return seriesOhms;
  }

  /** Largest current of the table itself (A). */
  double tableEndAmps() {
    return tableAmps[INTERVALS];
  }

  /** Voltages of the knots with the series drop, rising from zero (V); for a table in a netlist. */
  public double[] knotVolts() {
    double[] volts = knotAmps();
    for (int k = 0; k < volts.length; k++) {
      volts[k] = tableVolts(k) + seriesOhms * volts[k];
    }
    return volts;
  }

  /** Currents at {@link #knotVolts} (A). */
  public double[] knotAmps() {
    double[] amps = new double[INTERVALS + 1];
    for (int k = 0; k < amps.length; k++) {
      amps[k] = tableAmps[k] + parallelSiemens * tableVolts(k);
    }
    return amps;
  }
}
