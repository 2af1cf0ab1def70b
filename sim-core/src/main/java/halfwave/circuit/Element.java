package halfwave.circuit;

import halfwave.quantity.Guard;

/**
 * One element between two points. Its current is positive from {@link #from()} to {@link #to()}.
 *
 * <pre>
 * Element = Resistor | Capacitor | Conductor
 * </pre>
 */
public sealed interface Element {

  /** What the element is. */
  Part part();

  /** The point where positive current enters. */
  Point from();

  /** The point where positive current leaves. */
  Point to();

  /**
   * A resistance.
   *
   * @param part what it is
   * @param from where positive current enters
   * @param to where positive current leaves
   * @param resistanceOhms ohms; zero is a short, infinity an open circuit
   */
  record Resistor(Part part, Point from, Point to, double resistanceOhms) implements Element {
    /** Checks the domain. */
    public Resistor {
      Guard.resistance("resistanceOhms", resistanceOhms);
    }
  }

  /**
   * A capacitance.
   *
   * @param part what it is
   * @param from where positive current enters
   * @param to where positive current leaves
   * @param capacitanceFarads farads; zero or above, finite
   */
  record Capacitor(Part part, Point from, Point to, double capacitanceFarads) implements Element {
    /** Checks the domain. */
    public Capacitor {
      Guard.notNegative("capacitanceFarads", capacitanceFarads);
    }
  }

  /**
   * A nonlinear conductor: the flame path, or one electrode's contact with the plasma.
   *
   * @param part what it is
   * @param from where positive current enters
   * @param to where positive current leaves
   * @param law its current against voltage
   */
  record Conductor(Part part, Point from, Point to, ConductionLaw law) implements Element {}
}
