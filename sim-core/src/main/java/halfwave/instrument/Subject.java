package halfwave.instrument;

import halfwave.circuit.Circuit;
import halfwave.circuit.Point;

/**
 * What a meter is put on.
 *
 * @param circuit the sense circuit as it is now, its power off where the appliance's is
 * @param supply the supply as it is now
 * @param sparking whether the spark electrode has its kilovolts
 * @param rodSparks whether that electrode is the rod itself, on an ignition cable for a lead
 */
public record Subject(Circuit circuit, Supply supply, boolean sparking, boolean rodSparks) {

  /** A sense circuit by itself, powered or not, with a correct supply where it is. */
  public static Subject of(Circuit circuit) {
    return new Subject(circuit, circuit.live() ? Supply.CORRECT : Supply.OFF, false, false);
  }

  /** The same while the igniter sparks. */
  public Subject whileSparking() {
    return new Subject(circuit, supply, true, rodSparks);
  }

  /** The same with all power off. */
  public Subject unpowered() {
    return new Subject(circuit.unpowered(), Supply.OFF, false, rodSparks);
  }

  /** The same where one electrode sparks and senses. */
  public Subject withSparkingRod() {
    return new Subject(circuit, supply, sparking, true);
  }

  /** Whether leads there are on what the spark electrode hangs on. */
  boolean sparksAt(HookUp hookUp) {
    boolean rod =
        hookUp instanceof HookUp.InSenseLead
            || hookUp.touches(Point.ROD)
            || hookUp.touches(Point.ROD_SURFACE)
            || hookUp.touches(Point.LEAD);
    return rodSparks ? rod : hookUp.touches(Point.PROBE);
  }

  /** Whether there is power anywhere. */
  public boolean live() {
    return circuit.live() || supply.live() || sparking;
  }
}
