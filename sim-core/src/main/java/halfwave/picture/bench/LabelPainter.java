package halfwave.picture.bench;

import halfwave.picture.Ink;
import halfwave.picture.LabelPlacer;
import halfwave.picture.scene.DrawnPart;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Writes the words of a drawing, and leads from the arrows to theirs. */
final class LabelPainter {

  private static final int HALO_PLACES = 8;
  private static final double HALO_PIXELS = 1.5;
  private static final double HALO_OPACITY = 0.4;

  private final BenchSheet sheet;
  private final Ink ink;

  LabelPainter(BenchSheet sheet, Ink ink) {
    this.sheet = sheet;
    this.ink = ink;
  }

  void paint(List<LabelPlacer.Placed> labels) {
    for (LabelPlacer.Placed label : labels) {
      if (label.from() != null) {
        leader(label, label.from());
      }
      Point2D at = label.start();
      if (label.halo() && onColour(label.bounds())) {
        halo(label, at);
      }
      ink.graphics().setFont(label.font());
      ink.graphics().setPaint(label.colour());
      ink.graphics().drawString(label.text(), (float) at.getX(), (float) at.getY());
    }
  }

  /** Whether flame or wires lie under the words; elsewhere paper needs no halo. */
  private boolean onColour(Rectangle2D bounds) {
    Shape flame = sheet.shapes.get(DrawnPart.FLAME);
    return (flame != null && flame.intersects(bounds))
        || sheet.burner.getBounds2D().intersects(bounds)
        || sheet.wires.valve.getBounds2D().intersects(bounds)
        || sheet.meter.redLead.getBounds2D().intersects(bounds)
        || sheet.meter.blackLead.getBounds2D().intersects(bounds);
  }

  private void leader(LabelPlacer.Placed label, Point2D from) {
    Rectangle2D b = label.bounds();
    double x = Math.max(b.getX() - 4, Math.min(b.getMaxX() + 4, from.getX()));
    double y = Math.max(b.getY(), Math.min(b.getMaxY(), from.getY()));
    double level = x == from.getX() ? y : b.getCenterY();
    if (from.distance(x, level) > 6) {
      ink.line(
          new Line2D.Double(from.getX(), from.getY(), x, level),
          label.colour().equals(ink.palette().danger()) ? label.colour() : ink.palette().softInk(),
          Ink.dashed(1, 1.5f, 2.5f));
    }
  }

  /** The words once around in the colour of the sheet: glyphs are kept, an outline is not. */
  private void halo(LabelPlacer.Placed label, Point2D at) {
    ink.graphics().setFont(label.font());
    ink.graphics().setPaint(Ink.faint(ink.palette().sheet(), HALO_OPACITY));
    for (int k = 0; k < HALO_PLACES; k++) {
      double turn = 2 * Math.PI * k / HALO_PLACES;
      ink.graphics()
          .drawString(
              label.text(),
              (float) (at.getX() + HALO_PIXELS * Math.cos(turn)),
              (float) (at.getY() + HALO_PIXELS * Math.sin(turn)));
    }
  }
}
