package halfwave.bench;

import halfwave.flame.Place;
import halfwave.flame.Rod;
import halfwave.quantity.Guard;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.util.FastMath;

/**
 * How far the rod stands from where it was fitted.
 *
 * @param acrossMeters sideways, x (m); −0.1 to 0.1
 * @param upMeters upwards, y (m); −0.1 to 0.1
 * @param alongMeters along the burner's axis, z (m); −0.1 to 0.1
 * @param turnRadians about the vertical through the insulator; positive swings the tip away from
 *     the burner face (rad); −1.6 to 1.6
 * @param tiltRadians about the burner's direction through the insulator; positive lifts the tip
 *     (rad); −1.6 to 1.6
 * @param bendRadians upwards, at the middle of the rod (rad); −1.6 to 1.6
 */
public record RodPosition(
    double acrossMeters,
    double upMeters,
    double alongMeters,
    double turnRadians,
    double tiltRadians,
    double bendRadians) {

  /** As fitted. */
  public static final RodPosition FITTED = new RodPosition(0, 0, 0, 0, 0, 0);

  private static final double FAR = 0.1;
  private static final double STEEP = 1.6;

  /** Checks the domain. */
  public RodPosition {
    Guard.inRange("acrossMeters", acrossMeters, -FAR, FAR);
    Guard.inRange("upMeters", upMeters, -FAR, FAR);
    Guard.inRange("alongMeters", alongMeters, -FAR, FAR);
    Guard.inRange("turnRadians", turnRadians, -STEEP, STEEP);
    Guard.inRange("tiltRadians", tiltRadians, -STEEP, STEEP);
    Guard.inRange("bendRadians", bendRadians, -STEEP, STEEP);
  }

  /** Only shifted. */
  public static RodPosition shifted(double acrossMeters, double upMeters, double alongMeters) {
    return new RodPosition(acrossMeters, upMeters, alongMeters, 0, 0, 0);
  }

  /** Elsewhere sideways (m). */
  public RodPosition withAcross(double meters) {
    return new RodPosition(meters, upMeters, alongMeters, turnRadians, tiltRadians, bendRadians);
  }

  /** Higher or lower (m). */
  public RodPosition withUp(double meters) {
    return new RodPosition(
        acrossMeters, meters, alongMeters, turnRadians, tiltRadians, bendRadians);
  }

  /** Elsewhere along the burner's axis (m). */
  public RodPosition withAlong(double meters) {
    return new RodPosition(acrossMeters, upMeters, meters, turnRadians, tiltRadians, bendRadians);
  }

  /** Turned otherwise (rad). */
  public RodPosition withTurn(double radians) {
    return new RodPosition(acrossMeters, upMeters, alongMeters, radians, tiltRadians, bendRadians);
  }

  /** Tilted otherwise (rad). */
  public RodPosition withTilt(double radians) {
    return new RodPosition(acrossMeters, upMeters, alongMeters, turnRadians, radians, bendRadians);
  }

  /** Bent otherwise (rad). */
  public RodPosition withBend(double radians) {
    return new RodPosition(acrossMeters, upMeters, alongMeters, turnRadians, tiltRadians, radians);
  }

  /** The rod where it stands now. */
  public Rod place(Rod fitted) {
    if (equals(FITTED)) {
      return fitted;
    }
    List<Place> path = bendRadians == 0 ? fitted.path() : bent(fitted);
    Place root = path.get(0);
    List<Place> placed = new ArrayList<>();
    for (Place p : path) {
      double x = p.xMeters() - root.xMeters();
      double y = p.yMeters() - root.yMeters();
      double z = p.zMeters() - root.zMeters();
      double x1 = x * FastMath.cos(tiltRadians) - y * FastMath.sin(tiltRadians);
      double y1 = x * FastMath.sin(tiltRadians) + y * FastMath.cos(tiltRadians);
      double x2 = x1 * FastMath.cos(turnRadians) - z * FastMath.sin(turnRadians);
      double z2 = x1 * FastMath.sin(turnRadians) + z * FastMath.cos(turnRadians);
      placed.add(
          new Place(
              root.xMeters() + x2 + acrossMeters,
              root.yMeters() + y1 + upMeters,
              root.zMeters() + z2 + alongMeters));
    }
    return new Rod(placed, fitted.radiusMeters());
  }

  /** A corner at the middle of the rod's length; what lies beyond turns upwards about it. */
  private List<Place> bent(Rod fitted) {
    double left = fitted.lengthMeters() / 2;
    List<Place> path = new ArrayList<>();
    path.add(fitted.path().get(0));
    Place corner = null;
    for (int k = 1; k < fitted.path().size(); k++) {
      Place from = fitted.path().get(k - 1);
      Place to = fitted.path().get(k);
      double length = to.distanceMeters(from);
      if (corner == null && left < length) {
        corner = from.towards(to, left / length);
        path.add(corner);
      }
      left -= length;
      path.add(corner == null ? to : turnedUp(corner, to));
    }
    return path;
  }

  private Place turnedUp(Place corner, Place p) {
    double x = p.xMeters() - corner.xMeters();
    double y = p.yMeters() - corner.yMeters();
    return new Place(
        corner.xMeters() + x * FastMath.cos(bendRadians) - y * FastMath.sin(bendRadians),
        corner.yMeters() + x * FastMath.sin(bendRadians) + y * FastMath.cos(bendRadians),
        p.zMeters());
  }
}
