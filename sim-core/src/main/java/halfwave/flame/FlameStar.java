package halfwave.flame;

import halfwave.circuit.Circuit;
import halfwave.circuit.ConductionLaw;
import halfwave.circuit.Element;
import halfwave.circuit.Element.Conductor;
import halfwave.circuit.Part;
import halfwave.circuit.Point;
import halfwave.circuit.SquareRootLaw;

/**
 * More than two electrodes in one flame: the path between rod and burner is taken apart, and all
 * meet in one plasma potential. The column is shared by rod and burner alone.
 */
public final class FlameStar {

  private FlameStar() {}

  /**
   * A circuit with one more electrode in its flame; the same circuit where no flame burns.
   *
   * @param circuit with a flame path, or already with electrodes that meet in the plasma
   * @param part what the contact of the new electrode is called
   * @param point the new electrode
   * @param electrode the new electrode against the plasma
   */
  public static Circuit with(
      Circuit circuit, Part part, Point point, ElectrodeCharacteristic electrode) {
    Circuit star = takenApart(circuit);
    boolean burning = star.elements().stream().anyMatch(e -> e.part() == Part.ROD_SHEATH);
    return burning ? star.with(new Conductor(part, point, Point.PLASMA, electrode)) : circuit;
  }

  private static Circuit takenApart(Circuit circuit) {
    for (Element e : circuit.elements()) {
      if (e.part() == Part.FLAME && e instanceof Conductor flame) {
        return takenApart(circuit, flame.law());
      }
    }
    return circuit;
  }

  private static Circuit takenApart(Circuit circuit, ConductionLaw law) {
    if (law instanceof FlamePath path) {
      return takenApart(circuit, path.rod(), path.burner(), path.columnOhms());
    } else if (law instanceof SquareRootLaw root) {
      return takenApart(
          circuit,
          ElectrodeCharacteristic.squareRoot(root.rodIonAmpsPerRootVolt()),
          ElectrodeCharacteristic.squareRoot(root.burnerIonAmpsPerRootVolt()),
          root.columnOhms());
    }
    throw new IllegalArgumentException("flame = " + law + ": a path with two known electrodes");
  }

  private static Circuit takenApart(
      Circuit circuit,
      ElectrodeCharacteristic rod,
      ElectrodeCharacteristic burner,
      double columnOhms) {
    double half = 0.5 * columnOhms;
    return circuit
        .without(Part.FLAME)
        .with(
            new Conductor(Part.ROD_SHEATH, Point.ROD_SURFACE, Point.PLASMA, rod.inSeriesWith(half)),
            new Conductor(
                Part.BURNER_SHEATH, Point.BURNER_SURFACE, Point.PLASMA, burner.inSeriesWith(half)));
  }
}
