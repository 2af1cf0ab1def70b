package halfwave.picture.bench;

import halfwave.bench.SparkElectrode;
import halfwave.board.Ignition;
import halfwave.flame.FlameSheets;
import halfwave.flame.Place;
import halfwave.flame.Rod;
import halfwave.picture.Ink;
import halfwave.picture.Palette;
import halfwave.picture.PaperLook;
import halfwave.picture.scene.DrawnPart;
import java.awt.Color;
import java.awt.RadialGradientPaint;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** Draws the row of burners as seen from the front. */
final class FrontPainter {

  private final BenchSheet sheet;
  private final FrontView view;
  private final Ink ink;

  FrontPainter(BenchSheet sheet, Ink ink) {
    this.sheet = sheet;
    this.view = sheet.front;
    this.ink = ink;
  }

  /** Paints it, with what the rod can be gripped by or without. */
  void paint(boolean grips) {
    if (!view.shown) {
      return;
    }
    Shape clip = ink.graphics().getClip();
    ink.graphics().clip(view.frame);
    Palette p = ink.palette();
    double r = view.length(sheet.bench.design().burner().portRadiusMeters());
    double wall = Math.max(1.5, view.length(FrontView.wallMeters()));
    plate(p);
    others(p);
    ink.solid(Ink.disc(view.middle, r + wall), p.metal(), p.ink(), Ink.THIN);
    ink.solid(Ink.disc(view.middle, r), p.ground(), p.ink(), Ink.FINE);
    flame(r);
    axes(r);
    rod(grips);
    offCenter(r);
    SparkElectrode spark = sheet.bench.design().spark();
    if (spark != null) {
      bar(spark.electrode(), p.metal());
    }
    igniter();
    ink.graphics().setClip(clip);
  }

  /** From the side a flame may rise behind this view: paper under it keeps both apart. */
  private void plate(Palette p) {
    Shape flame = sheet.shapes.get(DrawnPart.FLAME);
    if (sheet.rod.endOn && flame != null && flame.intersects(view.frame)) {
      Rectangle2D f = view.frame;
      Rectangle2D inner =
          new Rectangle2D.Double(f.getX() + 1, f.getY() + 1, f.getWidth() - 2, f.getHeight() - 2);
      ink.solid(Ink.rounded(inner, 8), Ink.faint(p.sheet(), 0.93), p.hairline(), Ink.THIN);
    }
  }

  /** The signs of the other burners, lit ones blue, joined by the way of the flame. */
  private void others(Palette p) {
    if (view.others.isEmpty()) {
      return;
    }
    double y = view.middle.getY();
    ink.line(view.others.get(0).getX(), y, view.middle.getX(), y, Ink.faint(p.softInk(), 0.8), 3.4);
    ink.line(view.others.get(0).getX(), y, view.middle.getX(), y, p.sheet(), 1.8);
    int lit = burns() ? sheet.drawn.moment().furnace().litCount() : 0;
    for (int k = 0; k < view.others.size(); k++) {
      Ellipse2D sign = Ink.disc(view.others.get(k), view.signRadius);
      ink.solid(sign, p.ground(), p.ink(), Ink.THIN);
      if (k < lit) {
        ink.fill(sign, Ink.faint(p.flameMantle(), 0.8));
        ink.fill(Ink.disc(view.others.get(k), 0.5 * view.signRadius), p.flameCone());
        ink.line(sign, p.ink(), Ink.THIN);
      }
    }
  }

  private boolean burns() {
    return sheet.drawn.flame().burning();
  }

  /** Mantle and cone where the rod stands. */
  private void flame(double r) {
    if (!sheet.drawn.burns()) {
      return;
    }
    FlameSheets s = sheet.sheets();
    double z = Math.max(0, Math.min(sheet.body.lengthMeters(), sheet.bench.rod().tip().zMeters()));
    double growth = PaperLook.share(sheet.drawn.moment().furnace().growthRatio());
    Point2D middle = view.at(new Place(0, Math.min(1, s.axisRiseMeters(z)), z));
    double mantle = view.length(s.mantleRadiusMeters(z));
    double cone = view.length(s.coneRadiusMeters(z));
    Palette p = ink.palette();
    ink.fill(Ink.disc(middle, mantle), Ink.faint(p.flameMantle(), 0.38 * growth));
    if (cone > 0.5) {
      ink.fill(Ink.disc(middle, cone), Ink.faint(p.flameCone(), 0.42 * growth));
    }
    double there = sheet.body.sheetsRatio(z);
    ring(middle, mantle, z, there * growth);
    if (cone > 0.5) {
      ring(middle, cone, z, 0.6 * there * growth);
    }
  }

  /** A brush that is densest on the sheet and fades to both sides. */
  private void ring(Point2D middle, double radius, double z, double strength) {
    double wide = 1.6 * Math.max(1.5, view.length(sheet.sheets().brushWidthMeters(z)));
    double out = radius + wide;
    double inner = Math.max(0.02, (radius - wide) / out);
    double on = Math.max(inner + 0.02, radius / out);
    float[] at = {
      (float) inner, (float) (0.5 * (inner + on)), (float) on, (float) (0.5 * (on + 1)), 1
    };
    Color ions = ink.palette().ions();
    Color[] colours = {
      Ink.faint(ions, 0),
      Ink.faint(ions, 0.28 * strength),
      Ink.faint(ions, 0.6 * strength),
      Ink.faint(ions, 0.2 * strength),
      Ink.faint(ions, 0)
    };
    ink.graphics().setPaint(new RadialGradientPaint(middle, (float) out, at, colours));
    ink.graphics().fill(Ink.disc(middle, out));
  }

  private void axes(double r) {
    double out = 1.55 * r;
    Point2D m = view.middle;
    var fine =
        new java.awt.BasicStroke(
            0.7f,
            java.awt.BasicStroke.CAP_BUTT,
            java.awt.BasicStroke.JOIN_MITER,
            1,
            new float[] {9, 3, 2, 3},
            0);
    Path2D cross = new Path2D.Double();
    cross.moveTo(m.getX() - out, m.getY());
    cross.lineTo(m.getX() + out, m.getY());
    cross.moveTo(m.getX(), m.getY() - out);
    cross.lineTo(m.getX(), m.getY() + out);
    ink.line(cross, Ink.faint(ink.palette().softInk(), 0.8), fine);
  }

  /** How far the rod's axis passes from the burner's: measured at its tip. */
  private void offCenter(double r) {
    Point2D tip = view.at(sheet.bench.rod().tip());
    double x = offCenterX(r);
    if (Math.abs(tip.getY() - view.middle.getY()) < 3 || !view.frame.contains(x, tip.getY())) {
      return;
    }
    ink.dimension(x, view.middle.getY(), x, tip.getY());
    double edge = tip.getX() - 3;
    if (edge > x + 6) {
      ink.line(x + 4, tip.getY(), edge, tip.getY(), Ink.faint(ink.palette().softInk(), 0.7), 0.6);
    }
  }

  private double offCenterX(double r) {
    return view.middle.getX() - 1.62 * r;
  }

  private void rod(boolean grips) {
    Palette p = ink.palette();
    bar(sheet.bench.rod(), p.metal());
    Point2D root = view.at(sheet.bench.rod().path().get(0));
    double half = Math.max(4, 1.3 * view.length(sheet.bench.rod().radiusMeters()));
    Rectangle2D ceramic = new Rectangle2D.Double(root.getX(), root.getY() - half, 18, 2 * half);
    Area seen = new Area(ceramic);
    seen.intersect(new Area(view.frame));
    ink.solid(seen, p.ceramic(), p.ink(), Ink.FINE);
    if (grips) {
      handle(view.at(sheet.bench.rod().tip()), 6);
      handle(bend(), 4);
    }
  }

  /** Where the rod is gripped to be bent. */
  Point2D bend() {
    return bend(sheet.bench.rod(), view);
  }

  static Point2D bend(Rod rod, FrontView view) {
    double left = 0.5 * rod.lengthMeters();
    for (int k = 1; k < rod.path().size(); k++) {
      Place from = rod.path().get(k - 1);
      Place to = rod.path().get(k);
      double length = to.distanceMeters(from);
      if (left <= length) {
        return view.at(from.towards(to, left / length));
      }
      left -= length;
    }
    return view.at(rod.tip());
  }

  private void handle(Point2D at, double radius) {
    ink.line(Ink.disc(at, radius), ink.palette().accent(), Ink.dashed(1.3, 3, 2));
  }

  private void bar(Rod rod, Color colour) {
    ink.solid(view.bar(rod), colour, ink.palette().ink(), Ink.FINE);
  }

  /** What lights the gas, at the other end of the row. */
  private void igniter() {
    Ignition ignition = sheet.bench.design().ignition();
    if (sheet.bench.design().spark() != null || ignition == Ignition.SPARK_AND_SENSE) {
      return;
    }
    IgniterPainter igniter = new IgniterPainter(sheet, ink);
    if (ignition.hotSurface()) {
      igniter.hotSurface();
    } else {
      igniter.sparkGap();
    }
  }
}
