package halfwave.bench;

import halfwave.flame.BurnerDesign;
import halfwave.flame.Place;
import halfwave.flame.Rod;

/** Where the burner's own metal is, and how near the rod comes to it. */
final class BurnerMetal {

  /** Thickness of the burner's wall around the port (m) [practice]. */
  private static final double WALL_METERS = 1.5e-3;

  /** Distance between the places at which the rod is looked at (m). */
  private static final double PACE_METERS = 0.25e-3;

  private final double innerMeters;
  private final double outerMeters;

  BurnerMetal(BurnerDesign burner) {
    innerMeters = burner.portRadiusMeters();
    outerMeters = innerMeters + WALL_METERS;
  }

  /**
   * Smallest distance between the rod's surface and the burner's metal.
   *
   * @return metres; zero where they touch, −1 where the rod runs through the burner's tube
   */
  double clearanceMeters(Rod rod) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int k = 1; k < rod.path().size(); k++) {
      Place from = rod.path().get(k - 1);
      Place to = rod.path().get(k);
      int paces = (int) Math.ceil(to.distanceMeters(from) / PACE_METERS);
      for (int n = 0; n <= paces; n++) {
        Place p = from.towards(to, (double) n / paces);
        double r = Math.sqrt(p.xMeters() * p.xMeters() + p.yMeters() * p.yMeters());
        if (p.zMeters() < 0 && r < outerMeters) {
          return -1;
        }
        double aside = r < innerMeters ? innerMeters - r : Math.max(0, r - outerMeters);
        double above = Math.max(0, p.zMeters());
        double distance = Math.sqrt(aside * aside + above * above) - rod.radiusMeters();
        nearest = Math.min(nearest, Math.max(0, distance));
      }
    }
    return nearest;
  }
}
