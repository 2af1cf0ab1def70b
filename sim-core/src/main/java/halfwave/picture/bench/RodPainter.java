package halfwave.picture.bench;

import halfwave.bench.ApplianceCondition;
import halfwave.bench.Bench;
import halfwave.bench.Change.Joined;
import halfwave.bench.Coat;
import halfwave.bench.Parameter;
import halfwave.bench.SparkElectrode;
import halfwave.bench.Trigger;
import halfwave.board.Ignition;
import halfwave.picture.Ink;
import halfwave.picture.PaperLook;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** Draws rod, film, ceramic, spark electrode and what the rod can be gripped by. */
final class RodPainter {

  /** A ceramic that leaks less shows no crack; one that leaks more is a lead chafed through (Ω). */
  private static final double CRACK_OHMS = 1e8;

  private static final double CHAFED_OHMS = 5e4;

  private final BenchSheet sheet;
  private final Ink ink;

  RodPainter(BenchSheet sheet, Ink ink) {
    this.sheet = sheet;
    this.ink = ink;
  }

  /** The ceramic; from the side it stands behind the flame. */
  void ceramic() {
    RodOnSheet rod = sheet.rod;
    if (!rod.bracket.isEmpty()) {
      ink.solid(rod.terminalShape, ink.palette().metal(), ink.palette().ink(), Ink.THIN);
      Rectangle2D b = rod.bracket;
      ink.chassis(b.getX(), b.getX() + 10, b.getMaxY() + 0.5, 5);
    }
    ink.solid(rod.ceramic, ink.palette().ceramic(), ink.palette().ink(), Ink.THIN);
    if (!rod.bracket.isEmpty()) {
      ink.solid(rod.bracket, ink.palette().metal(), ink.palette().ink(), Ink.FINE);
    }
    crack();
    deposit();
  }

  private void crack() {
    if (!cracked(sheet.drawn.moment().bench())) {
      return;
    }
    Rectangle2D box = sheet.rod.ceramic.getBounds2D();
    Path2D crack = new Path2D.Double();
    double[] x = {0.2, 0.45, 0.35, 0.7, 0.55, 0.85};
    double[] y = {0.98, 0.9, 0.8, 0.72, 0.62, 0.5};
    crack.moveTo(box.getX() + x[0] * box.getWidth(), box.getY() + y[0] * box.getHeight());
    for (int k = 1; k < x.length; k++) {
      crack.lineTo(box.getX() + x[k] * box.getWidth(), box.getY() + y[k] * box.getHeight());
    }
    ink.line(crack, ink.palette().danger(), 1.6);
  }

  /** Soot or salt that runs down the ceramic. */
  private void deposit() {
    if (sheet.bench.condition().depositOhms() == Double.POSITIVE_INFINITY) {
      return;
    }
    Rectangle2D box = sheet.rod.ceramic.getBounds2D();
    Area trail =
        new Area(
            new Rectangle2D.Double(
                box.getX(), box.getY() + 0.5 * box.getHeight(), box.getWidth(), box.getHeight()));
    trail.intersect(new Area(sheet.rod.ceramic));
    ink.fill(
        trail, PaperLook.hatched(Ink.faint(ink.palette().ceramic(), 0.3), ink.palette().ink()));
  }

  /** The metal with what has settled on it. */
  void metal() {
    RodOnSheet rod = sheet.rod;
    Coat coat = sheet.bench.condition().rodCoat();
    double film = filmThickness(coat);
    if (film > 0) {
      Shape around = BenchSheet.wide(rod.metal, 2 * film);
      ink.fill(around, coatColour());
      ink.line(around, Ink.faint(ink.palette().softInk(), 0.9), Ink.dashed(0.9, 2, 2));
    }
    ink.solid(rod.metal, ink.palette().metal(), ink.palette().ink(), Ink.THIN);
    if (coat.thicknessMeters() > 0 && coat.crackOhms() < Double.POSITIVE_INFINITY) {
      speckles(rod.metal.getBounds2D(), film);
    }
    if (rod.endOn) {
      double r = 0.5 * rod.metal.getBounds2D().getWidth();
      ink.line(Ink.disc(rod.tip, 0.35 * r), Ink.faint(ink.palette().ink(), 0.5), Ink.FINE);
    }
    spark();
  }

  private java.awt.Color coatColour() {
    return PaperLook.mixed(ink.palette().ceramic(), ink.palette().softInk(), 0.25);
  }

  /** A unit for every decade from a tenth of a micrometre on: to scale it could not be seen. */
  static double filmThickness(Coat coat) {
    double t = coat.thicknessMeters();
    return t <= 0 ? 0 : Math.max(0.8, 1.1 * (1 + Math.log10(t / 1e-7)));
  }

  private void speckles(Rectangle2D box, double film) {
    Path2D marks = new Path2D.Double();
    boolean upright = box.getHeight() > box.getWidth();
    double length = upright ? box.getHeight() : box.getWidth();
    for (double at = 5; at < length - 3; at += 9) {
      double side = ((int) (at / 9)) % 2 == 0 ? -1 : 1;
      double edge = 0.5 * (upright ? box.getWidth() : box.getHeight());
      double u = side * edge;
      double v = side * (edge + film);
      if (upright) {
        marks.moveTo(box.getCenterX() + u, box.getY() + at);
        marks.lineTo(box.getCenterX() + v, box.getY() + at + 2);
      } else {
        marks.moveTo(box.getX() + at, box.getCenterY() + u);
        marks.lineTo(box.getX() + at + 2, box.getCenterY() + v);
      }
    }
    ink.line(marks, ink.palette().ink(), Ink.THIN);
  }

  /** A spark electrode where it stands, and the spark while there is one. */
  private void spark() {
    boolean sparks = sheet.drawn.moment().outputs().spark();
    SparkElectrode electrode = sheet.bench.design().spark();
    if (sheet.spark != null && electrode != null) {
      ink.solid(sheet.spark, ink.palette().metal(), ink.palette().ink(), Ink.THIN);
      if (sparks) {
        Point2D tip = sheet.plan.zone.at(electrode.electrode().tip());
        bolt(tip);
      }
    } else if (sparks && sheet.bench.design().ignition() == Ignition.SPARK_AND_SENSE) {
      bolt(sheet.rod.tip);
    }
  }

  private void bolt(Point2D from) {
    double r = sheet.bench.design().burner().portRadiusMeters();
    Point2D face = sheet.plan.zone.at(0, 0);
    double side = Math.signum(from.getY() - face.getY());
    Point2D to = sheet.plan.zone.at(0, side * Math.min(r, 0.8 * r));
    Path2D bolt = new Path2D.Double();
    bolt.moveTo(from.getX(), from.getY());
    for (int k = 1; k < 6; k++) {
      double t = k / 6.0;
      double off = k % 2 == 0 ? 4 : -4;
      bolt.lineTo(
          from.getX() + t * (to.getX() - from.getX()),
          from.getY() + t * (to.getY() - from.getY()) + off);
    }
    bolt.lineTo(to.getX(), to.getY());
    ink.line(bolt, Ink.faint(ink.palette().volts(), 0.35), 5);
    ink.line(bolt, ink.palette().volts(), 1.6);
  }

  /** Small handles in the accent: what can be operated. */
  void grips() {
    if (!sheet.rod.endOn) {
      handle(sheet.rod.tip, sheet.plan.roomy ? 6 : 4);
    } else {
      handle(sheet.rod.tip, Math.max(8, sheet.rod.metal.getBounds2D().getWidth() / 2 + 5));
    }
  }

  private void handle(Point2D at, double radius) {
    if (sheet.plan.zone.window().contains(at)) {
      ink.line(Ink.disc(at, radius + 3), ink.palette().accent(), Ink.dashed(1.6, 3, 3));
    }
  }

  /**
   * Whether the ceramic looks cracked: a crack that leaks only when it is hot is seen cold as well,
   * damp is not seen at all.
   */
  static boolean cracked(Bench bench) {
    ApplianceCondition appliance = bench.condition().appliance();
    return crack(bench.condition().leakageOhms())
        || appliance.intermittents().stream()
            .anyMatch(
                i ->
                    i.trigger() != Trigger.DAMP
                        && i.change() instanceof Joined joined
                        && joined.parameter() == Parameter.LEAKAGE
                        && crack(joined.value().si()));
  }

  private static boolean crack(double leakageOhms) {
    return leakageOhms < CRACK_OHMS && leakageOhms > CHAFED_OHMS;
  }
}
