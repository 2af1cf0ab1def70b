package halfwave.picture;

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
import java.awt.geom.CubicCurve2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
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

  MeterOnSheet(Bench bench, SheetPlan plan, Wires wires, Points points, @Nullable Hooked hooked) {
    body = plan.meter;
    double edge = plan.roomy ? 9 : 5;
    plate =
        new Rectangle2D.Double(
            body.getX() + edge,
            body.getY() + edge,
            body.getWidth() - 2 * edge,
            plan.roomy ? 38 : 18);
    double low = body.getMaxY() - (plan.roomy ? 12 : 5);
    redJack = new Point2D.Double(body.getX() + 0.34 * body.getWidth(), low);
    blackJack = new Point2D.Double(body.getX() + 0.66 * body.getWidth(), low);
    HookUp hookUp = hooked == null ? null : hooked.hookUp();
    wire = hookUp instanceof WireInFlame ? wire(bench, plan) : null;
    redEnd = end(hookUp, true, wires, points);
    blackEnd = end(hookUp, false, wires, points);
    redLead = redEnd == null ? coil(redJack, plan, -1) : run(redJack, redEnd, plan);
    blackLead = blackEnd == null ? coil(blackJack, plan, 1) : run(blackJack, blackEnd, plan);
  }

  private static Line2D wire(Bench bench, SheetPlan plan) {
    double rim = bench.design().burner().portRadiusMeters();
    // from above it is turned about the axis into the cut; round the burner the flame is the same
    Point2D in = plan.zone.at(WIRE_ALONG_METERS, rim - WIRE_IN_METERS);
    Point2D out = plan.zone.at(WIRE_ALONG_METERS, rim + WIRE_OUT_METERS);
    double handle = plan.roomy ? 20 : 8;
    return new Line2D.Double(in.getX(), in.getY(), out.getX() + 0.4 * handle, out.getY() + handle);
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

  /** A cable that hangs from the jack and comes to its end from above. */
  private static Shape run(Point2D from, Point2D to, SheetPlan plan) {
    double away = Math.min(90, 20 + 0.45 * from.distance(to));
    boolean above = to.getY() < plan.meter.getMinY();
    if (above) {
      // round the right side of the meter, never across its face
      double right = plan.meter.getMaxX() + 10 + 0.12 * (from.getX() - plan.meter.getX());
      Path2D path = new Path2D.Double();
      path.moveTo(from.getX(), from.getY());
      path.curveTo(
          from.getX(),
          from.getY() + 26,
          right,
          from.getY() + 22,
          right,
          0.5 * (from.getY() + plan.meter.getMinY()));
      path.curveTo(
          right, plan.meter.getMinY() - 6, to.getX(), to.getY() + 26, to.getX(), to.getY());
      return path;
    }
    return new CubicCurve2D.Double(
        from.getX(),
        from.getY(),
        from.getX(),
        from.getY() + away,
        to.getX(),
        to.getY() - away,
        to.getX(),
        to.getY());
  }

  /** A few loops under the meter. */
  private static Shape coil(Point2D jack, SheetPlan plan, int side) {
    double r = plan.roomy ? 9 : 4;
    double down = jack.getY() + (plan.roomy ? 24 : 9);
    Path2D path = new Path2D.Double();
    path.moveTo(jack.getX(), jack.getY());
    for (int n = 0; n <= 40; n++) {
      double turn = -0.5 * Math.PI + side * n * Math.PI / 8;
      double shrink = 1 - 0.006 * n;
      double x = jack.getX() + side * r * 0.5 + r * 1.3 * shrink * Math.cos(turn);
      double y = down + r * shrink * Math.sin(turn);
      path.lineTo(x, y);
    }
    return path;
  }

  /** Where leads can be put. */
  interface Points {
    java.util.Optional<Point2D> of(Point point);

    Point2D of(SupplyPoint point);
  }
}
