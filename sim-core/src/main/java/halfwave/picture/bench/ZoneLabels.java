package halfwave.picture.bench;

import static halfwave.picture.LabelPlacer.BODY;
import static halfwave.picture.LabelPlacer.NOTE;

import halfwave.board.Ignition;
import halfwave.flame.FlameState;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.picture.LabelPlacer;
import halfwave.picture.LabelPlacer.Spot;
import halfwave.picture.Palette;
import halfwave.picture.scene.DrawnView;
import halfwave.quantity.Dimension;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** Words in the flame zone. */
final class ZoneLabels {

  private final BenchSheet sheet;
  private final SheetPlan plan;
  private final Palette palette;
  private final SheetWords words;
  private final LabelPlacer placer;
  private final LabelPen pen;

  ZoneLabels(LabelPen pen) {
    sheet = pen.sheet;
    plan = sheet.plan;
    palette = sheet.style.palette();
    words = pen.words;
    placer = pen.placer;
    this.pen = pen;
  }

  void arrows() {
    ArrowPainter arrows = new ArrowPainter(sheet);
    if (arrows.any() && sheet.drawn.arrows() != null) {
      arrow(
          arrows.atRod(true),
          words.amps(MessageKey.DRAWING_POSITIVE, sheet.drawn.arrows().rodPositiveAmps()),
          words.amps(MessageKey.DRAWING_POSITIVE_BRIEF, sheet.drawn.arrows().rodPositiveAmps()));
      arrow(
          arrows.atRod(false),
          words.amps(MessageKey.DRAWING_NEGATIVE, sheet.drawn.arrows().rodNegativeAmps()),
          words.amps(MessageKey.DRAWING_NEGATIVE_BRIEF, sheet.drawn.arrows().rodNegativeAmps()));
    }
  }

  void arrow(Point2D rod, String text, String brief) {
    double right = rod.getX() + plan.zone.length(sheet.bench.rod().radiusMeters());
    double end = plan.sheet.getMaxX() - plan.margin;
    Spot[] spots = {
      Spot.of(right + 30, rod.getY(), 1, 0).led(new Point2D.Double(right + 3, rod.getY())),
      Spot.of(right + 14, rod.getY(), 1, 0),
      Spot.of(right + 14, rod.getY() - 16, 1, 0),
      Spot.of(right + 14, rod.getY() + 16, 1, 0),
      Spot.of(end, rod.getY() + 16, -1, 0),
      Spot.of(end, rod.getY() + 34, -1, 0)
    };
    if (!placer.place(text, BODY, palette.ink(), true, spots)
        && !placer.place(brief, BODY, palette.ink(), true, spots)
        && !placer.place(brief, NOTE, palette.ink(), true, spots)) {
      placer.insist(brief, NOTE, palette.ink(), true, spots);
    }
  }

  void rod() {
    Rectangle2D box = sheet.rod.ceramic.getBounds2D();
    boolean sparks = sheet.bench.design().ignition() == Ignition.SPARK_AND_SENSE;
    String name =
        words.length(
            sparks ? MessageKey.DRAWING_SPARK_ROD : MessageKey.DRAWING_ROD,
            2 * sheet.bench.rod().radiusMeters());
    double right = Math.max(box.getMaxX(), sheet.rod.bracket.getMaxX()) + 8;
    double left = Math.min(box.getX(), box.getX()) - 10;
    double y = box.getCenterY();
    double low = box.getMaxY() - 8;
    placer.place(
        name,
        BODY,
        palette.ink(),
        true,
        Spot.of(right, y, 1, -1),
        Spot.of(
            sheet.rod.endOn ? sheet.rod.terminal.getX() + 10 : right,
            sheet.rod.endOn ? plan.leadCorner.getY() + 22 : low,
            1,
            0),
        Spot.of(right, low, 1, 0),
        Spot.of(right, low + 40, 1, 0),
        Spot.of(left, y + 24, -1, 0),
        Spot.of(left, low + 24, -1, 0));
    if (sheet.rod.endOn && sheet.spark != null) {
      Rectangle2D s = sheet.spark.getBounds2D();
      pen.note(
          MessageKey.DRAWING_SPARK,
          Spot.of(s.getMaxX() + 6, s.getMaxY() - 12, 1, 0),
          Spot.of(s.getX() - 6, s.getMaxY() - 12, -1, 0));
    }
    double film = sheet.bench.condition().rodCoat().thicknessMeters();
    if (film > 0) {
      String text =
          words.text(Message.of(MessageKey.DRAWING_FILM, words.plain(film, Dimension.LENGTH)));
      pen.fault(
          text,
          Spot.of(right, y + 2, 1, 1),
          Spot.of(right, low + 18, 1, 0),
          Spot.of(right, low + 58, 1, 0),
          Spot.of(left, y + 42, -1, 0));
    }
  }

  void dimensions() {
    Dimensions d = new Dimensions(sheet);
    if (d.shown) {
      placer.place(
          words.length(d.meters),
          NOTE,
          palette.ink(),
          true,
          Spot.of(0.5 * (d.from.getX() + d.to.getX()), d.from.getY() - 3, 0, -1),
          Spot.of(d.from.getX() - 5, d.from.getY(), -1, 0),
          Spot.of(d.to.getX() + 16, d.from.getY(), 1, 0));
    }
  }

  void burner() {
    Point2D face = plan.zone.at(0, 0);
    double under = sheet.burner.getBounds2D().getMaxY() + 4;
    double x = sheet.wires.strapFoot.getX() + 10;
    double ohms = sheet.bench.condition().burnerScaleOhms();
    if (ohms > 0) {
      pen.fault(
          words.ohms(MessageKey.DRAWING_SCALE, ohms),
          Spot.of(x, under, 1, 1),
          Spot.of(x, plan.chassis - 14, 1, 0));
    }
    FlameState state = sheet.sheets().state();
    boolean burns = sheet.drawn.burns();
    double right = plan.sheet.getMaxX() - plan.margin;
    if (burns && state != FlameState.HEALTHY) {
      String text = words.text(Message.of(MessageKey.DRAWING_FLAME, Argument.name(state)));
      pen.fault(
          text, Spot.of(right, plan.chassis - 12, -1, 0), Spot.of(right, plan.chassis - 30, -1, 0));
    }
    pen.note(
        MessageKey.DRAWING_BURNER,
        Spot.of(x, plan.chassis - 11, 1, 0),
        Spot.of(x, plan.chassis - 28, 1, 0));
    if (burns) {
      placer.place(
          words.length(MessageKey.DRAWING_GAP, sheet.sheets().gapMeters()),
          NOTE,
          palette.softInk(),
          true,
          Spot.of(x, plan.chassis - 27, 1, 0),
          Spot.of(x, plan.chassis - 43, 1, 0));
    }
    Rectangle2D inside = BurnerShape.inside(sheet.bench.design().burner(), plan);
    String streams = words.text(MessageKey.DRAWING_GAS_AND_AIR);
    double room = inside.getWidth() - BurnerPainter.ribs(inside) - 8;
    if (sheet.drawn.moment().furnace().gasRatio() > 0 && LabelPlacer.width(streams, NOTE) <= room) {
      placer.place(
          streams,
          NOTE,
          palette.softInk(),
          true,
          Spot.of(
              inside.getX() + 0.5 * (inside.getWidth() - BurnerPainter.ribs(inside)),
              inside.getCenterY() + 0.27 * inside.getHeight(),
              0,
              0));
    }
    pen.note(
        sheet.style.view() == DrawnView.ABOVE ? MessageKey.DRAWING_ABOVE : MessageKey.DRAWING_SIDE,
        Spot.of(right, plan.chassis - 11, -1, 0),
        Spot.of(right, plan.chassis - 28, -1, 0),
        Spot.of(face.getX(), plan.chassis - 44, 1, 0));
  }
}
