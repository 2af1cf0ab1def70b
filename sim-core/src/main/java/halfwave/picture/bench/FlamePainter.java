package halfwave.picture.bench;

import halfwave.picture.PaperLook;
import halfwave.picture.flame.FlameImage;
import halfwave.picture.flame.FlameMemory;
import halfwave.picture.flame.FlameZone;
import halfwave.picture.scene.DrawnView;
import java.awt.AlphaComposite;
import java.awt.Composite;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;

/** Draws the flame: a remembered picture, gently alive. */
final class FlamePainter {

  /** Pixels of the picture per unit of the sheet; the sheets are blurred anyway. */
  private static final double FINENESS = 0.62;

  private static final int MOST_PIXELS = 220_000;

  private final BenchSheet sheet;
  private final FlameMemory memory;

  FlamePainter(BenchSheet sheet, FlameMemory memory) {
    this.sheet = sheet;
    this.memory = memory;
  }

  void paint(Graphics2D g) {
    if (!sheet.drawn.burns()) {
      return;
    }
    FlameZone zone = sheet.plan.zone;
    Rectangle2D window = zone.window();
    Point2D face = zone.at(0, 0);
    double length =
        Math.min(window.getMaxX() - face.getX(), zone.length(sheet.body.lengthMeters()) + 8);
    double up = Math.max(face.getY() - sheet.plan.margin, sheet.plan.chassis - face.getY());
    double half = Math.min(up, zone.length(widest()));
    double per = FINENESS * Math.min(2, sheet.style.scaleRatio());
    double most = Math.sqrt(MOST_PIXELS / Math.max(1, length * 2 * half));
    per = Math.min(per, most);
    int columns = (int) Math.max(2, Math.ceil(length * per));
    int rows = 2 * (int) Math.max(1, Math.ceil(half * per));
    BufferedImage image =
        memory.of(
            new FlameImage.Key(
                sheet.sheets(),
                sheet.style.view(),
                zone.cutMeters(sheet.bench),
                sheet.style.palette(),
                columns,
                rows,
                zone.meters(1 / per)));

    double growth = PaperLook.share(sheet.drawn.moment().furnace().growthRatio());
    Shape clip = g.getClip();
    g.clip(
        new Rectangle2D.Double(
            face.getX(), 0, window.getMaxX() - face.getX(), sheet.plan.chassis - 2));
    Composite before = g.getComposite();
    g.setComposite(
        AlphaComposite.getInstance(
            AlphaComposite.SRC_OVER, (float) Math.min(1, growth * shimmer())));
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    AffineTransform place = alive(face);
    place.translate(face.getX(), face.getY() - 0.5 * rows / per);
    place.scale(1 / per, 1 / per);
    g.drawImage(image, place, null);
    g.setComposite(before);
    g.setClip(clip);
  }

  /** From the side the flame also rises (m). */
  private double widest() {
    double length = sheet.body.lengthMeters();
    double widest = 0;
    for (int k = 0; k <= 20; k++) {
      double z = length * k / 20;
      double rise = sheet.style.view() == DrawnView.SIDE ? sheet.sheets().axisRiseMeters(z) : 0;
      double sheets = sheet.body.sheetsRatio(z) > 0 ? sheet.sheets().mantleRadiusMeters(z) : 0;
      widest = Math.max(widest, Math.max(sheets, sheet.body.radiusMeters(z)) + rise);
    }
    return 1.1 * widest + 0.006;
  }

  private double phase(double rounds) {
    return sheet.style.motion() ? Math.sin(2 * Math.PI * rounds * sheet.style.livelyRatio()) : 0;
  }

  private double shimmer() {
    return 0.98 + 0.02 * phase(3);
  }

  /** A flame at rest on its port stretches and sways by a hundredth or two. */
  private AffineTransform alive(Point2D face) {
    AffineTransform t = new AffineTransform();
    t.translate(face.getX(), face.getY());
    t.scale(1 + 0.010 * phase(1) + 0.006 * phase(2), 1 + 0.008 * phase(2) + 0.004 * phase(5));
    t.shear(0, 0.006 * phase(1) + 0.004 * phase(3));
    t.translate(-face.getX(), -face.getY());
    return t;
  }
}
