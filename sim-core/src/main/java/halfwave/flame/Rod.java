package halfwave.flame;

import halfwave.quantity.Guard;
import halfwave.quantity.RejectedValueException;
import java.util.List;

/**
 * A bare round electrode: the axis as a chain of straight pieces, from the insulator to the tip. A
 * flame rod, a probe wire or a spark electrode.
 *
 * @param path places along the axis, two at least, no two neighbours equal
 * @param radiusMeters half the thickness, a (m); 10 µm to 20 mm
 */
public record Rod(List<Place> path, double radiusMeters) {

  /** Checks the domain. */
  public Rod {
    path = List.copyOf(path);
    if (!(path.size() >= 2)) {
      throw new RejectedValueException(
          "path",
          Integer.toString(path.size()),
          RejectedValueException.Allowed.ENTRIES,
          2,
          Double.NaN);
    }
    for (int k = 1; k < path.size(); k++) {
      Guard.positive("path.distanceMeters", path.get(k).distanceMeters(path.get(k - 1)));
    }
    Guard.inRange("radiusMeters", radiusMeters, 1e-5, 20e-3);
  }

  /**
   * The default: across the burner at z = 15 mm, 5 mm above the axis, from x = −40 mm to the tip at
   * x = +12 mm, 3.2 mm thick.
   */
  public static Rod standard() {
    return across(15e-3, 5e-3, -40e-3, 12e-3, 1.6e-3);
  }

  /** A straight rod along x. */
  public static Rod across(
      double zMeters, double yMeters, double fromMeters, double tipMeters, double radiusMeters) {
    return new Rod(
        List.of(new Place(fromMeters, yMeters, zMeters), new Place(tipMeters, yMeters, zMeters)),
        radiusMeters);
  }

  /** The same rod moved as a whole (m). */
  public Rod moved(double xMeters, double yMeters, double zMeters) {
    return new Rod(
        path.stream()
            .map(
                p -> new Place(p.xMeters() + xMeters, p.yMeters() + yMeters, p.zMeters() + zMeters))
            .toList(),
        radiusMeters);
  }

  /** Last place of the path. */
  public Place tip() {
    return path.get(path.size() - 1);
  }

  /** Length of the axis (m). */
  public double lengthMeters() {
    double length = 0;
    for (int k = 1; k < path.size(); k++) {
      length += path.get(k).distanceMeters(path.get(k - 1));
    }
    return length;
  }
}
