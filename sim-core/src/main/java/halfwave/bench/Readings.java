package halfwave.bench;

import halfwave.circuit.Circuit;
import halfwave.circuit.Part;
import halfwave.circuit.Point;
import halfwave.circuit.SteadyState;
import halfwave.flame.ElectrodeCharacteristic;
import halfwave.flame.Place;
import halfwave.flame.Rod;
import halfwave.flame.RodCollection;
import halfwave.instrument.MeterReading;
import halfwave.instrument.Microammeter;
import halfwave.instrument.Voltmeter;
import java.util.List;

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
    ElectrodeCharacteristic wire =
        RodCollection.characteristic(
            flame.field(), probeWire(bench), bench.condition().rodKelvin(), bench.design().flame());
    return new Readings(
        Microammeter.SERVICE.read(circuit),
        volts.read(circuit, Point.TERMINAL, Point.COMMON),
        Microammeter.SERVICE.read(volts.across(circuit, Point.TERMINAL, Point.COMMON)),
        volts.read(dark.without(Part.CONNECTOR), Point.TERMINAL, Point.COMMON),
        volts.read(dark, Point.TERMINAL, Point.COMMON),
        volts.read(BenchCircuit.withProbe(bench, flame, wire), Point.PROBE, Point.ROD));
  }

  /**
   * A bare wire tip, 1 mm thick and 6 mm long, held into the root of the flame beside the burner's
   * rim, on the side away from the rod [practice].
   */
  private static Rod probeWire(Bench bench) {
    double r = bench.design().burner().portRadiusMeters();
    return new Rod(List.of(new Place(0, -r - 4e-3, 4e-3), new Place(0, -r + 2e-3, 4e-3)), 0.5e-3);
  }

  /** The undisturbed circuit's steady state, no meter anywhere. */
  public static SteadyState undisturbed(Stages stages, Bench bench) {
    return SteadyState.of(stages.circuit(bench));
  }
}
