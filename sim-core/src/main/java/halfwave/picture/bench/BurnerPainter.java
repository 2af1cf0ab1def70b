package halfwave.picture.bench;

import halfwave.flame.BurnerDesign;
import halfwave.flame.HolderKind;
import halfwave.picture.Ink;
import halfwave.picture.PaperLook;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** Draws burner, gas pipe and gas valve. */
final class BurnerPainter {

  private final BenchSheet sheet;
  private final Ink ink;

  BurnerPainter(BenchSheet sheet, Ink ink) {
    this.sheet = sheet;
    this.ink = ink;
  }

  /** What the flame stands in front of. */
  void inside() {
    BurnerDesign burner = sheet.bench.design().burner();
    Rectangle2D inside = BurnerShape.inside(burner, sheet.plan);
    ink.fill(inside, Ink.faint(ink.palette().ground(), 0.9));
    pipe(inside);
    if (burner.holder() == HolderKind.RIBBED) {
      comb(inside);
    }
    if (sheet.drawn.moment().furnace().gasRatio() > 0) {
      streams(inside);
    }
  }

  /** How deep the ribs of a port are drawn. */
  static double ribs(Rectangle2D inside) {
    return Math.min(0.22 * inside.getWidth(), 16);
  }

  private void comb(Rectangle2D inside) {
    double deep = ribs(inside);
    int count = (int) Math.max(4, Math.min(12, inside.getHeight() / 11));
    Path2D ribs = new Path2D.Double();
    double x = inside.getMaxX();
    for (int k = 1; k < count; k++) {
      double y = inside.getY() + k * inside.getHeight() / count;
      ribs.moveTo(x - deep, y);
      ribs.lineTo(x, y);
    }
    ribs.moveTo(x - deep, inside.getY());
    ribs.lineTo(x - deep, inside.getMaxY());
    ink.line(ribs, ink.palette().softInk(), Ink.FINE);
  }

  /** Gas and air on their way; their signs stand still, since the drawing measures no speed. */
  private void streams(Rectangle2D inside) {
    double from = inside.getX() + 0.3 * inside.getWidth();
    double to = inside.getX() + 0.62 * inside.getWidth();
    double head = sheet.plan.roomy ? 5 : 3;
    for (int k = -1; k <= 0; k++) {
      double y = inside.getCenterY() + k * 0.27 * inside.getHeight();
      arrow(from, to, y, head);
    }
  }

  private void arrow(double from, double to, double y, double head) {
    Path2D arrow = new Path2D.Double();
    arrow.moveTo(from, y);
    arrow.lineTo(to, y);
    arrow.moveTo(to - head, y - 0.7 * head);
    arrow.lineTo(to, y);
    arrow.lineTo(to - head, y + 0.7 * head);
    ink.line(arrow, ink.palette().softInk(), Ink.FINE);
  }

  /** From the valve to the orifice in the burner's mouth. */
  private void pipe(Rectangle2D inside) {
    Rectangle2D valve = sheet.plan.valve;
    double y = valve.getCenterY();
    double half = sheet.plan.roomy ? 3 : 2;
    double end = inside.getX() - (sheet.plan.roomy ? 6 : 2);
    Path2D pipe = new Path2D.Double();
    pipe.moveTo(valve.getMaxX(), y - half);
    pipe.lineTo(end - 6, y - half);
    pipe.lineTo(end, y - 0.4 * half);
    pipe.lineTo(end, y + 0.4 * half);
    pipe.lineTo(end - 6, y + half);
    pipe.lineTo(valve.getMaxX(), y + half);
    ink.solid(pipe, ink.palette().metal(), ink.palette().ink(), Ink.FINE);
    double stub = sheet.plan.roomy ? 16 : 8;
    ink.solid(
        new Rectangle2D.Double(valve.getX() - stub, y - half, stub, 2 * half),
        ink.palette().metal(),
        ink.palette().ink(),
        Ink.FINE);
    if (sheet.plan.roomy) {
      air(inside, -1);
      air(inside, 1);
    }
  }

  private void air(Rectangle2D inside, int side) {
    double x = inside.getX() - 12;
    double y = inside.getCenterY() + side * 0.3 * inside.getHeight();
    arrow(x - 10, x + 8, y, 4);
  }

  /** The walls, over the flame's foot. */
  void walls() {
    ink.solid(sheet.burner, ink.palette().metal(), ink.palette().ink(), Ink.THIN);
    scale();
    valve();
  }

  /** Rust and scale on the face and the rim: rougher for every decade. */
  private void scale() {
    double ohms = sheet.bench.condition().burnerScaleOhms();
    if (ohms <= 0) {
      return;
    }
    double decades = ohms == Double.POSITIVE_INFINITY ? 10 : Math.log10(1 + ohms);
    double thick = 0.6 + 0.3 * Math.min(10, decades);
    double r = sheet.bench.design().burner().portRadiusMeters();
    for (int side = -1; side <= 1; side += 2) {
      Point2D from = sheet.plan.zone.at(0, side * r);
      double wall = Math.max(2, sheet.plan.zone.length(BurnerShape.WALL_METERS));
      Path2D rough = new Path2D.Double();
      rough.moveTo(from.getX() - 3 * wall, from.getY() + side * (wall + 0.5));
      for (int k = 1; k <= 8; k++) {
        double jag = k % 2 == 0 ? 0.2 : 1;
        rough.lineTo(
            from.getX() - 3 * wall + 3 * wall * k / 8, from.getY() + side * (wall + thick * jag));
      }
      for (int k = 1; k <= 6; k++) {
        double jag = k % 2 == 0 ? 0.2 : 1;
        rough.lineTo(from.getX() + thick * jag, from.getY() + side * wall * (1 - k / 6.0));
      }
      rough.lineTo(from.getX(), from.getY());
      rough.lineTo(from.getX(), from.getY() + side * wall);
      rough.closePath();
      ink.solid(
          rough,
          PaperLook.mixed(ink.palette().microamps(), ink.palette().ink(), 0.45),
          ink.palette().ink(),
          0.6);
    }
  }

  /** The usual sign of a valve, black while it is shut; with its coil on the side of its wires. */
  private void valve() {
    Rectangle2D v = sheet.plan.valve;
    boolean open = sheet.drawn.moment().furnace().gasRatio() > 0;
    ink.solid(Ink.rounded(v, 3), ink.palette().sheet(), ink.palette().ink(), Ink.THIN);
    double in = 0.16 * v.getWidth();
    double up = 0.2 * v.getHeight();
    Path2D sign = new Path2D.Double();
    sign.moveTo(v.getX() + in, v.getY() + up);
    sign.lineTo(v.getMaxX() - in, v.getMaxY() - up);
    sign.lineTo(v.getMaxX() - in, v.getY() + up);
    sign.lineTo(v.getX() + in, v.getMaxY() - up);
    sign.closePath();
    ink.solid(
        sign, open ? ink.palette().sheet() : ink.palette().ink(), ink.palette().ink(), Ink.THIN);
  }

  /** Where something is on the axis, a fine dash-dot line as on every drawing. */
  void axis() {
    Point2D from = sheet.plan.zone.at(0, 0);
    double to = sheet.plan.zone.window().getMaxX();
    ink.line(
        new Line2D.Double(from.getX() + 2, from.getY(), to, from.getY()),
        Ink.faint(ink.palette().softInk(), 0.55),
        new java.awt.BasicStroke(
            0.7f,
            java.awt.BasicStroke.CAP_BUTT,
            java.awt.BasicStroke.JOIN_MITER,
            1,
            new float[] {14, 4, 2, 4},
            0));
  }
}
