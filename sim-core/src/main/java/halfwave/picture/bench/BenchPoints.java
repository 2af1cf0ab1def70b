package halfwave.picture.bench;

import halfwave.bench.Bench;
import halfwave.circuit.Point;
import halfwave.flame.Rod;
import halfwave.instrument.HookUp;
import halfwave.instrument.SupplyPoint;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Where a test lead reaches each point of the sense circuit and of the supply. */
final class BenchPoints implements MeterOnSheet.Points {

  private final SheetPlan plan;
  private final RodOnSheet rod;
  private final Wires wires;
  private final double rim;
  private final @Nullable Point2D probe;

  BenchPoints(Bench bench, SheetPlan plan, RodOnSheet rod, Wires wires) {
    this.plan = plan;
    this.rod = rod;
    this.wires = wires;
    rim = bench.design().burner().portRadiusMeters();
    probe = bench.design().spark() == null ? null : root(bench.design().spark().electrode());
  }

  private Point2D root(Rod electrode) {
    Point2D at = plan.zone.at(electrode.path().get(0));
    Rectangle2D window = plan.zone.window();
    return new Point2D.Double(
        Math.max(window.getMinX(), Math.min(window.getMaxX(), at.getX())),
        Math.max(window.getMinY(), Math.min(window.getMaxY(), at.getY())));
  }

  @Override
  public Optional<Point2D> of(Point point) {
    return Optional.ofNullable(
        switch (point) {
          case COMMON -> plan.common;
          case TERMINAL -> plan.sense;
          case LEAD -> wires.leadEnd;
          case ROD -> rod.terminal;
          case ROD_SURFACE -> rod.surface;
          case BURNER_SURFACE -> plan.zone.at(0, rim);
          case CHASSIS -> chassis();
          case PROBE -> probe;
          case EMF, FEED, PLASMA, WIRE, OPENED -> null;
        });
  }

  /** A screw in the chassis, right of everything that joins it. */
  Point2D chassis() {
    double x = Math.max(wires.strapFoot.getX(), plan.common.getX()) + (plan.roomy ? 40 : 20);
    return new Point2D.Double(Math.min(x, plan.sheet.getMaxX() - plan.margin - 10), plan.chassis);
  }

  @Override
  public Point2D of(SupplyPoint point) {
    double pitch = plan.supply.getWidth() / SupplyPoint.values().length;
    return new Point2D.Double(
        plan.supply.getX() + (point.ordinal() + 0.5) * pitch, plan.supply.getCenterY());
  }

  /** The nearest that a lead reaches, within a distance. */
  Optional<Point> near(Point2D place, double radius) {
    Point nearest = null;
    double least = radius;
    for (Point point : Point.values()) {
      if (HookUp.REACHABLE.contains(point)) {
        double distance = of(point).map(p -> p.distance(place)).orElse(Double.MAX_VALUE);
        if (distance <= least) {
          least = distance;
          nearest = point;
        }
      }
    }
    return Optional.ofNullable(nearest);
  }
}
