package halfwave.picture.bench;

import static halfwave.picture.LabelPlacer.BODY;
import static halfwave.picture.LabelPlacer.NOTE;
import static halfwave.picture.LabelPlacer.STRONG;

import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.picture.LabelPlacer;
import halfwave.picture.LabelPlacer.Spot;
import halfwave.picture.Palette;
import halfwave.quantity.Dimension;
import halfwave.work.FurnacePart;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** Words on board, wires, meter and supply. */
final class WiringLabels {

  private final BenchSheet sheet;
  private final SheetPlan plan;
  private final Palette palette;
  private final SheetWords words;
  private final LabelPlacer placer;
  private final LabelPen pen;

  WiringLabels(LabelPen pen) {
    sheet = pen.sheet;
    plan = sheet.plan;
    palette = sheet.style.palette();
    words = pen.words;
    placer = pen.placer;
    this.pen = pen;
  }

  void board() {
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

  void terminal(MessageKey key, double x, double y) {
    placer.inside(plan.board, words.text(key), NOTE, palette.softInk(), Spot.of(x, y, 0, 0));
  }

  void meter() {
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
      pen.note(
          MessageKey.DRAWING_WIRE,
          Spot.of(at.getX() + 10, at.getY(), 1, 0),
          Spot.of(at.getX(), at.getY() + 8, 0, 1));
    }
  }

  /** What is broken, where it is broken. */
  void faults() {
    Wires w = sheet.wires;
    var c = sheet.bench.condition();
    if (w.connectorOff && w.opened == null) {
      pen.fault(words.text(MessageKey.DRAWING_LEAD_OFF), beside(w.connector));
    } else if (c.connectorOhms() > 0 && !w.connectorOff) {
      pen.fault(
          words.ohms(MessageKey.DRAWING_CONNECTOR_OHMS, c.connectorOhms()), beside(w.connector));
    }
    double x = plan.sense.getX();
    double y = Wires.breakAt(plan);
    Spot[] lead = {
      Spot.of(x + 10, y, 1, 0), Spot.of(x + 34, y, 1, 0), Spot.of(x + 34, y + 14, 1, 0)
    };
    if (w.leadBroken) {
      pen.fault(words.text(MessageKey.DRAWING_LEAD_BROKEN), lead);
    } else if (w.leadResistance != null) {
      pen.fault(words.ohms(MessageKey.DRAWING_LEAD_OHMS, c.leadExtraOhms()), lead);
    }
    double half = 0.5 * (plan.chassis + plan.common.getY()) + 3;
    Spot[] ground = {
      Spot.of(plan.common.getX() + 12, half, 1, 0), Spot.of(plan.common.getX() - 12, half, -1, 0)
    };
    if (w.groundOpen) {
      pen.fault(words.text(MessageKey.DRAWING_GROUND_OPEN), ground);
    } else {
      double ohms = sheet.bench.design().groundOhms() + c.groundExtraOhms();
      String text = words.ohms(MessageKey.DRAWING_GROUND, ohms);
      if (c.groundExtraOhms() > 0) {
        pen.fault(text, ground);
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
      leak(
          words.ohms(key, leak.ohms()),
          Spot.of(left, row, 1, 0),
          Spot.of(sheet.leaks.end() + 4, row - 26, 1, 0),
          Spot.of(left, row + 16, 1, 0));
      row += 16;
    }
    if (sheet.bench.rodClearanceMeters() == 0) {
      Point2D tip = sheet.rod.tip;
      pen.fault(
          words.text(MessageKey.DRAWING_TOUCHES),
          Spot.of(tip.getX() + 14, tip.getY() + 14, 1, 1),
          Spot.of(tip.getX() + 14, tip.getY() - 14, 1, -1),
          Spot.of(tip.getX() + 14, tip.getY() - 40, 1, -1));
    }
  }

  private void leak(String text, Spot... spots) {
    placer.insist(text, STRONG.deriveFont(11f), palette.danger(), true, spots);
  }

  /** Beside the connector, or right of the wires of the valve. */
  private Spot[] beside(Rectangle2D box) {
    double right = plan.valveTerminals.getX() + (plan.roomy ? 18 : 12);
    Spot apart = Spot.of(right, plan.chassis - 13, 1, 0);
    return new Spot[] {
      Spot.of(box.getMaxX() + 5, box.getCenterY(), 1, 0),
      apart.led(new Point2D.Double(box.getMaxX() + 2, box.getCenterY())),
      Spot.of(box.getMaxX() + 5, box.getCenterY() - 30, 1, -1)
    };
  }

  void wiring() {
    Rectangle2D v = plan.valve;
    boolean open = sheet.drawn.moment().furnace().gasRatio() > 0;
    double bell = sheet.burner.getBounds2D().getX() - 12;
    double middle = v.getCenterX();
    MessageKey state = open ? MessageKey.DRAWING_VALVE_OPEN : MessageKey.DRAWING_VALVE_SHUT;
    String name = words.sentences().name(FurnacePart.GAS_VALVE);
    double wide = LabelPlacer.width(name, NOTE);
    double x = Math.min(middle, bell - 0.5 * wide);
    if (plan.roomy) {
      pen.note(state, Spot.of(x, v.getY() - 3, 0, -1));
    }
    placer.place(
        name, NOTE, palette.softInk(), true, Spot.of(x, v.getY() - (plan.roomy ? 19 : 3), 0, -1));
    double right = plan.sheet.getMaxX() - plan.margin;
    pen.note(
        MessageKey.DRAWING_CHASSIS,
        Spot.of(right, plan.chassis + 9, -1, 1),
        Spot.of(sheet.points.chassis().getX() + 10, plan.chassis + 9, 1, 1));
  }

  void corner() {
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
    pen.note(
        MessageKey.DRAWING_SUPPLY,
        Spot.of(s.getX(), s.getY() - 2, 1, -1),
        Spot.of(s.getMaxX() + 6, s.getCenterY(), 1, 0));
    Legend legend = new Legend(sheet);
    if (legend.shown) {
      legend.words(placer, words, NOTE);
    }
  }
}
