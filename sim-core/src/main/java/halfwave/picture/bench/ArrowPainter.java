package halfwave.picture.bench;

import halfwave.flame.Place;
import halfwave.flame.Rod;
import halfwave.picture.Ink;
import halfwave.picture.Palette;
import halfwave.picture.PaperLook;
import halfwave.picture.scene.Arrows;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import org.jspecify.annotations.Nullable;

/**
 * The two arrows between rod and burner, as wide as the current at its crest: filled while the rod
 * is positive, hatched while it is negative.
 */
final class ArrowPainter {

  /** Width of an arrow's shaft for a microampere, as a length of the flame zone (m). */
  private static final double METERS_PER_MICROAMP = 0.24e-3;

  /** Less than a meter could show is no current to draw (A). */
  private static final double LEAST_AMPS = 5e-9;

  /** Shorter than this there is no arrow. */
  private static final double SHORTEST = 8;

  private static final int SAMPLES = 60;

  private final BenchSheet sheet;
  private final @Nullable Arrows arrows;
  private final Point2D positiveRod;
  private final Point2D negativeRod;

  ArrowPainter(BenchSheet sheet) {
    this.sheet = sheet;
    this.arrows = sheet.drawn.burns() ? sheet.drawn.arrows() : null;
    double wide =
        arrows == null
            ? 0
            : 0.5 * (width(arrows.rodPositiveAmps()) + width(arrows.rodNegativeAmps()));
    double apart = 0.5 * wide + (sheet.plan.roomy ? 7 : 3);
    if (sheet.rod.endOn || arrows == null) {
      positiveRod = new Point2D.Double(sheet.rod.tip.getX(), sheet.rod.tip.getY() - apart);
      negativeRod = new Point2D.Double(sheet.rod.tip.getX(), sheet.rod.tip.getY() + apart);
    } else {
      Point2D[] ends = inFlame();
      double middle = 0.5 * (ends[0].getY() + ends[1].getY());
      double space = Math.max(apart, 0.25 * Math.abs(ends[1].getY() - ends[0].getY()));
      positiveRod = onRod(middle - space, ends);
      negativeRod = onRod(middle + space, ends);
    }
  }

  /** Whether there is anything to draw. */
  boolean any() {
    return arrows != null
        && Math.max(arrows.rodPositiveAmps(), arrows.rodNegativeAmps()) >= LEAST_AMPS;
  }

  private double width(double amps) {
    double least = sheet.plan.roomy ? 2.5 : 1.5;
    double most = 0.42 * sheet.plan.zone.length(sheet.sheets().portRadiusMeters()) + 4;
    return Math.max(
        least, Math.min(most, sheet.plan.zone.length(METERS_PER_MICROAMP) * amps * 1e6));
  }

  /** The stretch of the rod that is in the flame before the port; its tip where none is. */
  private Point2D[] inFlame() {
    Rod rod = sheet.bench.rod();
    double radius = 0.9 * sheet.sheets().portRadiusMeters();
    Point2D first = null;
    Point2D last = null;
    for (int k = 1; k < rod.path().size(); k++) {
      for (int n = 0; n <= SAMPLES; n++) {
        Place p = rod.path().get(k - 1).towards(rod.path().get(k), (double) n / SAMPLES);
        double off =
            sheet.drawn.flame().field().mantleDistanceMeters(p.xMeters(), p.yMeters(), p.zMeters());
        if (off <= 0 && Math.abs(p.xMeters()) < radius) {
          last = sheet.plan.zone.at(p);
          first = first == null ? last : first;
        }
      }
    }
    Point2D tip = visible(sheet.rod.tip);
    return first == null ? new Point2D[] {tip, tip} : new Point2D[] {first, last};
  }

  /** A rod that stands off the sheet still has its stub on it. */
  private Point2D visible(Point2D tip) {
    Rectangle2D window = sheet.plan.zone.window();
    return new Point2D.Double(
        tip.getX(), Math.max(window.getMinY() + 6, Math.min(window.getMaxY(), tip.getY())));
  }

  /** The place on that stretch at a height, or its end. */
  private static Point2D onRod(double y, Point2D[] ends) {
    double long0 = ends[1].getY() - ends[0].getY();
    double share = Math.abs(long0) < 1 ? 0.5 : (y - ends[0].getY()) / long0;
    double t = Math.max(0, Math.min(1, share));
    return new Point2D.Double(
        ends[0].getX() + t * (ends[1].getX() - ends[0].getX()),
        Math.abs(long0) < 1 ? y : ends[0].getY() + t * long0);
  }

  /** Where an arrow touches the rod. */
  Point2D atRod(boolean positive) {
    return positive ? positiveRod : negativeRod;
  }

  /** Where it touches the burner: opposite, but within the port. */
  private Point2D atFace(boolean positive) {
    Point2D face = sheet.plan.zone.at(0, 0);
    double reach = 0.78 * sheet.plan.zone.length(sheet.sheets().portRadiusMeters());
    double top = face.getY() - reach;
    double bottom = face.getY() + reach;
    double apart = Math.min(0.9 * reach, negativeRod.getY() - positiveRod.getY());
    double upper = Math.max(top, Math.min(bottom - apart, positiveRod.getY()));
    double lower = Math.min(bottom, Math.max(upper + apart, negativeRod.getY()));
    return new Point2D.Double(face.getX() + 3, positive ? upper : lower);
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

  /** Room that the arrows take up. */
  Shape[] outlines() {
    if (arrows == null || !any()) {
      return new Shape[0];
    }
    return new Shape[] {
      arrow(true, width(arrows.rodPositiveAmps())), arrow(false, width(arrows.rodNegativeAmps()))
    };
  }

  private void one(Ink ink, boolean positive, double amps, double share) {
    double full = width(amps);
    Path2D most = arrow(positive, full);
    if (!(amps >= LEAST_AMPS) || most.getCurrentPoint() == null) {
      return;
    }
    Palette p = ink.palette();
    if (share < 1) {
      ink.line(most, Ink.faint(p.microamps(), 0.6), Ink.dashed(0.9, 3, 2));
    }
    if (share <= 0.02) {
      return;
    }
    Path2D now = arrow(positive, Math.max(1.5, full * share));
    Color colour = p.microamps();
    ink.line(now, Ink.faint(p.sheet(), 0.8), 3);
    if (positive) {
      ink.solid(now, colour, colour, 0.8);
    } else {
      ink.solid(now, PaperLook.hatched(Ink.faint(p.sheet(), 0.9), colour), colour, Ink.THIN);
    }
  }

  /** From the rod to the burner, or back; empty where they are too near to each other. */
  private Path2D arrow(boolean toBurner, double width) {
    Point2D face = atFace(toBurner);
    Point2D rod = atRod(toBurner);
    double half = Math.max(1, sheet.plan.zone.length(sheet.bench.rod().radiusMeters()));
    double dx = rod.getX() - half - 2 - face.getX();
    double dy = rod.getY() - face.getY();
    double length = Math.sqrt(dx * dx + dy * dy);
    Path2D path = new Path2D.Double();
    if (dx < SHORTEST) {
      return path;
    }
    double head = Math.min(0.5 * length, Math.max(6, 1.0 * width + 3));
    double wing = 0.5 * width + Math.max(2.5, 0.45 * width);
    double tip = toBurner ? 0 : length;
    double neck = toBurner ? head : length - head;
    double end = toBurner ? length : 0;
    path.moveTo(tip, 0);
    path.lineTo(neck, -wing);
    path.lineTo(neck, -0.5 * width);
    path.lineTo(end, -0.5 * width);
    path.lineTo(end, 0.5 * width);
    path.lineTo(neck, 0.5 * width);
    path.lineTo(neck, wing);
    path.closePath();
    AffineTransform place = AffineTransform.getTranslateInstance(face.getX(), face.getY());
    place.rotate(Math.atan2(dy, dx));
    path.transform(place);
    return path;
  }
}
