package halfwave.picture.bench;

import halfwave.flame.BurnerDesign;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** The metal of the burner: its port to scale, its tube shortened. */
final class BurnerShape {

  /** Thickness of the wall, as the engine has it (m). */
  static final double WALL_METERS = 1.5e-3;

  private BurnerShape() {}

  /** Both walls, flared where the air comes in. */
  static Shape of(BurnerDesign burner, SheetPlan plan) {
    Path2D walls = new Path2D.Double();
    walls.append(wall(burner, plan, -1), false);
    walls.append(wall(burner, plan, 1), false);
    return walls;
  }

  private static Shape wall(BurnerDesign burner, SheetPlan plan, int side) {
    double inner = burner.portRadiusMeters();
    Point2D face = plan.zone.at(0, side * inner);
    double thick = Math.max(2, plan.zone.length(WALL_METERS));
    double left = face.getX() - plan.tubeLength;
    // a wall thinner than two pixels could not be seen; what is added lies outside
    double y0 = face.getY();
    double y1 = face.getY() + side * thick;
    double flare = side * Math.min(8, 0.08 * plan.tubeLength + 2);
    double bell = 0.2 * plan.tubeLength;
    Path2D wall = new Path2D.Double();
    wall.moveTo(face.getX(), y0);
    wall.lineTo(face.getX(), y1);
    wall.lineTo(left + bell, y1);
    wall.quadTo(left + 0.4 * bell, y1, left, y1 + flare);
    wall.lineTo(left - 0.3 * thick, y0 + flare);
    wall.quadTo(left + 0.4 * bell, y0, left + bell, y0);
    wall.closePath();
    return wall;
  }

  /** The lowest line of the port's wall on the sheet. */
  static double bottom(BurnerDesign burner, SheetPlan plan) {
    return plan.zone.at(0, burner.portRadiusMeters()).getY()
        + Math.max(2, plan.zone.length(WALL_METERS));
  }

  /** Where gas and air stream inside the tube. */
  static Rectangle2D inside(BurnerDesign burner, SheetPlan plan) {
    Point2D upper = plan.zone.at(0, -burner.portRadiusMeters());
    return new Rectangle2D.Double(
        upper.getX() - plan.tubeLength,
        upper.getY(),
        plan.tubeLength,
        plan.zone.length(2 * burner.portRadiusMeters()));
  }
}
