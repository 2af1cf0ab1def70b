package halfwave.instrument;

import halfwave.circuit.Circuit;
import halfwave.circuit.Element;
import halfwave.circuit.Element.Capacitor;
import halfwave.circuit.Element.Conductor;
import halfwave.circuit.Element.Resistor;
import halfwave.circuit.Part;
import halfwave.circuit.Point;
import halfwave.circuit.Solved;
import halfwave.circuit.SteadyState;
import java.util.ArrayList;
import java.util.List;

/**
 * The direct current that an ohmmeter drives through a dead circuit.
 *
 * <p>The circuit's own source is a short now, and the meter's takes its place. Capacitors block.
 * What is left remembers nothing, so that the crest of a sine is a direct current of that voltage,
 * and the solver of the periodic state serves here too.
 */
final class OhmTest {

  private final Ohmmeter meter;
  private final Leads leads;

  OhmTest(Ohmmeter meter, Leads leads) {
    this.meter = meter;
    this.leads = leads;
  }

  private SteadyState state() {
    List<Element> elements = new ArrayList<>();
    for (Element e : leads.circuit().elements()) {
      Element moved = moved(e);
      if (!(e instanceof Capacitor) && moved.from() != moved.to()) {
        elements.add(moved);
      }
    }
    elements.add(new Resistor(Part.METER, Point.EMF, place(leads.red()), meter.sourceOhms()));
    return SteadyState.of(
        new Circuit(meter.testVolts() / Math.sqrt(2), leads.circuit().sourceHertz(), elements));
  }

  /** The black lead is the common of the test; what was common takes its name. */
  private Point place(Point point) {
    Point dead = point == Point.EMF ? Point.COMMON : point;
    if (dead == leads.black()) {
      return Point.COMMON;
    }
    return dead == Point.COMMON ? leads.black() : dead;
  }

  private Element moved(Element e) {
    Point from = place(e.from());
    Point to = place(e.to());
    if (e instanceof Resistor r) {
      return new Resistor(r.part(), from, to, r.resistanceOhms());
    } else if (e instanceof Conductor c) {
      return new Conductor(c.part(), from, to, c.law());
    }
    return e;
  }

  /** Receives the answer. */
  interface Answer<T> {
    /** The resistance between the leads (Ω); infinity where no current flows. */
    T ohms(double ohms);

    /** No solution. */
    T failed(SteadyState.Failed reason);
  }

  <T> T result(Answer<T> answer) {
    if (leads.together()) {
      return answer.ohms(0);
    }
    SteadyState state = state();
    if (state instanceof Solved solved) {
      int crest = solved.sampleCount() / 4;
      double amps = solved.currentAmps(Part.METER)[crest];
      double volts = solved.voltageVolts(place(leads.red()), Point.COMMON)[crest];
      // what is left of a current by rounding is none
      boolean flows = amps > 1e-12 * meter.testVolts() / meter.sourceOhms();
      return answer.ohms(flows ? volts / amps : Double.POSITIVE_INFINITY);
    }
    return answer.failed((SteadyState.Failed) state);
  }
}
