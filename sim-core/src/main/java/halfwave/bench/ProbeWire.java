package halfwave.bench;

import halfwave.flame.ElectrodeCharacteristic;
import halfwave.flame.Place;
import halfwave.flame.Rod;
import halfwave.flame.RodCollection;
import java.util.List;

/** A bare wire that a technician holds in the root of the flame. */
public final class ProbeWire {

  private ProbeWire() {}

  /**
   * The wire against the plasma: its tip, 1 mm thick and 6 mm long, is held beside the burner's rim
   * on the side away from the rod, and is as hot as the rod [practice].
   */
  public static ElectrodeCharacteristic of(Bench bench, BenchFlame flame) {
    double r = bench.design().burner().portRadiusMeters();
    Rod tip =
        new Rod(List.of(new Place(0, -r - 4e-3, 4e-3), new Place(0, -r + 2e-3, 4e-3)), 0.5e-3);
    return RodCollection.characteristic(
        flame.field(), tip, bench.condition().rodKelvin(), bench.design().flame());
  }
}
