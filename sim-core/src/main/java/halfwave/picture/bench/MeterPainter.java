package halfwave.picture.bench;

import halfwave.picture.Ink;
import halfwave.picture.Palette;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import org.jspecify.annotations.Nullable;

/** Draws the meter and its leads. */
final class MeterPainter {

  private final BenchSheet sheet;
  private final Ink ink;

  MeterPainter(BenchSheet sheet, Ink ink) {
    this.sheet = sheet;
    this.ink = ink;
  }

  void paint() {
    MeterOnSheet m = sheet.meter;
    Palette p = ink.palette();
    if (m.wire != null) {
      Line2D wire = m.wire;
      ink.line(wire, p.ink(), 2);
      double x = wire.getX2() - wire.getX1();
      double y = wire.getY2() - wire.getY1();
      Line2D handle =
          new Line2D.Double(
              wire.getX1() + 0.62 * x, wire.getY1() + 0.62 * y, wire.getX2(), wire.getY2());
      ink.graphics().setStroke(new BasicStroke(6, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
      ink.graphics().setPaint(p.ink());
      ink.graphics().draw(handle);
    }
    lead(m.blackLead, p.blackLead(), m.blackEnd);
    lead(m.redLead, p.redLead(), m.redEnd);
    ink.solid(Ink.rounded(m.body, 8), p.ground(), p.ink(), Ink.WIRE);
    ink.solid(Ink.rounded(m.plate, 3), p.sheet(), p.hairline(), Ink.THIN);
    jack(m.redJack, p.redLead());
    jack(m.blackJack, p.blackLead());
  }

  private void jack(Point2D at, Color colour) {
    double r = sheet.plan.roomy ? 4 : 2.5;
    ink.solid(Ink.disc(at, r), colour, ink.palette().ink(), Ink.FINE);
    ink.fill(Ink.disc(at, 0.4 * r), ink.palette().sheet());
  }

  /** The end of a coiled lead. */
  private void prod(Shape lead, Color colour, double width) {
    Point2D last = ((Path2D) lead).getCurrentPoint();
    double side = Math.signum(last.getX() - lead.getBounds2D().getCenterX());
    Point2D tip = new Point2D.Double(last.getX() + side * 8 * width / 2.6, last.getY() + 3);
    ink.line(new Line2D.Double(last, tip), colour, 2 * width);
    ink.line(
        new Line2D.Double(tip.getX(), tip.getY(), tip.getX() + side * 2.4 * width, tip.getY() + 2),
        ink.palette().softInk(),
        1.4);
  }

  private void lead(Shape lead, Color colour, @Nullable Point2D end) {
    double width = sheet.plan.roomy ? 2.6 : 1.8;
    // the edge tells the leads apart where they cross
    ink.line(lead, ink.palette().sheet(), width + 1.8);
    ink.line(lead, colour, width);
    if (end == null) {
      prod(lead, colour, width);
    } else {
      double r = sheet.plan.roomy ? 3.6 : 2.4;
      ink.solid(Ink.disc(end, r), colour, ink.palette().sheet(), Ink.THIN);
    }
  }
}
