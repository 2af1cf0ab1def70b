package halfwave.picture.bench;

import halfwave.bench.Bench;
import halfwave.bench.RodPosition;
import halfwave.flame.Place;
import halfwave.picture.scene.DrawnView;
import halfwave.picture.scene.RodGrip;
import halfwave.quantity.RejectedValueException;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;

/** What it means to drag the rod: a millimetre on the sheet is a millimetre on the bench. */
final class RodDrag {

  private static final double FAR = 0.1;
  private static final double STEEP = 1.6;

  /** How finely the way to the burner's metal is halved. */
  private static final int HALVINGS = 30;

  private static final double REACH = 10;

  private final BenchSheet sheet;

  RodDrag(BenchSheet sheet) {
    this.sheet = sheet;
  }

  /** What is under a point. */
  Optional<RodGrip> at(Point2D p) {
    FrontView front = sheet.front;
    if (front.shown && front.frame.contains(p)) {
      if (front.at(sheet.bench.rod().tip()).distance(p) <= REACH) {
        return Optional.of(RodGrip.TIP);
      }
      if (FrontPainter.bend(sheet.bench.rod(), front).distance(p) <= 0.7 * REACH) {
        return Optional.of(RodGrip.BEND);
      }
      double half = Math.max(4, front.length(sheet.bench.rod().radiusMeters()));
      boolean on = RodOnSheet.outline(sheet.bench.rod(), front::at, half).contains(p);
      return on ? Optional.of(RodGrip.BODY) : Optional.empty();
    }
    if (!sheet.rod.endOn
        && sheet.plan.zone.window().contains(sheet.rod.tip)
        && sheet.rod.tip.distance(p) <= REACH) {
      return Optional.of(RodGrip.TIP);
    }
    Rectangle2D near = new Rectangle2D.Double(p.getX() - 5, p.getY() - 5, 10, 10);
    return sheet.rod.metal.intersects(near) || sheet.rod.ceramic.contains(p)
        ? Optional.of(RodGrip.BODY)
        : Optional.empty();
  }

  /** Where a drag brings the rod: as near as it can get, where metal is in the way. */
  RodPosition dragged(RodGrip grip, RodPosition from, Point2D start, Point2D now) {
    if (possible(wanted(grip, from, start, now, 1))) {
      return wanted(grip, from, start, now, 1);
    }
    double can = 0;
    double cannot = 1;
    for (int k = 0; k < HALVINGS; k++) {
      double share = 0.5 * (can + cannot);
      if (possible(wanted(grip, from, start, now, share))) {
        can = share;
      } else {
        cannot = share;
      }
    }
    return wanted(grip, from, start, now, can);
  }

  private boolean possible(RodPosition position) {
    Bench bench = sheet.bench;
    try {
      return bench.with(bench.condition().withRodPosition(position)).rodClearanceMeters() >= 0;
    } catch (RejectedValueException e) {
      // the bench itself knows best where its metal is
      return false;
    }
  }

  private RodPosition wanted(
      RodGrip grip, RodPosition from, Point2D start, Point2D now, double share) {
    boolean front = sheet.front.shown && sheet.front.frame.contains(start);
    double right = share * (now.getX() - start.getX());
    double down = share * (now.getY() - start.getY());
    return switch (grip) {
      case BODY -> moved(from, right, down, front);
      case TIP -> turned(from, start, now, share, front);
      case BEND -> bent(from, down);
    };
  }

  private RodPosition moved(RodPosition from, double right, double down, boolean front) {
    double across = from.acrossMeters();
    double up = from.upMeters();
    double along = from.alongMeters();
    if (front) {
      across -= sheet.front.meters(right);
      up -= sheet.front.meters(down);
    } else if (sheet.style.view() == DrawnView.ABOVE) {
      across += sheet.plan.zone.meters(down);
      along += sheet.plan.zone.meters(right);
    } else {
      up -= sheet.plan.zone.meters(down);
      along += sheet.plan.zone.meters(right);
    }
    return new RodPosition(
        within(across, FAR),
        within(up, FAR),
        within(along, FAR),
        from.turnRadians(),
        from.tiltRadians(),
        from.bendRadians());
  }

  /** By the angle that the drag has about the insulator; along the rod it does nothing. */
  private RodPosition turned(
      RodPosition from, Point2D start, Point2D now, double share, boolean front) {
    Place root = sheet.bench.rod().path().get(0);
    Point2D pivot = front ? sheet.front.at(root) : sheet.plan.zone.at(root);
    double before = Math.atan2(start.getY() - pivot.getY(), start.getX() - pivot.getX());
    double after = Math.atan2(now.getY() - pivot.getY(), now.getX() - pivot.getX());
    double angle = share * Math.IEEEremainder(after - before, 2 * Math.PI);
    // on the sheet angles run clockwise: from above a turn away from the face is the other way
    double turn = from.turnRadians() - (front ? 0 : angle);
    double tilt = from.tiltRadians() + (front ? angle : 0);
    return new RodPosition(
        from.acrossMeters(),
        from.upMeters(),
        from.alongMeters(),
        within(turn, STEEP),
        within(tilt, STEEP),
        from.bendRadians());
  }

  /** The corner is where the hand is; so far up or down, the tip moves twice as far. */
  private RodPosition bent(RodPosition from, double down) {
    double half = sheet.front.length(0.5 * sheet.bench.design().rod().lengthMeters());
    double bend = from.bendRadians() - Math.atan2(down, Math.max(1, half));
    return new RodPosition(
        from.acrossMeters(),
        from.upMeters(),
        from.alongMeters(),
        from.turnRadians(),
        from.tiltRadians(),
        within(bend, STEEP));
  }

  private static double within(double value, double most) {
    return Math.max(-most, Math.min(most, value));
  }
}
