package halfwave.picture.bench;

import halfwave.picture.LabelPlacer;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** The words on the drawing, the most important first. */
final class BenchLabels {

  private BenchLabels() {}

  static List<LabelPlacer.Placed> of(BenchSheet sheet) {
    LabelPen pen = new LabelPen(sheet);
    WiringLabels wiring = new WiringLabels(pen);
    ZoneLabels zone = new ZoneLabels(pen);
    wiring.board();
    avoid(sheet, pen.placer);
    wiring.meter();
    wiring.faults();
    zone.arrows();
    new FrontLabels(pen).front();
    zone.rod();
    zone.dimensions();
    zone.burner();
    wiring.wiring();
    wiring.corner();
    return pen.placer.placed();
  }

  /** Everything that words should not cover. */
  private static void avoid(BenchSheet sheet, LabelPlacer placer) {
    SheetPlan plan = sheet.plan;
    placer.avoid(plan.board);
    placer.avoid(plan.meter);
    placer.avoid(grown(plan.supply, 2));
    placer.avoid(grown(plan.valve, 2));
    if (sheet.front.shown && sheet.rod.endOn) {
      placer.avoid(sheet.front.frame);
    } else if (sheet.front.shown) {
      for (Rectangle2D box : sheet.front.used()) {
        placer.avoid(box);
      }
    }
    for (Shape arrow : new ArrowPainter(sheet).outlines()) {
      placer.avoid(arrow, 2);
    }
    if (sheet.spark != null) {
      placer.avoid(sheet.spark, 2);
    }
    placer.avoid(sheet.rod.bracket);
    for (Shape line :
        List.of(
            sheet.wires.lead,
            sheet.wires.ground,
            sheet.wires.valve,
            sheet.meter.redLead,
            sheet.meter.blackLead)) {
      placer.avoid(line, 3);
    }
    for (Shape outline : List.of(sheet.rod.metal, sheet.rod.ceramic, sheet.burner)) {
      placer.avoid(outline, 2);
    }
    if (!sheet.leaks.all.isEmpty()) {
      placer.avoid(
          new Rectangle2D.Double(
              sheet.leaks.from.getX(),
              sheet.leaks.rail - 3,
              sheet.leaks.end() - sheet.leaks.from.getX(),
              sheet.leaks.chassis - sheet.leaks.rail + 10));
    }
    double from = plan.sense.getX() + 14;
    placer.avoid(
        new Rectangle2D.Double(
            from, plan.chassis - 2, plan.sheet.getMaxX() - plan.margin - from, 9));
    placer.avoid(grown(sheet.wires.connector, 2));
    sheet.disorders.boxes().forEach(placer::avoid);
  }

  private static Rectangle2D grown(Rectangle2D box, double by) {
    return new Rectangle2D.Double(
        box.getX() - by, box.getY() - by, box.getWidth() + 2 * by, box.getHeight() + 2 * by);
  }
}
