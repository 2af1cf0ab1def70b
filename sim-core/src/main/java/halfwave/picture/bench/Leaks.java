package halfwave.picture.bench;

import halfwave.bench.Bench;
import halfwave.bench.Condition;
import halfwave.picture.scene.DrawnPart;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** What joins the rod to the chassis where nothing should: side by side, right of the ceramic. */
final class Leaks {

  /**
   * One of them.
   *
   * @param part what it is
   * @param ohms its resistance (Ω)
   * @param box where its sign stands
   */
  record Leak(DrawnPart part, double ohms, Rectangle2D box) {}

  final List<Leak> all = new ArrayList<>();
  final Point2D from;
  final double rail;
  final double chassis;

  Leaks(Bench bench, SheetPlan plan, Wires wires) {
    Condition c = bench.condition();
    from = wires.branch;
    rail = from.getY();
    double tall = plan.roomy ? 26 : 14;
    chassis = rail + tall + (plan.roomy ? 18 : 10);
    add(DrawnPart.LEAK, c.leakageOhms(), tall, plan);
    add(DrawnPart.JUMPER, c.jumperOhms(), tall, plan);
    add(DrawnPart.DEPOSIT, c.depositOhms(), tall, plan);
  }

  private void add(DrawnPart part, double ohms, double tall, SheetPlan plan) {
    if (ohms < Double.POSITIVE_INFINITY) {
      double pitch = plan.roomy ? 30 : 16;
      double x = from.getX() + (plan.roomy ? 44 : 22) + pitch * all.size();
      double half = plan.roomy ? 5 : 3;
      all.add(
          new Leak(
              part,
              ohms,
              new Rectangle2D.Double(
                  x - half, rail + 0.5 * (chassis - rail - tall), 2 * half, tall)));
    }
  }

  /** Right end of what they take up. */
  double end() {
    return all.isEmpty() ? from.getX() : all.get(all.size() - 1).box().getMaxX() + 8;
  }
}
