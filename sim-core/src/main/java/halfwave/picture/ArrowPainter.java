package halfwave.picture;

import halfwave.flame.Place;
import halfwave.flame.Rod;
import java.awt.Color;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The two arrows between rod and burner, as wide as the current at its crest: filled while the rod
 * is positive, hatched while it is negative.
 */
final class ArrowPainter {

  /** Width of an arrow's shaft for a microampere, as a length of the flame zone (m). */
  private static final double METERS_PER_MICROAMP = 0.24e-3;

  private final BenchSheet sheet;
  private final @Nullable Arrows arrows;

  ArrowPainter(BenchSheet sheet) {
    this.sheet = sheet;
    this.arrows = sheet.drawn.burns() ? sheet.drawn.arrows() : null;
  }

  /** Whether there is anything to draw. */
  boolean any() {
    return arrows != null && (arrows.rodPositiveAmps() > 0 || arrows.rodNegativeAmps() > 0);
  }

  private double width(double amps) {
    double least = sheet.plan.roomy ? 2.5 : 1.5;
    double most = 0.42 * sheet.plan.zone.length(sheet.sheets().portRadiusMeters()) + 4;
    return Math.max(
        least, Math.min(most, sheet.plan.zone.length(METERS_PER_MICROAMP) * amps * 1e6));
  }

  /** Where an arrow touches the rod. */
  Point2D atRod(boolean positive) {
    FlameZone zone = sheet.plan.zone;
    Rod rod = sheet.bench.rod();
    double wide =
        arrows == null
            ? 0
            : 0.5 * (width(arrows.rodPositiveAmps()) + width(arrows.rodNegativeAmps()));
    double apart = 0.5 * wide + (sheet.plan.roomy ? 7 : 3);
    if (sheet.rod.endOn) {
      Point2D tip = sheet.rod.tip;
      return new Point2D.Double(tip.getX(), tip.getY() + (positive ? -apart : apart));
    }
    List<Place> in = new ArrayList<>();
    double radius = sheet.sheets().portRadiusMeters();
    for (int k = 1; k < rod.path().size(); k++) {
      for (int n = 0; n <= 40; n++) {
        Place p = rod.path().get(k - 1).towards(rod.path().get(k), n / 40.0);
        boolean inside =
            sheet.drawn.flame().field().mantleDistanceMeters(p.xMeters(), p.yMeters(), p.zMeters())
                <= 0;
        if (inside && Math.abs(p.xMeters()) < 0.9 * radius) {
          in.add(p);
        }
      }
    }
    Point2D middle = in.isEmpty() ? sheet.rod.tip : zone.at(in.get(in.size() / 2));
    double space =
        in.isEmpty()
            ? apart
            : Math.max(apart, 0.25 * zone.at(in.get(0)).distance(zone.at(in.get(in.size() - 1))));
    return new Point2D.Double(middle.getX(), middle.getY() + (positive ? -space : space));
  }

  void paint(Ink ink) {
    if (!any() || arrows == null) {
      return;
    }
    double round = sheet.style.cycleRatio() - Math.floor(sheet.style.cycleRatio());
    double wave = Math.sin(2 * Math.PI * round);
    boolean moving = sheet.style.motion();
    one(ink, true, arrows.rodPositiveAmps(), moving ? Math.max(0, wave) : 1);
    one(ink, false, arrows.rodNegativeAmps(), moving ? Math.max(0, -wave) : 1);
  }

  private void one(Ink ink, boolean positive, double amps, double share) {
    if (!(amps > 0)) {
      return;
    }
    Palette p = ink.palette;
    Point2D rod = atRod(positive);
    double half = Math.max(1, sheet.plan.zone.length(sheet.bench.rod().radiusMeters()));
    double right = rod.getX() - half - 2;
    double left = sheet.plan.zone.at(0, 0).getX() + 3;
    if (right - left < 8) {
      return;
    }
    double full = width(amps);
    Path2D most = arrow(left, right, rod.getY(), full, positive);
    if (share < 1) {
      ink.line(most, Ink.faint(p.microamps(), 0.5), Ink.dashed(0.9, 3, 2));
    }
    if (share <= 0.02) {
      return;
    }
    Path2D now = arrow(left, right, rod.getY(), Math.max(1.5, full * share), positive);
    Color colour = p.microamps();
    ink.line(now, Ink.faint(p.sheet(), 0.8), 3);
    if (positive) {
      ink.solid(now, colour, colour, 0.8);
    } else {
      ink.solid(now, Look.hatched(Ink.faint(p.sheet(), 0.9), colour), colour, Ink.THIN);
    }
  }

  /** From the rod to the burner, or back. */
  private Path2D arrow(double left, double right, double y, double width, boolean toBurner) {
    double head = Math.min(0.5 * (right - left), Math.max(6, 1.0 * width + 3));
    double wing = 0.5 * width + Math.max(2.5, 0.45 * width);
    double tip = toBurner ? left : right;
    double neck = toBurner ? left + head : right - head;
    double end = toBurner ? right : left;
    Path2D path = new Path2D.Double();
    path.moveTo(tip, y);
    path.lineTo(neck, y - wing);
    path.lineTo(neck, y - 0.5 * width);
    path.lineTo(end, y - 0.5 * width);
    path.lineTo(end, y + 0.5 * width);
    path.lineTo(neck, y + 0.5 * width);
    path.lineTo(neck, y + wing);
    path.closePath();
    return path;
  }
}
