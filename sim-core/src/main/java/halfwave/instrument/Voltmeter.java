package halfwave.instrument;

import halfwave.circuit.Circuit;
import halfwave.circuit.Element.Capacitor;
import halfwave.circuit.Element.Resistor;
import halfwave.circuit.Part;
import halfwave.circuit.Point;
import halfwave.circuit.Solved;
import halfwave.circuit.SteadyState;
import halfwave.quantity.Guard;

/**
 * A voltmeter across two points. What it draws is part of the circuit, so that it changes what it
 * measures.
 *
 * @param inputOhms input resistance (Ω)
 * @param inputFarads input capacitance with its leads (F)
 */
public record Voltmeter(double inputOhms, double inputFarads) {

  /** The usual service meter: 10 MΩ with about 100 pF [practice]. */
  public static final Voltmeter HIGH_IMPEDANCE = new Voltmeter(10e6, 100e-12);

  /** The low-impedance range: 3 kΩ [practice]. */
  public static final Voltmeter LOW_IMPEDANCE = new Voltmeter(3e3, 0);

  /** Checks the domain. */
  public Voltmeter {
    Guard.positive("inputOhms", inputOhms);
    Guard.notNegative("inputFarads", inputFarads);
  }

  /** The circuit with this meter's leads on two points. */
  public Circuit across(Circuit circuit, Point red, Point black) {
    return circuit.with(
        new Resistor(Part.METER, red, black, inputOhms),
        new Capacitor(Part.METER_CAPACITANCE, red, black, inputFarads));
  }

  /** Reads the voltage of red against black. */
  public MeterReading read(Circuit circuit, Point red, Point black) {
    SteadyState state = SteadyState.of(across(circuit, red, black));
    if (state instanceof Solved solved) {
      return new MeterReading.Volts(
          solved.voltageMeanVolts(red, black), solved.voltageAlternatingRmsVolts(red, black));
    }
    return new MeterReading.None((SteadyState.Failed) state);
  }
}
