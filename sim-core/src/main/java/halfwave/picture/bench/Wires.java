package halfwave.picture.bench;

import halfwave.bench.Bench;
import halfwave.bench.Condition;
import halfwave.instrument.HookUp;
import halfwave.instrument.HookUp.InSenseLead;
import halfwave.instrument.LeadEnd;
import halfwave.sequence.Hooked;
import java.awt.geom.Arc2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import org.jspecify.annotations.Nullable;

/** Where the wires run, and where they end in nothing. */
final class Wires {

  private static final double HOP = 5;

  /** A lead or ground with more than this is a broken one to look at (Ω). */
  static final double BROKEN_OHMS = 1e8;

  final Path2D lead = new Path2D.Double();
  final Path2D ground = new Path2D.Double();
  final Path2D valve = new Path2D.Double();
  final Rectangle2D connector;
  final boolean connectorOff;
  final boolean leadBroken;
  final boolean groundOpen;

  /** Where a resistance sits in the way, or null. */
  final @Nullable Rectangle2D leadResistance;

  final @Nullable Rectangle2D groundResistance;

  /** The two ends of an opened lead, the one towards the board first; null while it is whole. */
  final Point2D @Nullable [] opened;

  /** The lead's end at the board. */
  final Point2D leadEnd;

  /** Where leaks branch off above the rod. */
  final Point2D branch;

  /** Where burner and common meet the chassis. */
  final Point2D strapFoot;

  final Point2D commonFoot;

  Wires(Bench bench, SheetPlan plan, RodOnSheet rod, @Nullable Hooked hooked) {
    Condition condition = bench.condition();
    LeadEnd end = hooked == null ? null : seriesEnd(hooked.hookUp());
    boolean roomy = plan.roomy;
    double x = plan.sense.getX();
    double up = roomy ? 8 : 3;
    double tall = roomy ? 16 : 8;
    connectorOff = condition.connectorOhms() >= BROKEN_OHMS || end == LeadEnd.BOARD;
    double lift = connectorOff ? (roomy ? 12 : 6) : 0;
    double aside = connectorOff ? (roomy ? 9 : 5) : 0;
    connector =
        new Rectangle2D.Double(
            x + aside - (roomy ? 5 : 3),
            plan.sense.getY() - up - lift - tall,
            roomy ? 10 : 6,
            tall);
    leadEnd = new Point2D.Double(x + aside, connector.getCenterY());
    if (!connectorOff) {
      lead.moveTo(x, plan.sense.getY());
      lead.lineTo(x, connector.getMaxY());
    }
    lead.moveTo(x + aside, connector.getMinY());
    double corner = plan.leadCorner.getY();
    double middle = breakAt(plan);
    if (connectorOff) {
      lead.lineTo(x + aside, connector.getMinY() - 3);
      lead.lineTo(x, connector.getMinY() - 3 - aside);
    }
    leadBroken = condition.leadExtraOhms() >= BROKEN_OHMS;
    boolean resists = condition.leadExtraOhms() > 0 && !leadBroken;
    leadResistance = resists ? new Rectangle2D.Double(x - 5, middle - 14, 10, 28) : null;
    if (leadBroken) {
      lead.lineTo(x, middle + 9);
      lead.lineTo(x + 3, middle + 5);
      lead.moveTo(x - 3, middle - 5);
      lead.lineTo(x, middle - 9);
    } else if (resists) {
      lead.lineTo(x, middle + 14);
      lead.moveTo(x, middle - 14);
    }
    lead.lineTo(x, corner);
    double far = rod.terminal.getX();
    if (end == LeadEnd.ROD) {
      double gap = roomy ? 26 : 14;
      opened =
          new Point2D[] {
            new Point2D.Double(far - 12 - gap, corner), new Point2D.Double(far - 12, corner)
          };
      lead.lineTo(far - 12 - gap, corner);
      lead.moveTo(far - 12, corner);
    } else {
      opened =
          end == LeadEnd.BOARD
              ? new Point2D[] {
                new Point2D.Double(x, plan.sense.getY() - up), (Point2D) leadEnd.clone()
              }
              : null;
    }
    lead.lineTo(far, corner);
    lead.lineTo(far, rod.terminal.getY());
    branch = new Point2D.Double(far, corner);

    groundOpen = condition.groundExtraOhms() >= BROKEN_OHMS;
    double wall = BurnerShape.bottom(bench.design().burner(), plan);
    double strap = plan.zone.at(0, 0).getX() - (roomy ? 22 : 0.72 * plan.tubeLength);
    strapFoot = new Point2D.Double(strap, plan.chassis);
    commonFoot = new Point2D.Double(plan.common.getX(), plan.chassis);
    ground.moveTo(strap, wall);
    ground.lineTo(strap, plan.chassis);
    double half = 0.5 * (plan.chassis + plan.common.getY());
    groundResistance = ground(plan, condition.groundExtraOhms(), half, roomy ? 11 : 6);
    valve(plan);
  }

  /** Height at which a lead is drawn broken: where words beside it have room. */
  static double breakAt(SheetPlan plan) {
    return 0.5 * (plan.meter.getMaxY() + plan.valve.getY()) - (plan.roomy ? 0 : 4);
  }

  private @Nullable Rectangle2D ground(SheetPlan plan, double ohms, double half, double room) {
    double x = plan.common.getX();
    ground.moveTo(x, plan.common.getY());
    if (groundOpen) {
      ground.lineTo(x, half + 0.6 * room);
      ground.lineTo(x + 4, half + 0.1 * room);
      ground.moveTo(x - 4, half - 0.1 * room);
      ground.lineTo(x, half - 0.6 * room);
      ground.lineTo(x, plan.chassis);
      return null;
    }
    if (ohms > 0) {
      ground.lineTo(x, half + room);
      ground.moveTo(x, half - room);
      ground.lineTo(x, plan.chassis);
      return new Rectangle2D.Double(x - 5, half - room, 10, 2 * room);
    }
    ground.lineTo(x, plan.chassis);
    return null;
  }

  private void valve(SheetPlan plan) {
    for (int side = -1; side <= 1; side += 2) {
      double x = plan.valveTerminals.getX() + side * (plan.roomy ? 9 : 6);
      valve.moveTo(x, plan.board.getY());
      valve.lineTo(x, plan.chassis + HOP);
      valve.append(
          new Arc2D.Double(x - HOP, plan.chassis - HOP, 2 * HOP, 2 * HOP, 270, 180, Arc2D.OPEN),
          true);
      valve.lineTo(x, plan.valve.getMaxY());
    }
  }

  private static @Nullable LeadEnd seriesEnd(HookUp hookUp) {
    return hookUp instanceof InSenseLead series ? series.end() : null;
  }
}
