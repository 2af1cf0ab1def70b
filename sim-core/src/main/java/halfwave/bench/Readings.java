package halfwave.bench;

import halfwave.circuit.Circuit;
import halfwave.circuit.Part;
import halfwave.circuit.Point;
import halfwave.circuit.SteadyState;
import halfwave.flame.FlameStar;
import halfwave.instrument.MeterReading;
import halfwave.instrument.Microammeter;
import halfwave.instrument.Voltmeter;

/**
 * What a technician's meter shows on a bench, one hook-up at a time.
 *
 * @param series microammeter in the opened sense lead, flame burning
 * @param terminal 10 MΩ voltmeter from sense terminal to common, flame burning
 * @param seriesWithVoltmeter the microammeter again while the voltmeter hangs on the terminal
 * @param terminalLeadOff the same voltmeter with the lead pulled off
 * @param terminalFlameOut the same voltmeter, lead on, no flame
 * @param probe 10 MΩ voltmeter from a wire in the flame's root to the rod
 */
public record Readings(
    MeterReading series,
    MeterReading terminal,
    MeterReading seriesWithVoltmeter,
    MeterReading terminalLeadOff,
    MeterReading terminalFlameOut,
    MeterReading probe) {

  /** Takes all readings. */
  public static Readings of(Stages stages, Bench bench) {
    BenchFlame flame = stages.flame(bench);
    Circuit circuit = BenchCircuit.of(bench, flame);
    Circuit dark = BenchCircuit.withoutFlame(bench, flame);
    Voltmeter volts = Voltmeter.HIGH_IMPEDANCE;
    Circuit wired =
        FlameStar.with(
            circuit, Part.WIRE_SHEATH, Point.WIRE, ProbeWire.IN_ROOT.against(bench, flame));
    return new Readings(
        Microammeter.SERVICE.read(circuit),
        volts.read(circuit, Point.TERMINAL, Point.COMMON),
        Microammeter.SERVICE.read(volts.across(circuit, Point.TERMINAL, Point.COMMON)),
        volts.read(dark.without(Part.CONNECTOR), Point.TERMINAL, Point.COMMON),
        volts.read(dark, Point.TERMINAL, Point.COMMON),
        volts.read(wired, Point.WIRE, Point.ROD));
  }

  /** The undisturbed circuit's steady state, no meter anywhere. */
  public static SteadyState undisturbed(Stages stages, Bench bench) {
    return SteadyState.of(stages.circuit(bench));
  }
}
