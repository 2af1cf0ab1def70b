package halfwave.picture.bench;

import halfwave.bench.Disorder;
import halfwave.picture.Ink;
import halfwave.picture.scene.DrawnPart;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A small sign at each part of the sheet that is not as it should be in service, or to which what
 * is not is wired. What it means is said in words elsewhere.
 */
final class DisorderMarks {

  /** Half of the width of a sign (px). */
  private static final double HALF = 7;

  private final Map<DrawnPart, List<Disorder>> there = new EnumMap<>(DrawnPart.class);
  private final Map<DrawnPart, Point2D> places = new EnumMap<>(DrawnPart.class);

  DisorderMarks(BenchSheet sheet) {
    for (Disorder disorder : Disorder.values()) {
      if (sheet.bench.condition().appliance().has(disorder)) {
        DrawnPart part = part(disorder);
        // where there is no room for the igniter, the board that drives it stands in
        DrawnPart drawn = sheet.shapes.containsKey(part) ? part : DrawnPart.BOARD;
        there.computeIfAbsent(drawn, p -> new ArrayList<>()).add(disorder);
      }
    }
    there.keySet().forEach(part -> places.put(part, place(part, sheet)));
  }

  /** Inducer, blower, switches and door are not on the sheet: their wires end at the board. */
  static DrawnPart part(Disorder disorder) {
    return switch (disorder) {
      case GAS_SHUT, VALVE_STUCK_SHUT, VALVE_STUCK_OPEN -> DrawnPart.GAS_VALVE;
      case VALVE_DRIVER_DEAD -> DrawnPart.VALVE_TERMINALS;
      case IGNITER_BROKEN -> DrawnPart.IGNITER;
      case LINE_REVERSED, DOOR_OPEN -> DrawnPart.SUPPLY;
      case INDUCER_DEAD,
          BLOWER_DEAD,
          PRESSURE_SWITCH_OPEN,
          PRESSURE_SWITCH_CLOSED,
          LIMIT_OPEN,
          BOARD_FAULT ->
          DrawnPart.BOARD;
    };
  }

  /** At a corner of the part; on the board in the one that has no words. */
  private static Point2D place(DrawnPart part, BenchSheet sheet) {
    Rectangle2D box = sheet.shapes.getOrDefault(part, sheet.plan.board).getBounds2D();
    return part == DrawnPart.BOARD
        ? new Point2D.Double(box.getMaxX() - 2 * HALF, box.getMaxY() - 2 * HALF)
        : new Point2D.Double(box.getMaxX() + HALF / 2, box.getMinY() - HALF / 2);
  }

  /** What is not as it should be at a part. */
  List<Disorder> at(DrawnPart part) {
    return there.getOrDefault(part, List.of());
  }

  /** What words should not cover. */
  List<Rectangle2D> boxes() {
    return places.values().stream()
        .<Rectangle2D>map(
            p -> new Rectangle2D.Double(p.getX() - HALF, p.getY() - HALF, 2 * HALF, 2 * HALF))
        .toList();
  }

  void paint(Ink ink) {
    for (Point2D p : places.values()) {
      Path2D sign = new Path2D.Double();
      sign.moveTo(p.getX(), p.getY() - HALF);
      sign.lineTo(p.getX() + HALF, p.getY() + HALF);
      sign.lineTo(p.getX() - HALF, p.getY() + HALF);
      sign.closePath();
      ink.solid(sign, ink.palette().sheet(), ink.palette().danger(), 1.6);
      ink.line(p.getX(), p.getY() - 2, p.getX(), p.getY() + 2, ink.palette().danger(), 1.6);
      ink.fill(Ink.disc(new Point2D.Double(p.getX(), p.getY() + 4.6), 1), ink.palette().danger());
    }
  }
}
