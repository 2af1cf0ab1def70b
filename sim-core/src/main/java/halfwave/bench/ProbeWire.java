package halfwave.bench;

import halfwave.flame.ElectrodeCharacteristic;
import halfwave.flame.Place;
import halfwave.flame.Rod;
import halfwave.flame.RodCollection;
import halfwave.quantity.Guard;
import java.util.List;

/**
 * A bare wire that a technician holds in the flame, from below.
 *
 * @param alongMeters how much further from the burner's face than in the root (m), 0 to 0.15
 * @param acrossMeters how far sideways of the middle (m), -0.06 to 0.06
 */
public record ProbeWire(double alongMeters, double acrossMeters) {

  /** Beside the burner's rim, where a technician looks for the flame's foot. */
  public static final ProbeWire IN_ROOT = new ProbeWire(0, 0);

  /** Furthest along and across (m). */
  public static final double MOST_ALONG_METERS = 0.15;

  /** The same to either side (m). */
  public static final double MOST_ACROSS_METERS = 0.06;

  /** Checks the domain. */
  public ProbeWire {
    Guard.inRange("alongMeters", alongMeters, 0, MOST_ALONG_METERS);
    Guard.inRange("acrossMeters", acrossMeters, -MOST_ACROSS_METERS, MOST_ACROSS_METERS);
  }

  /**
   * The wire against the plasma: its tip, 1 mm thick and 6 mm long, ends 2 mm inside the burner's
   * rim on the side away from the rod, and is as hot as the rod [practice]. Where no flame is, it
   * touches none.
   */
  public ElectrodeCharacteristic against(Bench bench, BenchFlame flame) {
    double r = bench.design().burner().portRadiusMeters();
    double z = 4e-3 + alongMeters;
    Rod tip =
        new Rod(
            List.of(new Place(acrossMeters, -r - 4e-3, z), new Place(acrossMeters, -r + 2e-3, z)),
            0.5e-3);
    return RodCollection.characteristic(
        flame.field(), tip, bench.condition().rodKelvin(), bench.design().flame());
  }
}
