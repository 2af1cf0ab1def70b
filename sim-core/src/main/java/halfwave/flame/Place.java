package halfwave.flame;

import halfwave.quantity.Guard;

/**
 * A place in the burner's coordinates.
 *
 * @param xMeters sideways (m); finite
 * @param yMeters upwards (m); finite
 * @param zMeters along the burner's axis from its face (m); finite
 */
public record Place(double xMeters, double yMeters, double zMeters) {

  /** Checks the domain. */
  public Place {
    Guard.finite("xMeters", xMeters);
    Guard.finite("yMeters", yMeters);
    Guard.finite("zMeters", zMeters);
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
