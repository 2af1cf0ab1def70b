package halfwave.circuit;

import halfwave.quantity.Guard;

/**
 * The lumped flame path: each half-cycle limited by the electrode that is the cathode, which
 * collects ions as the square root of its sheath voltage, with one ohmic column in series.
 *
 * <p>{@code |v| = |I|·R + (I/k)²}, k the burner's coefficient for v &gt; 0 (the burner is the
 * cathode), the rod's for v &lt; 0. The inverse is closed: {@code I = 2v / (R + √(R² + 4|v|/k²))}.
 *
 * @param rodIonAmpsPerRootVolt coefficient with the rod as cathode (A/√V); above zero
 * @param burnerIonAmpsPerRootVolt coefficient with the burner as cathode (A/√V); above zero
 * @param columnOhms column resistance R (Ω); zero or above
 */
public record SquareRootLaw(
    double rodIonAmpsPerRootVolt, double burnerIonAmpsPerRootVolt, double columnOhms)
    implements ConductionLaw {

  /** Checks the domain. */
  public SquareRootLaw {
    Guard.positive("rodIonAmpsPerRootVolt", rodIonAmpsPerRootVolt);
    Guard.positive("burnerIonAmpsPerRootVolt", burnerIonAmpsPerRootVolt);
    Guard.notNegative("columnOhms", columnOhms);
  }

  @Override
  public double currentAmps(double volts) {
    return currentInSeriesAmps(volts, 0);
  }

  @Override
  public double differentialSiemens(double volts) {
    double k = volts > 0 ? burnerIonAmpsPerRootVolt : rodIonAmpsPerRootVolt;
    double i = Math.abs(currentAmps(volts));
    double ohms = columnOhms + 2 * i / (k * k);
    // at v = 0 without a column the slope is infinite; a large finite one serves every use of it
    return 1 / Math.max(ohms, 1e-3);
  }

  @Override
  public double currentInSeriesAmps(double emfVolts, double seriesOhms) {
    double k = emfVolts > 0 ? burnerIonAmpsPerRootVolt : rodIonAmpsPerRootVolt;
    double r = columnOhms + seriesOhms;
    double root = Math.sqrt(r * r + 4 * Math.abs(emfVolts) / (k * k));
    return root == 0 ? 0 : 2 * emfVolts / (r + root);
  }

  @Override
  public double seriesSlopeSiemens(double emfVolts, double currentAmps, double seriesOhms) {
    double k = emfVolts > 0 ? burnerIonAmpsPerRootVolt : rodIonAmpsPerRootVolt;
    return 1 / Math.max(columnOhms + seriesOhms + 2 * Math.abs(currentAmps) / (k * k), 1e-3);
  }
}
