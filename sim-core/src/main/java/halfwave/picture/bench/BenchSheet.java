package halfwave.picture.bench;

import halfwave.bench.Bench;
import halfwave.flame.FlameSheets;
import halfwave.picture.Ink;
import halfwave.picture.flame.FlameBody;
import halfwave.picture.scene.DrawingStyle;
import halfwave.picture.scene.DrawnBench;
import halfwave.picture.scene.DrawnPart;
import halfwave.picture.scene.DrawnView;
import halfwave.sequence.Hooked;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Everything on a sheet, put in its place before anything is painted. */
final class BenchSheet {

  final DrawnBench drawn;
  final DrawingStyle style;
  final Bench bench;
  final SheetPlan plan;
  final RodOnSheet rod;
  final Wires wires;
  final Leaks leaks;
  final BenchPoints points;
  final MeterOnSheet meter;
  final FrontView front;
  final FlameBody body;
  final Shape burner;
  final @Nullable Shape spark;
  final Map<DrawnPart, Shape> shapes = new EnumMap<>(DrawnPart.class);
  final DisorderMarks disorders;

  BenchSheet(double width, double height, DrawnBench drawn, DrawingStyle style) {
    this.drawn = drawn;
    this.style = style;
    bench = drawn.bench();
    plan = new SheetPlan(width, height, bench.design(), style.view());
    rod = new RodOnSheet(bench, plan);
    Hooked hooked = drawn.moment().hooked();
    wires = new Wires(bench, plan, rod, hooked);
    leaks = new Leaks(bench, plan, wires);
    points = new BenchPoints(bench, plan, rod, wires);
    meter = new MeterOnSheet(bench, plan, wires, points, hooked);
    front = new FrontView(bench, plan, rod);
    body = new FlameBody(sheets());
    burner = BurnerShape.of(bench.design().burner(), plan);
    spark = spark();
    shapes();
    disorders = new DisorderMarks(this);
  }

  FlameSheets sheets() {
    return drawn.flame().field().sheets();
  }

  private @Nullable Shape spark() {
    if (bench.design().spark() == null) {
      return null;
    }
    var electrode = bench.design().spark().electrode();
    Area inside =
        new Area(
            RodOnSheet.outline(
                plan.zone, electrode, Math.max(1.2, plan.zone.length(electrode.radiusMeters()))));
    inside.intersect(new Area(plan.zone.window()));
    return inside;
  }

  /** The light on the board. */
  Point2D light() {
    return new Point2D.Double(
        plan.board.getX() + (plan.roomy ? 20 : 12), plan.board.getMaxY() - (plan.roomy ? 17 : 12));
  }

  /** Outline of the flame as it is seen whole, behind the cut. */
  Path2D flameOutline() {
    Path2D path = new Path2D.Double();
    int steps = 40;
    double length = body.lengthMeters();
    for (int k = 0; k <= 2 * steps; k++) {
      boolean back = k > steps;
      double z = length * (back ? 2 * steps - k : k) / steps;
      double rise = style.view() == DrawnView.SIDE ? sheets().axisRiseMeters(z) : 0;
      double r = body.radiusMeters(z) * (back ? 1 : -1);
      Point2D p = plan.zone.at(z, r - rise);
      if (k == 0) {
        path.moveTo(p.getX(), p.getY());
      } else {
        path.lineTo(p.getX(), p.getY());
      }
    }
    path.closePath();
    return path;
  }

  private void shapes() {
    shapes.put(DrawnPart.CHASSIS, chassis());
    shapes.put(DrawnPart.SUPPLY, Ink.rounded(plan.supply, 4));
    shapes.put(DrawnPart.BOARD, Ink.rounded(plan.board, 5));
    shapes.put(DrawnPart.GROUND_STRAP, wide(wires.ground, 7));
    shapes.put(DrawnPart.GAS_VALVE, valve());
    shapes.put(DrawnPart.BURNER, burner(4));
    if (drawn.burns()) {
      Area flame = new Area(flameOutline());
      flame.intersect(new Area(plan.zone.window()));
      shapes.put(DrawnPart.FLAME, flame);
    }
    if (front.shown) {
      shapes.put(DrawnPart.FRONT, front.frame);
    }
    if (spark != null && !((Area) spark).isEmpty()) {
      shapes.put(DrawnPart.IGNITER, spark);
    } else if (front.shown) {
      shapes.put(DrawnPart.IGNITER, Ink.disc(front.igniter, 12));
    }
    shapes.put(DrawnPart.SENSE_LEAD, wide(wires.lead, 7));
    shapes.put(DrawnPart.INSULATOR, rod.ceramic);
    shapes.put(DrawnPart.ROD, rod.metal);
    for (Leaks.Leak leak : leaks.all) {
      shapes.put(leak.part(), Ink.rounded(leak.box(), 3));
    }
    shapes.put(DrawnPart.METER, Ink.rounded(plan.meter, 8));
    shapes.put(DrawnPart.SENSE_TERMINAL, Ink.disc(plan.sense, 6));
    shapes.put(DrawnPart.COMMON_TERMINAL, Ink.disc(plan.common, 6));
    double pair = plan.roomy ? 15 : 10;
    shapes.put(
        DrawnPart.VALVE_TERMINALS,
        new RoundRectangle2D.Double(
            plan.valveTerminals.getX() - pair, plan.board.getY() - 6, 2 * pair, 12, 8, 8));
    shapes.put(DrawnPart.CONNECTOR, Ink.rounded(wires.connector, 3));
    shapes.put(DrawnPart.STATUS_LIGHT, Ink.disc(light(), plan.roomy ? 7 : 5));
  }

  private Shape chassis() {
    double from = plan.sense.getX() + (plan.roomy ? 18 : 10);
    return new Rectangle2D.Double(
        from, plan.chassis - 2, plan.sheet.getMaxX() - plan.margin - from, 9);
  }

  /** Both walls with what is between them. */
  private Shape burner(double more) {
    Rectangle2D box = burner.getBounds2D();
    return new Rectangle2D.Double(
        box.getX(), box.getY() - more, box.getWidth(), box.getHeight() + 2 * more);
  }

  private Shape valve() {
    return plan.valve;
  }

  static Shape wide(Shape line, double width) {
    return new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
        .createStrokedShape(line);
  }
}
