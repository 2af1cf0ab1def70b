package halfwave.flame;

import halfwave.quantity.Guard;

/**
 * A place in the burner's coordinates.
 *
 * @param xMeters sideways (m); -1 to 1
 * @param yMeters upwards (m); -1 to 1
 * @param zMeters along the burner's axis from its face (m); -1 to 1
 */
public record Place(double xMeters, double yMeters, double zMeters) {

  /** Checks the domain. */
  public Place {
    Guard.inRange("xMeters", xMeters, -1, 1);
    Guard.inRange("yMeters", yMeters, -1, 1);
    Guard.inRange("zMeters", zMeters, -1, 1);
  }

  /** Distance to another place (m). */
  public double distanceMeters(Place other) {
    double x = xMeters - other.xMeters;
    double y = yMeters - other.yMeters;
    double z = zMeters - other.zMeters;
    return Math.sqrt(x * x + y * y + z * z);
  }

  /** The place a share of the way to another (1). */
  public Place towards(Place other, double shareRatio) {
    return new Place(
        xMeters + shareRatio * (other.xMeters - xMeters),
        yMeters + shareRatio * (other.yMeters - yMeters),
        zMeters + shareRatio * (other.zMeters - zMeters));
  }
}
