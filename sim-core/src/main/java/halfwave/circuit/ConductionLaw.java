package halfwave.circuit;

/**
 * A two-terminal law of current against voltage: strictly increasing through the origin, finite and
 * continuous for every finite voltage. Passive by construction, since current and voltage never
 * differ in sign.
 */
public interface ConductionLaw {

  /**
   * Current from the positive to the negative terminal.
   *
   * @param volts positive minus negative terminal (V); finite
   * @return current (A), with the sign of the voltage
   */
  double currentAmps(double volts);

  /**
   * Slope dI/dV.
   *
   * @param volts positive minus negative terminal (V); finite
   * @return slope (S), above zero
   */
  double differentialSiemens(double volts);

  /**
   * Current when the law stands in series with a source: solves {@code I = law(emf − I·R)}.
   *
   * <p>Newton on the voltage, kept inside a shrinking bracket, because undamped Newton cycles on a
   * law that saturates; the bracket is halved where a step has not halved the excess, because on a
   * law that bends both ways even a bracketed Newton can go to and fro between two places.
   *
   * @param emfVolts open-circuit voltage (V); finite
   * @param seriesOhms series resistance R (Ω); zero or above, finite
   * @return current (A), with the sign of the source
   */
  default double currentInSeriesAmps(double emfVolts, double seriesOhms) {
    if (emfVolts == 0) {
      return 0;
    }
    if (seriesOhms == 0) {
      return currentAmps(emfVolts);
    }
    double low = Math.min(0, emfVolts);
    double high = Math.max(0, emfVolts);
    double v = 0.5 * emfVolts;
    double before = Double.POSITIVE_INFINITY;
    for (int k = 0; k < 200; k++) {
      double excess = v - emfVolts + seriesOhms * currentAmps(v);
      if (excess > 0) {
        high = v;
      } else {
        low = v;
      }
      double step = excess / (1 + seriesOhms * differentialSiemens(v));
      double next = v - step;
      if (!(next > low && next < high && Math.abs(excess) < 0.5 * before)) {
        next = 0.5 * (low + high);
      }
      before = Math.abs(excess);
      if (Math.abs(next - v) <= 1e-12 * Math.abs(emfVolts)) {
        v = next;
        break;
      }
      v = next;
    }
    // of two ways to the current, the one that a rounding of v disturbs less
    return seriesOhms * differentialSiemens(v) > 1 ? (emfVolts - v) / seriesOhms : currentAmps(v);
  }

  /**
   * Slope of {@link #currentInSeriesAmps} with the source voltage, at a solution already found.
   *
   * @param emfVolts open-circuit voltage (V)
   * @param currentAmps the current that flows there (A)
   * @param seriesOhms series resistance (Ω)
   * @return {@code 1 / (R + 1/(dI/dV))} (S), above zero
   */
  default double seriesSlopeSiemens(double emfVolts, double currentAmps, double seriesOhms) {
    double siemens = differentialSiemens(emfVolts - currentAmps * seriesOhms);
    return siemens / (1 + siemens * seriesOhms);
  }
}
