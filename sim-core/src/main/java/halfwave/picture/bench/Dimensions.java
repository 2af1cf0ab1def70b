package halfwave.picture.bench;

import halfwave.picture.Ink;
import halfwave.picture.flame.FlameZone;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** The rod's distance from the burner's face. */
final class Dimensions {

  final Point2D from;
  final Point2D to;
  final double meters;
  final boolean shown;
  private final BenchSheet sheet;

  Dimensions(BenchSheet sheet) {
    this.sheet = sheet;
    FlameZone zone = sheet.plan.zone;
    meters = sheet.bench.rod().tip().zMeters();
    double radius = sheet.bench.design().burner().portRadiusMeters();
    double mantle = zone.length(sheet.sheets().mantleRadiusMeters(Math.max(0, meters)));
    double up = Math.max(mantle, zone.length(radius + BurnerShape.WALL_METERS)) + 9;
    double y = zone.at(0, 0).getY() - up;
    double tip = zone.at(sheet.bench.rod().tip()).getX();
    from = new Point2D.Double(zone.at(0, 0).getX(), y);
    to = new Point2D.Double(tip, y);
    Rectangle2D window = zone.window();
    shown = sheet.plan.roomy && meters > 2e-3 && tip < window.getMaxX() && y > window.getMinY() - 4;
  }

  void paint(Ink ink) {
    if (!shown) {
      return;
    }
    ink.dimension(from.getX(), from.getY(), to.getX(), to.getY());
    double radius = sheet.bench.design().burner().portRadiusMeters();
    double wall = sheet.plan.zone.at(0, -radius - BurnerShape.WALL_METERS).getY();
    ink.line(
        from.getX(),
        from.getY() + 5,
        from.getX(),
        wall - 2,
        Ink.faint(ink.palette().softInk(), 0.6),
        0.6);
    if (sheet.rod.endOn) {
      ink.line(
          to.getX(),
          to.getY() + 5,
          to.getX(),
          sheet.rod.tip.getY(),
          Ink.faint(ink.palette().softInk(), 0.6),
          0.6);
    }
  }
}
