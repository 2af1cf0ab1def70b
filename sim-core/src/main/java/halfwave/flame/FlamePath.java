package halfwave.flame;

import halfwave.circuit.ConductionLaw;
import halfwave.quantity.Guard;

/**
 * The flame as the circuit sees it: rod, plasma column and burner in series. The voltage is rod
 * surface minus burner surface, the current positive from rod to burner.
 *
 * <p>{@code v > 0: v = V_burner(I) + I·R_column + V_rod contact(I)}; {@code v < 0: |v| = V_rod(|I|)
 * + |I|·R_column + V_burner contact(|I|)}. Composed once; a contact that is linear at the currents
 * that can flow becomes part of the series resistance.
 */
public final class FlamePath implements ConductionLaw {

  private static final double LINEAR_ENOUGH = 1e-3;

  private final ElectrodeCharacteristic rod;
  private final ElectrodeCharacteristic burner;
  private final double columnOhms;
  private final CurrentCurve positive;
  private final CurrentCurve negative;

  private FlamePath(
      ElectrodeCharacteristic rod, ElectrodeCharacteristic burner, double columnOhms) {
    this.rod = rod;
    this.burner = burner;
    this.columnOhms = Guard.notNegative("columnOhms", columnOhms);
    this.positive = compose(burner.ions(), rod.electrons()).inSeriesWith(columnOhms);
    this.negative = compose(rod.ions(), burner.electrons()).inSeriesWith(columnOhms);
  }

  /**
   * The path between two electrodes.
   *
   * @param rod rod against plasma
   * @param burner burner against plasma
   * @param columnOhms resistance of the plasma between them (Ω); zero or above
   * @return the path
   */
  public static FlamePath of(
      ElectrodeCharacteristic rod, ElectrodeCharacteristic burner, double columnOhms) {
    return new FlamePath(rod, burner, columnOhms);
  }

  /**
   * The path from geometry: everything from the sheets on.
   *
   * @param field ion field of the flame
   * @param design the burner's metal
   * @param rod the rod
   * @param rodKelvin its surface temperature (K)
   * @param calibration free numbers
   * @return the path
   */
  public static FlamePath of(
      IonField field,
      BurnerDesign design,
      Rod rod,
      double rodKelvin,
      FlameCalibration calibration) {
    return of(
        RodCollection.characteristic(field, rod, rodKelvin, calibration),
        BurnerCollection.characteristic(field.sheets(), design, calibration),
        calibration.columnOhms());
  }

  /** Two layers in series; the electrons' is the easier one wherever there is a flame. */
  private static CurrentCurve compose(CurrentCurve ions, CurrentCurve electrons) {
    double g = electrons.parallelSiemens();
    double largest = ions.currentAmps(CurrentCurve.LARGEST_VOLTS);
    double drop = largest / g;
    double beside = electrons.currentAmps(drop) - largest;
    if (beside <= LINEAR_ENOUGH * largest) {
      return ions.inSeriesWith(1 / g);
    }
    double[] amps = new double[CurrentCurve.INTERVALS + 1];
    for (int k = 1; k < amps.length; k++) {
      amps[k] = Math.max(amps[k - 1], seriesAmps(ions, electrons, CurrentCurve.tableVolts(k)));
    }
    return CurrentCurve.of(amps, 0, 0);
  }

  /** Current through both at a voltage: bisection on the voltage of the second. */
  private static double seriesAmps(CurrentCurve first, CurrentCurve second, double volts) {
    double low = 0;
    double high = volts;
    for (int k = 0; k < 48; k++) {
      double middle = 0.5 * (low + high);
      if (second.currentAmps(middle) < first.currentAmps(volts - middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return first.currentAmps(volts - 0.5 * (low + high));
  }

  @Override
  public double currentAmps(double volts) {
    return currentInSeriesAmps(volts, 0);
  }

  @Override
  public double differentialSiemens(double volts) {
    Guard.finite("volts", volts);
    return volts > 0 ? positive.differentialSiemens(volts) : negative.differentialSiemens(-volts);
  }

  @Override
  public double currentInSeriesAmps(double emfVolts, double seriesOhms) {
    return emfVolts > 0
        ? positive.currentInSeriesAmps(emfVolts, seriesOhms)
        : -negative.currentInSeriesAmps(-emfVolts, seriesOhms);
  }

  @Override
  public double seriesSlopeSiemens(double emfVolts, double currentAmps, double seriesOhms) {
    return emfVolts > 0
        ? positive.seriesSlopeSiemens(emfVolts, currentAmps, seriesOhms)
        : negative.seriesSlopeSiemens(-emfVolts, -currentAmps, seriesOhms);
  }

  /** Rod against plasma. */
  public ElectrodeCharacteristic rod() {
    return rod;
  }

  /** Burner against plasma. */
  public ElectrodeCharacteristic burner() {
    return burner;
  }

  /** Resistance of the plasma column (Ω). */
  public double columnOhms() {
    return columnOhms;
  }

  /** The half-cycle with the rod positive: the burner is the cathode. */
  public CurrentCurve positive() {
    return positive;
  }

  /** The half-cycle with the rod negative: the rod is the cathode; both axes reversed. */
  public CurrentCurve negative() {
    return negative;
  }

  /**
   * Where the voltage goes at a current.
   *
   * @param amps current from rod to burner (A); finite
   * @return the drops, in the sign of the current
   */
  public FlameDrops dropsAt(double amps) {
    return new FlameDrops(rod.voltsAt(amps), amps * columnOhms, -burner.voltsAt(-amps));
  }
}
