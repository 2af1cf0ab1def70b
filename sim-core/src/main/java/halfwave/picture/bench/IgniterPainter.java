package halfwave.picture.bench;

import halfwave.picture.Ink;
import halfwave.picture.PaperLook;
import halfwave.sequence.Furnace;
import java.awt.Color;
import java.awt.RadialGradientPaint;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** Draws what lights the gas: a glowing surface or a pair of spark electrodes. */
final class IgniterPainter {

  /** From here on a surface is seen to glow, and here it is as bright as an igniter gets (K). */
  private static final double GLOW_KELVIN = 850;

  private static final double BRIGHT_KELVIN = 1650;

  private final BenchSheet sheet;
  private final FrontView view;
  private final Ink ink;

  IgniterPainter(BenchSheet sheet, Ink ink) {
    this.sheet = sheet;
    this.view = sheet.front;
    this.ink = ink;
  }

  void hotSurface() {
    Furnace furnace = sheet.drawn.moment().furnace();
    double glow =
        PaperLook.share((furnace.igniterKelvin() - GLOW_KELVIN) / (BRIGHT_KELVIN - GLOW_KELVIN));
    Point2D at = view.igniter;
    Path2D element = new Path2D.Double();
    double x = at.getX() - 9;
    element.moveTo(x - 6, at.getY() - 6);
    element.lineTo(x + 12, at.getY() - 6);
    element.lineTo(x + 12, at.getY() - 2);
    element.lineTo(x + 3, at.getY() - 2);
    element.lineTo(x + 3, at.getY() + 2);
    element.lineTo(x + 12, at.getY() + 2);
    element.lineTo(x + 12, at.getY() + 6);
    element.lineTo(x - 6, at.getY() + 6);
    if (glow > 0) {
      Color hot = PaperLook.mixed(new Color(0xB5301A), new Color(0xFFC46B), glow);
      ink.graphics()
          .setPaint(
              new RadialGradientPaint(
                  at,
                  22,
                  new float[] {0, 1},
                  new Color[] {Ink.faint(hot, 0.65 * glow), Ink.faint(hot, 0)}));
      ink.graphics().fill(Ink.disc(at, 22));
      ink.line(element, hot, 3);
    } else {
      ink.line(element, ink.palette().ink(), 3.2);
      ink.line(element, ink.palette().metal(), 1.8);
    }
    ink.solid(
        new Rectangle2D.Double(x - 12, at.getY() - 8, 8, 16),
        ink.palette().ceramic(),
        ink.palette().ink(),
        Ink.FINE);
  }

  void sparkGap() {
    Point2D at = view.igniter;
    ink.line(at.getX() - 14, at.getY() - 7, at.getX(), at.getY() - 3, ink.palette().ink(), 2);
    ink.line(at.getX() - 14, at.getY() + 8, at.getX(), at.getY() + 4, ink.palette().ink(), 2);
    if (sheet.drawn.moment().outputs().spark()) {
      Path2D bolt = new Path2D.Double();
      bolt.moveTo(at.getX(), at.getY() - 3);
      bolt.lineTo(at.getX() + 3, at.getY() - 0.5);
      bolt.lineTo(at.getX() - 2, at.getY() + 1.5);
      bolt.lineTo(at.getX(), at.getY() + 4);
      ink.line(bolt, ink.palette().volts(), 1.8);
    }
  }
}
