package halfwave.picture.bench;

import halfwave.bench.Bench;
import halfwave.flame.Place;
import halfwave.flame.Rod;
import halfwave.picture.flame.FlameZone;
import halfwave.picture.scene.DrawnView;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/**
 * The rod, its ceramic and its terminal in the flame zone. The rod is to scale; the ceramic stands
 * where the rod begins, or at the edge of the zone where that is farther out.
 */
final class RodOnSheet {

  final Shape metal;
  final Point2D tip;
  final Point2D root;
  final Shape ceramic;
  final Rectangle2D bracket;
  final Shape terminalShape;

  /** Where the lead is put on. */
  final Point2D terminal;

  /** A place on the metal beside the ceramic. */
  final Point2D surface;

  /** Whether it is seen from its end. */
  final boolean endOn;

  RodOnSheet(Bench bench, SheetPlan plan) {
    FlameZone zone = plan.zone;
    Rod rod = bench.rod();
    Rectangle2D window = zone.window();
    tip = zone.at(rod.tip());
    Point2D start = zone.at(rod.path().get(0));
    endOn = zone.view() == DrawnView.SIDE;
    root =
        new Point2D.Double(
            clamped(start.getX(), window.getMinX() + 24, window.getMaxX() - 24),
            clamped(start.getY(), window.getMinY(), window.getMaxY() - 16));
    double half = Math.max(1, zone.length(rod.radiusMeters()));
    metal = seen(outline(zone, rod, half), root, window, half, endOn);
    double wide = Math.max(plan.roomy ? 7 : 4, Math.min(16, 1.5 * half));
    double terminalLength = plan.roomy ? 14 : 8;
    if (endOn) {
      double ring = Math.max(2 * half, wide);
      ceramic = disc(root, ring);
      bracket = new Rectangle2D.Double();
      terminal = new Point2D.Double(root.getX(), root.getY() - ring);
      terminalShape = disc(terminal, 2);
      surface = tip;
    } else {
      double top = root.getY() - plan.ceramicLength;
      ceramic = ceramic(root.getX(), top, root.getY(), wide);
      bracket =
          new Rectangle2D.Double(
              root.getX() - 2.4 * wide, top + 0.46 * plan.ceramicLength, 4.8 * wide, 4);
      terminal = new Point2D.Double(root.getX(), top - terminalLength);
      double narrow = Math.max(2.5, 0.5 * wide);
      terminalShape =
          new Rectangle2D.Double(
              root.getX() - narrow, top - 0.6 * terminalLength, 2 * narrow, 0.6 * terminalLength);
      surface =
          new Point2D.Double(
              root.getX(), root.getY() + Math.min(14, 0.3 * zone.length(rod.lengthMeters())));
    }
  }

  private static double clamped(double value, double low, double high) {
    return Math.max(low, Math.min(high, value));
  }

  private static Shape disc(Point2D middle, double radius) {
    return new Ellipse2D.Double(
        middle.getX() - radius, middle.getY() - radius, 2 * radius, 2 * radius);
  }

  /** The whole rod on the sheet, whatever of it is within the zone. */
  static Shape outline(FlameZone zone, Rod rod, double half) {
    return outline(rod, zone::at, half);
  }

  /** Where a view puts a place. */
  interface Projection {
    Point2D at(Place place);
  }

  /** The outline of a round bar in any view. */
  static Shape outline(Rod rod, Projection view, double half) {
    Path2D axis = new Path2D.Double();
    Point2D first = view.at(rod.path().get(0));
    axis.moveTo(first.getX(), first.getY());
    double length = 0;
    Point2D before = first;
    for (Place place : rod.path().subList(1, rod.path().size())) {
      Point2D p = view.at(place);
      axis.lineTo(p.getX(), p.getY());
      length += p.distance(before);
      before = p;
    }
    return length < 1
        ? disc(before, half)
        : new BasicStroke((float) (2 * half), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
            .createStrokedShape(axis);
  }

  /** What of it is within the zone; a stub at the ceramic where nothing is. */
  private static Shape seen(
      Shape outline, Point2D root, Rectangle2D window, double half, boolean endOn) {
    if (window.contains(outline.getBounds2D())) {
      return outline;
    }
    Area inside = new Area(outline);
    inside.intersect(new Area(window));
    if (!inside.isEmpty()) {
      return inside;
    }
    return endOn
        ? disc(root, half)
        : new Rectangle2D.Double(root.getX() - half, root.getY(), 2 * half, 6);
  }

  /** A post with a collar where the bracket holds it. */
  private static Shape ceramic(double middle, double top, double bottom, double half) {
    double length = bottom - top;
    Path2D post = new Path2D.Double();
    double[] share = {0, 0.4, 0.4, 0.64, 0.64, 1};
    double[] width = {0.8, 0.8, 1.25, 1.25, 0.9, 0.75};
    post.moveTo(middle - width[0] * half, top);
    for (int k = 0; k < share.length; k++) {
      post.lineTo(middle + width[k] * half, top + share[k] * length);
    }
    for (int k = share.length - 1; k >= 0; k--) {
      post.lineTo(middle - width[k] * half, top + share[k] * length);
    }
    post.closePath();
    return post;
  }
}
