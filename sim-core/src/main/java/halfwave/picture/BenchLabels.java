package halfwave.picture;

import static halfwave.picture.LabelPlacer.BODY;
import static halfwave.picture.LabelPlacer.NOTE;
import static halfwave.picture.LabelPlacer.STRONG;

import halfwave.board.Ignition;
import halfwave.flame.FlameState;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.picture.LabelPlacer.Spot;
import halfwave.quantity.Dimension;
import halfwave.work.FurnacePart;
import java.awt.Font;
import java.awt.Shape;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** The words on the drawing, the most important first. */
final class BenchLabels {

  private final BenchSheet sheet;
  private final SheetPlan plan;
  private final Palette palette;
  private final SheetWords words;
  private final LabelPlacer placer;

  private BenchLabels(BenchSheet sheet) {
    this.sheet = sheet;
    this.plan = sheet.plan;
    this.palette = sheet.style.palette();
    this.words = new SheetWords(sheet.style.sentences());
    this.placer = new LabelPlacer(plan.sheet);
  }

  static List<LabelPlacer.Placed> of(BenchSheet sheet) {
    BenchLabels labels = new BenchLabels(sheet);
    labels.board();
    labels.obstacles();
    labels.meter();
    labels.faults();
    labels.arrows();
    labels.front();
    labels.rod();
    labels.dimensions();
    labels.burner();
    labels.wiring();
    labels.corner();
    return labels.placer.placed;
  }

  private void obstacles() {
    placer.avoid(plan.board);
    placer.avoid(plan.meter);
    placer.avoid(grown(plan.supply, 2));
    placer.avoid(grown(plan.valve, 2));
    if (sheet.front.shown) {
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
  }

  private static Rectangle2D grown(Rectangle2D box, double by) {
    return new Rectangle2D.Double(
        box.getX() - by, box.getY() - by, box.getWidth() + 2 * by, box.getHeight() + 2 * by);
  }

  private void board() {
    Rectangle2D b = plan.board;
    double y = b.getY() + (plan.roomy ? 15 : 12);
    terminal(MessageKey.DRAWING_SENSE, plan.sense.getX(), y);
    terminal(MessageKey.DRAWING_COMMON, plan.common.getX(), y);
    terminal(MessageKey.DRAWING_VALVE, plan.valveTerminals.getX(), y);
    Point2D light = sheet.light();
    double left = light.getX() + (plan.roomy ? 14 : 10);
    String stage = words.sentences().name(sheet.drawn.moment().board().stage());
    if (!placer.inside(b, stage, BODY, palette.ink(), Spot.of(left, light.getY(), 1, 0))
        && !placer.inside(b, stage, NOTE, palette.ink(), Spot.of(left, light.getY(), 1, 0))) {
      placer.inside(
          b,
          words.sentences().brief(sheet.drawn.moment().board().stage()),
          NOTE,
          palette.ink(),
          Spot.of(left, light.getY(), 1, 0));
    }
    if (plan.roomy) {
      placer.inside(
          b,
          words.sentences().name(FurnacePart.BOARD),
          STRONG,
          palette.ink(),
          Spot.of(b.getX() + 13, b.getY() + 35, 1, 0));
    }
  }

  private void terminal(MessageKey key, double x, double y) {
    placer.inside(plan.board, words.text(key), NOTE, palette.softInk(), Spot.of(x, y, 0, 0));
  }

  private void meter() {
    String reading = sheet.drawn.reading();
    Rectangle2D plate = sheet.meter.plate;
    if (!reading.isEmpty()) {
      new ReadingWords(placer, plate, palette).put(reading);
    } else if (sheet.drawn.moment().hooked() == null) {
      Spot middle = Spot.of(plate.getCenterX(), plate.getCenterY(), 0, 0);
      placer.inside(
          plate, words.text(MessageKey.DRAWING_METER_READY), NOTE, palette.softInk(), middle);
    }
    if (sheet.meter.wire != null) {
      Point2D at = sheet.meter.wire.getP2();
      note(
          MessageKey.DRAWING_WIRE,
          Spot.of(at.getX() + 10, at.getY(), 1, 0),
          Spot.of(at.getX(), at.getY() + 8, 0, 1));
    }
  }

  /** What is broken, where it is broken. */
  private void faults() {
    Wires w = sheet.wires;
    var c = sheet.bench.condition();
    if (w.connectorOff && w.opened == null) {
      fault(words.text(MessageKey.DRAWING_LEAD_OFF), beside(w.connector));
    } else if (c.connectorOhms() > 0 && !w.connectorOff) {
      fault(words.ohms(MessageKey.DRAWING_CONNECTOR_OHMS, c.connectorOhms()), beside(w.connector));
    }
    double x = plan.sense.getX();
    double y = Wires.breakAt(plan);
    Spot[] lead = {
      Spot.of(x + 10, y, 1, 0), Spot.of(x + 34, y, 1, 0), Spot.of(x + 34, y + 14, 1, 0)
    };
    if (w.leadBroken) {
      fault(words.text(MessageKey.DRAWING_LEAD_BROKEN), lead);
    } else if (w.leadResistance != null) {
      fault(words.ohms(MessageKey.DRAWING_LEAD_OHMS, c.leadExtraOhms()), lead);
    }
    double half = 0.5 * (plan.chassis + plan.common.getY()) + 3;
    Spot[] ground = {
      Spot.of(plan.common.getX() + 12, half, 1, 0), Spot.of(plan.common.getX() - 12, half, -1, 0)
    };
    if (w.groundOpen) {
      fault(words.text(MessageKey.DRAWING_GROUND_OPEN), ground);
    } else {
      double ohms = sheet.bench.design().groundOhms() + c.groundExtraOhms();
      String text = words.ohms(MessageKey.DRAWING_GROUND, ohms);
      if (c.groundExtraOhms() > 0) {
        fault(text, ground);
      } else {
        placer.place(text, NOTE, palette.softInk(), false, ground);
      }
    }
    double row = sheet.leaks.chassis + 19;
    for (Leaks.Leak leak : sheet.leaks.all) {
      MessageKey key =
          switch (leak.part()) {
            case JUMPER -> MessageKey.DRAWING_JUMPER;
            case DEPOSIT -> MessageKey.DRAWING_DEPOSIT;
            default -> MessageKey.DRAWING_LEAK;
          };
      double left = sheet.leaks.all.get(0).box().getX() - 6;
      fault(
          words.ohms(key, leak.ohms()),
          Spot.of(left, row, 1, 0),
          Spot.of(sheet.leaks.end() + 4, row - 26, 1, 0),
          Spot.of(left, row + 16, 1, 0));
      row += 16;
    }
    if (sheet.bench.rodClearanceMeters() == 0) {
      Point2D tip = sheet.rod.tip;
      fault(
          words.text(MessageKey.DRAWING_TOUCHES),
          Spot.of(tip.getX() + 14, tip.getY() + 14, 1, 1),
          Spot.of(tip.getX() + 14, tip.getY() - 14, 1, -1),
          Spot.of(tip.getX() + 14, tip.getY() - 40, 1, -1));
    }
  }

  private static Spot[] beside(Rectangle2D box) {
    return new Spot[] {
      Spot.of(box.getMaxX() + 5, box.getCenterY(), 1, 0),
      Spot.of(box.getMaxX() + 5, box.getCenterY() - 8, 1, -1),
      Spot.of(box.getMaxX() + 5, box.getCenterY() - 30, 1, -1)
    };
  }

  private void fault(String text, Spot... spots) {
    if (!placer.place(text, STRONG.deriveFont(12f), palette.danger(), true, spots)) {
      placer.insist(text, NOTE, palette.danger(), true, spots);
    }
  }

  private void arrows() {
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

  private void arrow(Point2D rod, String text, String brief) {
    double right = rod.getX() + plan.zone.length(sheet.bench.rod().radiusMeters());
    double end = plan.sheet.getMaxX() - plan.margin;
    Spot[] spots = {
      Spot.of(right + 30, rod.getY(), 1, 0),
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

  private void front() {
    if (!sheet.front.shown) {
      return;
    }
    FrontView f = sheet.front;
    placer.inside(
        f.frame,
        words.text(MessageKey.DRAWING_FRONT),
        NOTE,
        palette.softInk(),
        Spot.of(f.middle.getX(), f.middle.getY() + f.reach(), 0, 1));
    double off = Math.abs(sheet.bench.rod().tip().yMeters());
    placer.inside(
        f.frame,
        words.length(MessageKey.DRAWING_OFF_CENTER, off),
        NOTE,
        palette.ink(),
        Spot.of(f.middle.getX(), f.middle.getY() - f.reach(), 0, -1));
    Ignition ignition = sheet.bench.design().ignition();
    if (sheet.bench.design().spark() == null && ignition != Ignition.SPARK_AND_SENSE) {
      MessageKey key =
          ignition.hotSurface() ? MessageKey.DRAWING_IGNITER : MessageKey.DRAWING_SPARK;
      placer.inside(
          f.frame,
          words.text(key),
          NOTE,
          palette.softInk(),
          Spot.of(
              Math.max(
                  f.igniter.getX() - 4,
                  f.frame.getX() + 2 + 0.5 * LabelPlacer.width(words.text(key), NOTE)),
              f.igniter.getY() + 14,
              0,
              1));
    }
  }

  private void rod() {
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
    double film = sheet.bench.condition().rodCoat().thicknessMeters();
    if (film > 0) {
      String text =
          words.text(Message.of(MessageKey.DRAWING_FILM, words.plain(film, Dimension.LENGTH)));
      fault(
          text,
          Spot.of(right, y + 2, 1, 1),
          Spot.of(right, low + 18, 1, 0),
          Spot.of(right, low + 58, 1, 0),
          Spot.of(left, y + 42, -1, 0));
    }
  }

  private void dimensions() {
    Dimensions d = new Dimensions(sheet);
    if (d.shown) {
      placer.place(
          words.length(d.meters),
          NOTE,
          palette.ink(),
          true,
          Spot.of(0.5 * (d.from.getX() + d.to.getX()), d.from.getY() - 3, 0, -1),
          Spot.of(d.from.getX() - 5, d.from.getY(), -1, 0));
    }
  }

  private void burner() {
    Point2D face = plan.zone.at(0, 0);
    double under = sheet.burner.getBounds2D().getMaxY() + 4;
    double x = sheet.wires.strapFoot.getX() + 10;
    double ohms = sheet.bench.condition().burnerScaleOhms();
    if (ohms > 0) {
      fault(
          words.ohms(MessageKey.DRAWING_SCALE, ohms),
          Spot.of(x, under, 1, 1),
          Spot.of(x, plan.chassis - 14, 1, 0));
    }
    FlameState state = sheet.sheets().state();
    boolean burns = sheet.drawn.burns();
    double right = plan.sheet.getMaxX() - plan.margin;
    if (burns && state != FlameState.HEALTHY) {
      String text = words.text(Message.of(MessageKey.DRAWING_FLAME, Argument.name(state)));
      fault(
          text, Spot.of(right, plan.chassis - 12, -1, 0), Spot.of(right, plan.chassis - 30, -1, 0));
    }
    note(
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
    if (sheet.drawn.moment().furnace().gasRatio() > 0) {
      placer.place(
          words.text(MessageKey.DRAWING_GAS_AND_AIR),
          NOTE,
          palette.softInk(),
          true,
          Spot.of(inside.getCenterX() - 6, inside.getCenterY() + 0.27 * inside.getHeight(), 0, 0));
    }
    note(
        sheet.style.view() == DrawnView.ABOVE ? MessageKey.DRAWING_ABOVE : MessageKey.DRAWING_SIDE,
        Spot.of(right, plan.chassis - 11, -1, 0),
        Spot.of(right, plan.chassis - 28, -1, 0),
        Spot.of(face.getX(), plan.chassis - 44, 1, 0));
  }

  private void wiring() {
    Rectangle2D v = plan.valve;
    boolean open = sheet.drawn.moment().furnace().gasRatio() > 0;
    double bell = sheet.burner.getBounds2D().getX() - 12;
    double middle = v.getCenterX();
    MessageKey state = open ? MessageKey.DRAWING_VALVE_OPEN : MessageKey.DRAWING_VALVE_SHUT;
    String name = words.sentences().name(FurnacePart.GAS_VALVE);
    double wide = LabelPlacer.width(name, NOTE);
    double x = Math.min(middle, bell - 0.5 * wide);
    if (plan.roomy) {
      note(state, Spot.of(x, v.getY() - 3, 0, -1));
    }
    placer.place(
        name, NOTE, palette.softInk(), true, Spot.of(x, v.getY() - (plan.roomy ? 19 : 3), 0, -1));
    double right = plan.sheet.getMaxX() - plan.margin;
    note(
        MessageKey.DRAWING_CHASSIS,
        Spot.of(right, plan.chassis + 9, -1, 1),
        Spot.of(sheet.points.chassis().getX() + 10, plan.chassis + 9, 1, 1));
  }

  private void corner() {
    var source = sheet.bench.design().source();
    Rectangle2D s = plan.supply;
    placer.place(
        words.text(
            Message.of(
                MessageKey.DRAWING_SOURCE,
                words.plain(source.openCircuitRmsVolts(), Dimension.VOLTAGE),
                words.plain(source.frequencyHertz(), Dimension.FREQUENCY),
                words.plain(source.resistanceOhms(), Dimension.RESISTANCE))),
        NOTE,
        palette.softInk(),
        false,
        Spot.of(plan.board.getMaxX() + 14, plan.board.getY() + 16, 1, 0));
    note(
        MessageKey.DRAWING_SUPPLY,
        Spot.of(s.getX(), s.getY() - 2, 1, -1),
        Spot.of(s.getMaxX() + 6, s.getCenterY(), 1, 0));
    Legend legend = new Legend(sheet);
    if (legend.shown) {
      legend.words(placer, words, NOTE);
    }
  }

  private void note(MessageKey key, Spot... spots) {
    Font font = NOTE;
    placer.place(words.text(key), font, palette.softInk(), true, spots);
  }
}
