package halfwave.picture.bench;

import halfwave.picture.Ink;
import halfwave.picture.Palette;
import halfwave.picture.scene.DrawnPart;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** Draws board, chassis, wires and what joins them where nothing should. */
final class WirePainter {

  private final BenchSheet sheet;
  private final Ink ink;

  WirePainter(BenchSheet sheet, Ink ink) {
    this.sheet = sheet;
    this.ink = ink;
  }

  void board(boolean lightOn) {
    SheetPlan plan = sheet.plan;
    Palette p = ink.palette();
    ink.solid(Ink.rounded(plan.board, 5), p.ground(), p.ink(), Ink.WIRE);
    screw(plan.sense);
    screw(plan.common);
    double pair = plan.roomy ? 9 : 6;
    screw(new Point2D.Double(plan.valveTerminals.getX() - pair, plan.board.getY()));
    screw(new Point2D.Double(plan.valveTerminals.getX() + pair, plan.board.getY()));
    double r = plan.roomy ? 5.5 : 4;
    if (lightOn) {
      ink.fill(Ink.disc(sheet.light(), 1.9 * r), Ink.faint(p.accent(), 0.2));
      ink.solid(Ink.disc(sheet.light(), r), p.accent(), p.ink(), Ink.THIN);
    } else {
      ink.solid(Ink.disc(sheet.light(), r), p.sheet(), p.ink(), Ink.THIN);
    }
  }

  private void screw(Point2D at) {
    double r = sheet.plan.roomy ? 4.5 : 3;
    ink.solid(Ink.disc(at, r), ink.palette().metal(), ink.palette().ink(), Ink.THIN);
    ink.line(
        at.getX() - 0.6 * r,
        at.getY() + 0.4 * r,
        at.getX() + 0.6 * r,
        at.getY() - 0.4 * r,
        ink.palette().ink(),
        Ink.FINE);
  }

  void chassis() {
    SheetPlan plan = sheet.plan;
    double from = plan.sense.getX() + (plan.roomy ? 24 : 14);
    ink.chassis(from, plan.sheet.getMaxX() - plan.margin, plan.chassis, plan.roomy ? 12 : 8);
  }

  void groundAndValve() {
    Palette p = ink.palette();
    // under the hops the chassis goes on, so the sheet shows through
    ink.line(sheet.wires.valve, p.sheet(), 4.5);
    ink.line(sheet.wires.valve, p.ink(), Ink.THIN);
    ink.line(sheet.wires.ground, p.ink(), Ink.WIRE);
    ink.dot(sheet.wires.strapFoot);
    ink.dot(sheet.wires.commonFoot);
    if (sheet.wires.groundResistance != null) {
      ink.line(Ink.zigzag(sheet.wires.groundResistance), p.danger(), Ink.WIRE);
    }
    if (sheet.wires.groundOpen) {
      Rectangle2D ends = new Rectangle2D.Double();
      double y = 0.5 * (sheet.plan.chassis + sheet.plan.common.getY());
      ends.setRect(sheet.plan.common.getX() - 9, y - 9, 18, 18);
      ink.line(
          new java.awt.geom.Ellipse2D.Double(ends.getX(), ends.getY(), 18, 18),
          p.danger(),
          Ink.dashed(1.3, 3, 2));
    }
    Point2D screw = sheet.points.chassis();
    ink.ring(screw, sheet.plan.roomy ? 3.5 : 2.5);
  }

  void lead() {
    Palette p = ink.palette();
    Wires w = sheet.wires;
    ink.line(w.lead, p.sheet(), Ink.WIRE + 3.6);
    ink.line(w.lead, p.ink(), Ink.WIRE + 0.5);
    if (w.leadResistance != null) {
      ink.line(Ink.zigzag(w.leadResistance), p.danger(), Ink.WIRE);
    }
    connector();
    if (w.opened != null) {
      for (Point2D end : w.opened) {
        ink.ring(end, sheet.plan.roomy ? 4 : 2.5);
      }
    }
    if (!sheet.rod.endOn) {
      ink.dot(sheet.rod.terminal);
    }
  }

  private void connector() {
    Palette p = ink.palette();
    Rectangle2D box = sheet.wires.connector;
    ink.solid(Ink.rounded(box, 2), p.metal(), p.ink(), Ink.THIN);
    double ohms = sheet.bench.condition().connectorOhms();
    if (ohms > 0 && ohms < Double.POSITIVE_INFINITY) {
      // green or brown, every corroded joint has its crust
      Path2D crust = new Path2D.Double();
      for (int k = 0; k < 5; k++) {
        double y = box.getY() + (k + 0.5) / 5 * box.getHeight();
        double x = box.getX() + (k % 2 == 0 ? 0.15 : 0.7) * box.getWidth();
        crust.append(Ink.disc(new Point2D.Double(x, y), 1.5), false);
      }
      ink.fill(crust, p.danger());
    }
  }

  /** Leak, jumper and deposit, dashed, from the lead's end at the rod to a piece of chassis. */
  void leaks() {
    Leaks leaks = sheet.leaks;
    if (leaks.all.isEmpty()) {
      return;
    }
    Color ink1 = ink.palette().danger();
    double right = leaks.all.get(leaks.all.size() - 1).box().getCenterX();
    ink.line(
        new Line2D.Double(leaks.from.getX(), leaks.rail, right, leaks.rail),
        ink1,
        Ink.dashed(Ink.THIN, 4, 3));
    ink.dot(leaks.from);
    for (Leaks.Leak leak : leaks.all) {
      Rectangle2D box = leak.box();
      double x = box.getCenterX();
      ink.line(
          new Line2D.Double(x, leaks.rail, x, box.getMinY()), ink1, Ink.dashed(Ink.THIN, 4, 3));
      ink.line(
          new Line2D.Double(x, box.getMaxY(), x, leaks.chassis), ink1, Ink.dashed(Ink.THIN, 4, 3));
      if (leak.ohms() < 1 && leak.part() == DrawnPart.JUMPER) {
        ink.line(new Line2D.Double(x, box.getMinY(), x, box.getMaxY()), ink1, Ink.WIRE + 1);
      } else if (leak.part() == DrawnPart.DEPOSIT) {
        oneWay(box, ink1);
      } else {
        ink.line(Ink.zigzag(box), ink1, Ink.THIN + 0.3);
      }
    }
    double from = leaks.all.get(0).box().getMinX() - 8;
    ink.chassis(from, leaks.end(), leaks.chassis, sheet.plan.roomy ? 8 : 5);
  }

  /** A diode's sign, its point towards the chassis: that way a deposit conducts. */
  private void oneWay(Rectangle2D box, Color colour) {
    double x = box.getCenterX();
    double h = 0.35 * box.getHeight();
    double w = box.getWidth() * 0.9;
    double y = box.getCenterY();
    Path2D sign = new Path2D.Double();
    sign.moveTo(x - w, y - h);
    sign.lineTo(x + w, y - h);
    sign.lineTo(x, y + h);
    sign.closePath();
    sign.moveTo(x - w, y + h);
    sign.lineTo(x + w, y + h);
    sign.moveTo(x, box.getMinY());
    sign.lineTo(x, y - h);
    sign.moveTo(x, y + h);
    sign.lineTo(x, box.getMaxY());
    ink.line(sign, colour, Ink.THIN);
  }

  /** The strip where line and control transformer can be reached. */
  void supply() {
    SheetPlan plan = sheet.plan;
    ink.line(
        plan.board.getMaxX(),
        plan.supply.getCenterY(),
        plan.supply.getX(),
        plan.supply.getCenterY(),
        ink.palette().ink(),
        Ink.WIRE);
    ink.solid(Ink.rounded(plan.supply, 3), ink.palette().ground(), ink.palette().ink(), Ink.THIN);
    for (var point : halfwave.instrument.SupplyPoint.values()) {
      screw(sheet.points.of(point));
    }
  }
}
