package halfwave.instrument;

import halfwave.circuit.Circuit;
import halfwave.circuit.Element;
import halfwave.circuit.Element.Resistor;
import halfwave.circuit.Part;
import halfwave.circuit.Solved;
import halfwave.circuit.SteadyState;
import halfwave.quantity.Guard;
import java.util.List;

/**
 * A microammeter in series, where the sense lead joins the board; plus towards the board.
 *
 * @param burdenOhms its own resistance (Ω), 0.1 to 10 kΩ
 */
public record Microammeter(double burdenOhms) {

  /** About what a service meter's microamp range has [seen: a meter's manual]. */
  public static final Microammeter SERVICE = new Microammeter(1500);

  /** Checks the domain. */
  public Microammeter {
    Guard.notNegative("burdenOhms", burdenOhms);
  }

  /** The circuit with this meter in the opened sense lead. */
  public Circuit inSeries(Circuit circuit) {
    List<Element> elements =
        circuit.elements().stream()
            .map(e -> e instanceof Resistor r && r.part() == Part.CONNECTOR ? burdened(r) : e)
            .toList();
    return new Circuit(circuit.openCircuitRmsVolts(), circuit.sourceHertz(), elements);
  }

  private Element burdened(Resistor connector) {
    return new Resistor(
        Part.CONNECTOR, connector.from(), connector.to(), connector.resistanceOhms() + burdenOhms);
  }

  /** Reads the current that leaves the board. */
  public MeterReading read(Circuit circuit) {
    SteadyState state = SteadyState.of(inSeries(circuit));
    if (state instanceof Solved solved) {
      return new MeterReading.Amps(
          solved.currentMeanAmps(Part.CONNECTOR), solved.currentAlternatingRmsAmps(Part.CONNECTOR));
    }
    return new MeterReading.None((SteadyState.Failed) state);
  }
}
