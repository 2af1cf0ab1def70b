package halfwave.picture;

import halfwave.bench.Bench;
import halfwave.flame.Place;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * The row of burners as seen by somebody who looks at their faces: x to the left, y upwards. The
 * burner under the rod is to scale; of the others there are only signs, closer together than they
 * stand.
 */
final class FrontView {

  private static final double SIGN_RADIUS = 8;
  private static final double WALL_METERS = 1.5e-3;

  final Rectangle2D frame;
  final boolean shown;
  final Point2D middle;
  final double unitsPerMeter;

  /** The burners without the rod, from the igniter on. */
  final List<Point2D> others = new ArrayList<>();

  final double signRadius;
  final Point2D igniter;

  FrontView(Bench bench, SheetPlan plan) {
    frame = plan.front;
    shown = !frame.isEmpty();
    double radius = bench.design().burner().portRadiusMeters();
    double reach = -bench.design().rod().path().get(0).xMeters();
    int count = bench.design().burnerCount();
    double words = 20;
    double height = frame.getHeight() - 2 * words;
    double least = (count - 1) * (2 * SIGN_RADIUS + 3) + 34;
    double right = Math.max(reach, 1.6 * radius);
    double across = frame.getWidth() - least - 20;
    unitsPerMeter = Math.max(1, Math.min(height / (3.5 * radius), across / (right + 1.6 * radius)));
    middle =
        new Point2D.Double(
            frame.getMaxX() - 14 - right * unitsPerMeter, frame.getY() + words + 0.5 * height);
    double edge = middle.getX() - 1.75 * radius * unitsPerMeter;
    double room = edge - frame.getX() - 34;
    double pitch = count == 1 ? 0 : Math.min(3.2 * SIGN_RADIUS, room / Math.max(1, count - 1));
    signRadius = count == 1 ? 0 : Math.min(SIGN_RADIUS, 0.42 * pitch);
    for (int k = count - 1; k >= 1; k--) {
      others.add(new Point2D.Double(edge - (k - 0.5) * pitch, middle.getY()));
    }
    double first = others.isEmpty() ? edge : others.get(0).getX() - signRadius;
    igniter = new Point2D.Double(first - 16, middle.getY());
  }

  Point2D at(Place place) {
    return new Point2D.Double(
        middle.getX() - place.xMeters() * unitsPerMeter,
        middle.getY() - place.yMeters() * unitsPerMeter);
  }

  double length(double meters) {
    return meters * unitsPerMeter;
  }

  double meters(double length) {
    return length / unitsPerMeter;
  }

  static double wallMeters() {
    return WALL_METERS;
  }
}
