package halfwave.circuit;

import halfwave.circuit.Element.Capacitor;
import halfwave.circuit.Element.Resistor;
import java.util.List;

/** The current through each element of a reduced circuit. */
final class Currents {

  private final Reduction reduction;

  Currents(Reduction reduction) {
    this.reduction = reduction;
  }

  private Signal none() {
    return Signal.zero(reduction.modes, reduction.ports + reduction.topology.free);
  }

  /** Current through an element, from its {@code from} to its {@code to}. */
  Signal through(Element e) {
    Signal none = none();
    if (e instanceof Resistor r) {
      if (r.resistanceOhms() == 0) {
        return currentThroughShort(r);
      }
      return none.plus(1 / r.resistanceOhms(), reduction.voltage(r.from(), r.to()));
    }
    if (e instanceof Capacitor c) {
      return none.plus(c.capacitanceFarads(), derivative(reduction.voltage(c.from(), c.to())));
    }
    int k = reduction.topology.ports.indexOf(e);
    if (k >= 0) {
      none.perPort()[k] = 1;
    }
    return none;
  }

  /** Rate of change of a voltage that has no jump, such as a capacitor's. */
  private Signal derivative(Signal v) {
    double[] perMode = new double[reduction.modes];
    double[] perPort = new double[reduction.ports + reduction.topology.free];
    for (int m = 0; m < reduction.modes; m++) {
      perMode[m] = -reduction.decayPerSecond[m] * v.perMode()[m];
      for (int k = 0; k < reduction.ports; k++) {
        perPort[k] += v.perMode()[m] * reduction.drive[m][k];
      }
    }
    double omega = reduction.omegaRadiansPerSecond;
    return new Signal(perMode, perPort, -omega * v.cosine(), omega * v.sine());
  }

  /**
   * Current through zero ohms: what all else takes on one of its sides. Where shorts form a loop,
   * the one listed last carries nothing.
   */
  private Signal currentThroughShort(Resistor shortCircuit) {
    Forest side = new Forest(Topology.POINTS);
    Forest all = new Forest(Topology.POINTS);
    for (Element e : reduction.circuit.elements()) {
      if (e instanceof Resistor r && r.resistanceOhms() == 0) {
        boolean inTree = all.join(r.from().ordinal(), r.to().ordinal());
        if (r == shortCircuit && !inTree) {
          return none();
        }
        if (r != shortCircuit && inTree) {
          side.join(r.from().ordinal(), r.to().ordinal());
        }
      }
    }
    int to = shortCircuit.to().ordinal();
    boolean toIsKnown =
        side.together(to, Point.COMMON.ordinal()) || side.together(to, Point.EMF.ordinal());
    if (!toIsKnown) {
      return outOf(side, shortCircuit.to());
    }
    return none().plus(-1, outOf(side, shortCircuit.from()));
  }

  /** Sum of the currents that leave a set of joined points through elements of some impedance. */
  private Signal outOf(Forest side, Point member) {
    Signal sum = none();
    for (Element e : reduction.circuit.elements()) {
      boolean isShort = e instanceof Resistor r && r.resistanceOhms() == 0;
      if (!isShort) {
        boolean from = side.together(e.from().ordinal(), member.ordinal());
        boolean to = side.together(e.to().ordinal(), member.ordinal());
        if (from != to) {
          sum = sum.plus(from ? 1 : -1, through(e));
        }
      }
    }
    return sum;
  }

  /** Current that leaves the source into the circuit. */
  Signal outOfSource() {
    Forest joined = new Forest(Topology.POINTS);
    List<Element> elements = reduction.circuit.elements();
    for (Element e : elements) {
      if (e instanceof Resistor r && r.resistanceOhms() == 0) {
        joined.join(r.from().ordinal(), r.to().ordinal());
      }
    }
    return outOf(joined, Point.EMF);
  }
}
