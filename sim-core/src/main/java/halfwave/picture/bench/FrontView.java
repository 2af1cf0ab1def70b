package halfwave.picture.bench;

import halfwave.bench.Bench;
import halfwave.flame.Place;
import halfwave.flame.Rod;
import java.awt.Shape;
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
  private static final double LARGEST_SIGN = 15;
  private static final double CAPTION = 20;
  private static final double END = 26;
  private static final double WALL_METERS = 1.5e-3;

  final Rectangle2D frame;
  final boolean shown;
  final Point2D middle;
  final double unitsPerMeter;
  private final double port;

  /** The burners without the rod, from the igniter on. */
  final List<Point2D> others = new ArrayList<>();

  final double signRadius;
  final Point2D igniter;

  /** Makes it; while the rod itself stands there, it gives way. */
  FrontView(Bench bench, SheetPlan plan, RodOnSheet rod) {
    frame = plan.front;
    double taken = Math.max(rod.root.getX(), rod.bracket.getMaxX()) + 12;
    shown = !frame.isEmpty() && taken < frame.getX();
    double radius = bench.design().burner().portRadiusMeters();
    double reach = -bench.design().rod().path().get(0).xMeters();
    int count = bench.design().burnerCount();
    double height = frame.getHeight() - 2 * CAPTION;
    double sign =
        Math.max(SIGN_RADIUS, Math.min(LARGEST_SIGN, frame.getWidth() / (12 + 6 * count)));
    double least = (count - 1) * 2.6 * sign + 40;
    double right = Math.max(reach, 1.6 * radius);
    double across = frame.getWidth() - least - END - 10;
    unitsPerMeter = Math.max(1, Math.min(height / (3.5 * radius), across / (right + 1.6 * radius)));
    port = radius * unitsPerMeter;
    middle =
        new Point2D.Double(
            frame.getMaxX() - END - right * unitsPerMeter, frame.getY() + CAPTION + 0.5 * height);
    double edge = middle.getX() - 1.75 * radius * unitsPerMeter;
    double room = edge - frame.getX() - 40;
    double pitch = count == 1 ? 0 : Math.min(2.7 * LARGEST_SIGN, room / (count - 1));
    double burner = 0.6 * radius * unitsPerMeter;
    signRadius = count == 1 ? 0 : Math.min(Math.min(LARGEST_SIGN, burner), 0.4 * pitch);
    for (int k = count - 1; k >= 1; k--) {
      others.add(new Point2D.Double(edge - (k - 0.5) * pitch, middle.getY()));
    }
    double first = others.isEmpty() ? edge : others.get(0).getX() - signRadius;
    igniter = new Point2D.Double(first - 16, middle.getY());
  }

  /** What of the frame is drawn on: rod and burner, and the row beside them. */
  List<Rectangle2D> used() {
    double left = middle.getX() - reach();
    double top = middle.getY() - reach() - CAPTION;
    Rectangle2D burner =
        new Rectangle2D.Double(left, top, frame.getMaxX() - left, 2 * (reach() + CAPTION));
    double first = igniter.getX() - 34;
    Rectangle2D row = new Rectangle2D.Double(first, middle.getY() - 20, middle.getX() - first, 48);
    return List.of(burner, row);
  }

  /** The bars that cross it: rod and spark electrode. */
  List<Shape> bars(Bench bench) {
    List<Shape> bars = new ArrayList<>();
    bars.add(bar(bench.rod()));
    if (bench.design().spark() != null) {
      bars.add(bar(bench.design().spark().electrode()));
    }
    return bars;
  }

  Shape bar(Rod rod) {
    return RodOnSheet.outline(rod, this::at, Math.max(1.2, length(rod.radiusMeters())));
  }

  /** How far the flame and the cross of the axes reach. */
  double reach() {
    return Math.min(0.5 * frame.getHeight() - CAPTION, 1.75 * port);
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
