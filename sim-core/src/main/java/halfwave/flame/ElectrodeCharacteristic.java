package halfwave.flame;

import halfwave.circuit.ConductionLaw;
import halfwave.quantity.Guard;

/**
 * One electrode against the plasma: ions in when it stands below the plasma, electrons through its
 * contact when above. The voltage is electrode minus plasma, the current positive from the
 * electrode into the plasma. Three of them meeting in one plasma potential make a star.
 *
 * @param ions current against how far the electrode is below the plasma
 * @param electrons current against how far it is above
 */
public record ElectrodeCharacteristic(CurrentCurve ions, CurrentCurve electrons)
    implements ConductionLaw {

  /** Contact that counts as free (S): a volt per ampere is nothing to microamps. */
  static final double FREE_SIEMENS = 1;

  /** An electrode that no flame touches. */
  public static ElectrodeCharacteristic outOfFlame() {
    return new ElectrodeCharacteristic(CurrentCurve.ohmic(0), CurrentCurve.ohmic(0));
  }

  /**
   * The electrode of the square-root law: ions as the root of the voltage, electrons freely.
   *
   * @param ionAmpsPerRootVolt coefficient (A/√V); zero or above
   */
  public static ElectrodeCharacteristic squareRoot(double ionAmpsPerRootVolt) {
    Guard.notNegative("ionAmpsPerRootVolt", ionAmpsPerRootVolt);
    double[] amps = new double[CurrentCurve.INTERVALS + 1];
    for (int k = 1; k < amps.length; k++) {
      amps[k] = ionAmpsPerRootVolt * Math.sqrt(CurrentCurve.tableVolts(k));
    }
    return new ElectrodeCharacteristic(
        CurrentCurve.of(amps, 0, 0), CurrentCurve.ohmic(FREE_SIEMENS));
  }

  /** The same behind a resistance (Ω). */
  ElectrodeCharacteristic inSeriesWith(double ohms) {
    return new ElectrodeCharacteristic(ions.inSeriesWith(ohms), electrons.inSeriesWith(ohms));
  }

  @Override
  public double currentAmps(double volts) {
    return currentInSeriesAmps(volts, 0);
  }

  @Override
  public double differentialSiemens(double volts) {
    Guard.finite("volts", volts);
    return volts > 0 ? electrons.differentialSiemens(volts) : ions.differentialSiemens(-volts);
  }

  @Override
  public double currentInSeriesAmps(double emfVolts, double seriesOhms) {
    return emfVolts > 0
        ? electrons.currentInSeriesAmps(emfVolts, seriesOhms)
        : -ions.currentInSeriesAmps(-emfVolts, seriesOhms);
  }

  @Override
  public double seriesSlopeSiemens(double emfVolts, double currentAmps, double seriesOhms) {
    return emfVolts > 0
        ? electrons.seriesSlopeSiemens(emfVolts, currentAmps, seriesOhms)
        : ions.seriesSlopeSiemens(-emfVolts, -currentAmps, seriesOhms);
  }

  /**
   * Voltage of the electrode against the plasma at a current (V).
   *
   * @param amps current from the electrode into the plasma (A); finite
   */
  public double voltsAt(double amps) {
    Guard.finite("amps", amps);
    return amps > 0 ? electrons.voltsAt(amps) : -ions.voltsAt(-amps);
  }
}
