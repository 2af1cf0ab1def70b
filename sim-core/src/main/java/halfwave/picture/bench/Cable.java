package halfwave.picture.bench;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;

/** A soft cable through some places, with rounded corners. */
final class Cable {

  private Cable() {}

  static Path2D of(double bend, Point2D... places) {
    Path2D path = new Path2D.Double();
    path.moveTo(places[0].getX(), places[0].getY());
    for (int k = 1; k + 1 < places.length; k++) {
      Point2D corner = places[k];
      Point2D in = towards(corner, places[k - 1], bend);
      Point2D out = towards(corner, places[k + 1], bend);
      path.lineTo(in.getX(), in.getY());
      path.quadTo(corner.getX(), corner.getY(), out.getX(), out.getY());
    }
    Point2D last = places[places.length - 1];
    path.lineTo(last.getX(), last.getY());
    return path;
  }

  /** So far from the corner, but never farther than half of the way. */
  private static Point2D towards(Point2D corner, Point2D other, double bend) {
    double length = corner.distance(other);
    double share = length == 0 ? 0 : Math.min(bend, 0.5 * length) / length;
    return new Point2D.Double(
        corner.getX() + share * (other.getX() - corner.getX()),
        corner.getY() + share * (other.getY() - corner.getY()));
  }
}
