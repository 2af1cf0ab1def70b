package halfwave.instrument;

import halfwave.circuit.Circuit;
import halfwave.circuit.Element;
import halfwave.circuit.Element.Resistor;
import halfwave.circuit.Part;
import halfwave.circuit.Point;
import halfwave.flame.FlameStar;
import halfwave.instrument.HookUp.Across;
import halfwave.instrument.HookUp.InSenseLead;
import halfwave.instrument.HookUp.WireInFlame;

/**
 * A sense circuit made ready for a meter, with nothing between the leads yet.
 *
 * @param circuit the circuit; in series its lead is open
 * @param red where the red lead is
 * @param black where the black lead is
 */
record Leads(Circuit circuit, Point red, Point black) {

  static Leads of(Across across, Circuit circuit) {
    return new Leads(circuit, metal(across.red()), metal(across.black()));
  }

  /** A prod goes through a film. */
  private static Point metal(Point point) {
    return switch (point) {
      case ROD_SURFACE -> Point.ROD;
      case BURNER_SURFACE -> Point.CHASSIS;
      default -> point;
    };
  }

  static Leads of(WireInFlame wired, Circuit circuit) {
    Circuit held = FlameStar.with(circuit, Part.WIRE_SHEATH, Point.WIRE, wired.wire());
    return directed(held, Point.WIRE, metal(wired.other()), wired.redOnWire());
  }

  static Leads of(InSenseLead series, Circuit circuit) {
    boolean red = series.redTowardsBoard();
    return switch (series.end()) {
      case BOARD ->
          directed(opened(circuit, Part.CONNECTOR, true), Point.TERMINAL, Point.OPENED, red);
      case ROD -> directed(opened(circuit, Part.LEAD, false), Point.OPENED, Point.ROD, red);
    };
  }

  private static Leads directed(Circuit circuit, Point first, Point second, boolean redFirst) {
    return redFirst ? new Leads(circuit, first, second) : new Leads(circuit, second, first);
  }

  /** One end of a part comes off its point. */
  private static Circuit opened(Circuit circuit, Part part, boolean atItsFrom) {
    return new Circuit(
        circuit.openCircuitRmsVolts(),
        circuit.sourceHertz(),
        circuit.elements().stream().map(e -> e.part() == part ? off(e, atItsFrom) : e).toList());
  }

  private static Element off(Element element, boolean atItsFrom) {
    if (element instanceof Resistor r) {
      return atItsFrom
          ? new Resistor(r.part(), Point.OPENED, r.to(), r.resistanceOhms())
          : new Resistor(r.part(), r.from(), Point.OPENED, r.resistanceOhms());
    }
    throw new IllegalArgumentException("circuit = " + element + ": a resistor along the lead");
  }

  /** Both leads on one piece of metal. */
  boolean together() {
    return red == black;
  }

  Circuit joinedBy(Voltmeter meter) {
    return meter.across(circuit, red, black);
  }

  Circuit joinedBy(double ohms) {
    return circuit.with(new Resistor(Part.METER, red, black, ohms));
  }
}
