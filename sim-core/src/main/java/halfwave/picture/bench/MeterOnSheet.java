package halfwave.picture.bench;

import halfwave.bench.Bench;
import halfwave.circuit.Point;
import halfwave.instrument.HookUp;
import halfwave.instrument.HookUp.Across;
import halfwave.instrument.HookUp.AcrossSupply;
import halfwave.instrument.HookUp.InSenseLead;
import halfwave.instrument.HookUp.WireInFlame;
import halfwave.instrument.SupplyPoint;
import halfwave.sequence.Hooked;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The meter and its two leads, which end at a point or lie coiled beside it. */
final class MeterOnSheet {

  /** The tip of a wire held in the flame, as the engine has it (m). */
  private static final double WIRE_OUT_METERS = 4e-3;

  private static final double WIRE_IN_METERS = 2e-3;
  private static final double WIRE_ALONG_METERS = 4e-3;

  final Rectangle2D body;
  final Rectangle2D plate;
  final Point2D redJack;
  final Point2D blackJack;
  final Shape redLead;
  final Shape blackLead;
  final @Nullable Point2D redEnd;
  final @Nullable Point2D blackEnd;

  /** The bare wire in the flame, or null. */
  final @Nullable Line2D wire;

  private final SheetPlan plan;
  private final double rodX;

  MeterOnSheet(Bench bench, SheetPlan plan, Wires wires, Points points, @Nullable Hooked hooked) {
    this.plan = plan;
    rodX = wires.branch.getX();
    body = plan.meter;
    double edge = plan.roomy ? 9 : 4;
    double low = body.getMaxY() - (plan.roomy ? 13 : 7);
    plate =
        new Rectangle2D.Double(
            body.getX() + edge,
            body.getY() + edge,
            body.getWidth() - 2 * edge,
            low - body.getY() - edge - (plan.roomy ? 14 : 7));
    redJack = new Point2D.Double(body.getX() + 0.34 * body.getWidth(), low);
    blackJack = new Point2D.Double(body.getX() + 0.66 * body.getWidth(), low);
    HookUp hookUp = hooked == null ? null : hooked.hookUp();
    wire = hookUp instanceof WireInFlame ? wire(bench) : null;
    redEnd = end(hookUp, true, wires, points);
    blackEnd = end(hookUp, false, wires, points);
    redLead = redEnd == null ? coil(redJack, -1) : run(redJack, redEnd, true);
    blackLead = blackEnd == null ? coil(blackJack, 1) : run(blackJack, blackEnd, false);
  }

  private Line2D wire(Bench bench) {
    double rim = bench.design().burner().portRadiusMeters();
    // from above it is turned about the axis into the cut; round the burner the flame is the same
    Point2D in = plan.zone.at(WIRE_ALONG_METERS, rim - WIRE_IN_METERS);
    Point2D out = plan.zone.at(WIRE_ALONG_METERS, rim + WIRE_OUT_METERS);
    double handle = plan.roomy ? 18 : 8;
    return new Line2D.Double(in.getX(), in.getY(), out.getX(), out.getY() + handle);
  }

  private @Nullable Point2D end(@Nullable HookUp hookUp, boolean red, Wires wires, Points points) {
    if (hookUp instanceof Across across) {
      return points.of(red ? across.red() : across.black()).orElse(null);
    } else if (hookUp instanceof InSenseLead series && wires.opened != null) {
      return wires.opened[red == series.redTowardsBoard() ? 0 : 1];
    } else if (hookUp instanceof AcrossSupply supply) {
      return points.of(red ? supply.red() : supply.black());
    } else if (hookUp instanceof WireInFlame held && wire != null) {
      return red == held.redOnWire() ? wire.getP2() : points.of(held.other()).orElse(null);
    }
    return null;
  }

  /**
   * A cable laid so that it crosses as little as can be: over the meter to the rod, or down beside
   * the sense lead and along the chassis. The red one keeps outside of the black one all the way.
   */
  private Shape run(Point2D from, Point2D to, boolean red) {
    double apart = plan.roomy ? 8 : 5;
    double bend = plan.roomy ? 11 : 6;
    boolean onRod = to.getX() > body.getMaxX() && to.getY() < plan.zone.at(0, 0).getY();
    if (to.getY() < body.getMinY() + 4) {
      double right = body.getMaxX() + (red ? apart + 4 : 4 + 2 * apart);
      double over = body.getMinY() + (plan.roomy ? (red ? -12 : -4) : (red ? 6 : 11));
      // up beside the ceramic, not across it
      double beside = to.getX() == rodX ? to.getX() - (plan.roomy ? 20 : 11) : to.getX();
      return Cable.of(
          bend,
          from,
          at(from.getX(), body.getMaxY() + (red ? apart : 2 * apart)),
          at(right, body.getMaxY() + (red ? apart : 2 * apart)),
          at(right, over),
          at(beside, over),
          at(beside, to.getY() + (beside == to.getX() ? 1 : 9)),
          to);
    } else if (onRod) {
      double level = body.getMaxY() + (red ? apart : 2 * apart);
      return to.getY() > level
          ? Cable.of(
              bend,
              from,
              at(from.getX(), level),
              at(to.getX() - 24, level),
              at(to.getX() - 24, to.getY()),
              to)
          : Cable.of(
              bend,
              from,
              at(from.getX(), level),
              at(body.getMaxX() + 2 * bend, level),
              at(body.getMaxX() + 2 * bend, to.getY()),
              to);
    }
    double lane = plan.sense.getX() + (red ? apart + 4 : 4 + 2 * apart);
    double level = body.getMaxY() + (red ? apart : 2 * apart);
    if (to.getX() < lane + 4) {
      return Cable.of(
          bend, from, at(from.getX(), level), at(lane, level), at(lane, to.getY() - bend), to);
    }
    boolean low = to.getY() > plan.chassis - 3;
    double along =
        low ? plan.chassis + (red ? 3 : 2) * apart : plan.chassis - (red ? 1 : 2) * apart;
    return Cable.of(
        bend,
        from,
        at(from.getX(), level),
        at(lane, level),
        at(lane, along),
        at(to.getX(), along),
        to);
  }

  private static Point2D at(double x, double y) {
    return new Point2D.Double(x, y);
  }

  /** A few loops under the meter, and the prod. */
  private Shape coil(Point2D jack, int side) {
    double r = plan.roomy ? 9 : 4;
    double middle = jack.getX() + side * (plan.roomy ? 6 : 3);
    double down = body.getMaxY() + (plan.roomy ? 17 : 8);
    Path2D path = new Path2D.Double();
    path.moveTo(jack.getX(), jack.getY());
    path.lineTo(jack.getX(), body.getMaxY());
    for (int n = 0; n <= 52; n++) {
      double turn = -0.5 * Math.PI + side * n * Math.PI / 12;
      double grow = 0.72 + 0.011 * n;
      path.lineTo(
          middle + 1.25 * r * grow * Math.cos(turn), down + 0.75 * r * grow * Math.sin(turn));
    }
    path.lineTo(middle + side * 2.6 * r, down + 0.9 * r);
    return path;
  }

  /** Where leads can be put. */
  interface Points {
    Optional<Point2D> of(Point point);

    Point2D of(SupplyPoint point);
  }
}
