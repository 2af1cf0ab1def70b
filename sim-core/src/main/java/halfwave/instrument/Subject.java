package halfwave.instrument;

import halfwave.circuit.Circuit;

/**
 * What a meter is put on.
 *
 * @param circuit the sense circuit as it is now, its power off where the appliance's is
 * @param supply the supply as it is now
 * @param sparking whether the spark electrode has its kilovolts
 */
public record Subject(Circuit circuit, Supply supply, boolean sparking) {

  /** A sense circuit by itself, powered or not, with a correct supply where it is. */
  public static Subject of(Circuit circuit) {
    return new Subject(circuit, circuit.live() ? Supply.CORRECT : Supply.OFF, false);
  }

  /** The same while the igniter sparks. */
  public Subject whileSparking() {
    return new Subject(circuit, supply, true);
  }

  /** The same with all power off. */
  public Subject unpowered() {
    return new Subject(circuit.unpowered(), Supply.OFF, false);
  }

  /** Whether there is power anywhere. */
  public boolean live() {
    return circuit.live() || supply.live() || sparking;
  }
}
