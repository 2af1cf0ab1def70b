package halfwave.picture;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.font.GlyphVector;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Writes the words of a drawing, and leads from the arrows to theirs. */
final class LabelPainter {

  private final BenchSheet sheet;
  private final Ink ink;

  LabelPainter(BenchSheet sheet, Ink ink) {
    this.sheet = sheet;
    this.ink = ink;
  }

  void paint(List<LabelPlacer.Placed> labels) {
    ArrowPainter arrows = new ArrowPainter(sheet);
    for (LabelPlacer.Placed label : labels) {
      if (arrows.any() && label.halo()) {
        leader(label, arrows.atRod(true));
        leader(label, arrows.atRod(false));
      }
      Point2D at = label.start();
      if (label.halo() && onColour(label.bounds())) {
        halo(label, at);
      }
      ink.g.setFont(label.font());
      ink.g.setPaint(label.colour());
      ink.g.drawString(label.text(), (float) at.getX(), (float) at.getY());
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

  private void leader(LabelPlacer.Placed label, Point2D rod) {
    double half = sheet.plan.zone.length(sheet.bench.rod().radiusMeters());
    double y = label.bounds().getCenterY();
    double from = rod.getX() + half + 3;
    double to = label.bounds().getX() - 4;
    if (Math.abs(y - rod.getY()) < 1 && to - from > 6 && to - from < 60) {
      ink.line(new Line2D.Double(from, y, to, y), ink.palette.softInk(), Ink.dashed(1, 1.5f, 2.5f));
    }
  }

  private void halo(LabelPlacer.Placed label, Point2D at) {
    GlyphVector glyphs = label.font().createGlyphVector(ink.g.getFontRenderContext(), label.text());
    Shape outline = glyphs.getOutline((float) at.getX(), (float) at.getY());
    ink.line(
        outline,
        Ink.faint(ink.palette.sheet(), 0.72),
        new BasicStroke(3.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
  }
}
