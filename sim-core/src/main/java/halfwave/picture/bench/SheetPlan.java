package halfwave.picture.bench;

import halfwave.bench.Design;
import halfwave.picture.flame.FlameZone;
import halfwave.picture.scene.DrawnView;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/**
 * Where everything stands on a sheet of a size, in units of 1/13 of the body type. It follows from
 * the size and from what was built, never from its condition: nothing moves when a fault comes.
 */
final class SheetPlan {

  /** Smaller sheets do without title, legend and view from the front. */
  private static final double ROOMY_WIDTH = 500;

  private static final double ROOMY_HEIGHT = 340;

  /** Port radii that the zone reaches to the right, and below the axis (1). */
  private static final double ALONG_RADII = 8;

  private static final double BELOW_RADII = 1.75;

  final Rectangle2D sheet;
  final boolean roomy;
  final double margin;
  final Rectangle2D board;
  final Point2D sense;
  final Point2D common;
  final Point2D valveTerminals;
  final double chassis;
  final Point2D leadCorner;
  final double ceramicLength;
  final FlameZone zone;
  final double tubeLength;
  final Rectangle2D valve;
  final Rectangle2D meter;
  final Rectangle2D front;
  final Rectangle2D supply;

  SheetPlan(double width, double height, Design design, DrawnView view) {
    sheet = new Rectangle2D.Double(0, 0, width, height);
    roomy = width >= ROOMY_WIDTH && height >= ROOMY_HEIGHT;
    margin = roomy ? 14 : 7;
    double boardHeight = roomy ? 74 : 42;
    double boardWidth = roomy ? Math.max(248, Math.min(340, 0.34 * width)) : 0.52 * width;
    board = new Rectangle2D.Double(margin, height - margin - boardHeight, boardWidth, boardHeight);
    sense = new Point2D.Double(board.getX() + (roomy ? 26 : 20), board.getY());
    valveTerminals = new Point2D.Double(sense.getX() + (roomy ? 72 : 48), board.getY());
    common = new Point2D.Double(board.getX() + boardWidth * (roomy ? 0.66 : 0.84), board.getY());
    chassis = board.getY() - (roomy ? 42 : 22);
    leadCorner = new Point2D.Double(sense.getX(), margin + (roomy ? 14 : 6));
    ceramicLength = Math.max(18, Math.min(72, 0.1 * height));

    double terminalLength = roomy ? 14 : 8;
    double top = leadCorner.getY() + terminalLength + ceramicLength;
    double bottom = chassis - (roomy ? 26 : 8);
    double radius = design.burner().portRadiusMeters();
    double above = -design.rod().path().get(0).xMeters();
    double reach = Math.max(above, 2 * radius);
    double upright = (bottom - top) / (reach + BELOW_RADII * radius);
    double valveHalf = roomy ? 19 : 11;
    double mouth = valveTerminals.getX() + valveHalf + (roomy ? 46 : 22);
    double shortTube = roomy ? 70 : 26;
    double level = (width - margin - mouth - shortTube) / (ALONG_RADII * radius);
    double unitsPerMeter = Math.min(upright, level);
    tubeLength = Math.max(shortTube, Math.min(150, 1.6 * radius * unitsPerMeter));
    if (tubeLength > shortTube) {
      unitsPerMeter =
          Math.min(upright, (width - margin - mouth - tubeLength) / (ALONG_RADII * radius));
    }
    double slack = bottom - top - (reach + BELOW_RADII * radius) * unitsPerMeter;
    Point2D face =
        new Point2D.Double(mouth + tubeLength, top + reach * unitsPerMeter + 0.5 * slack);
    Rectangle2D window =
        new Rectangle2D.Double(
            face.getX() - tubeLength, top, width - margin - face.getX() + tubeLength, bottom - top);
    zone = new FlameZone(view, face, unitsPerMeter, window);
    valve =
        new Rectangle2D.Double(
            valveTerminals.getX() - valveHalf,
            face.getY() - 0.7 * valveHalf,
            2 * valveHalf,
            1.4 * valveHalf);
    double larger = roomy ? Math.max(1, Math.min(1.5, Math.min(width / 900, height / 620))) : 1;
    double meterWidth = roomy ? 112 * larger : 82;
    meter =
        new Rectangle2D.Double(
            leadCorner.getX() + (roomy ? 28 : 14),
            leadCorner.getY() + (roomy ? 26 : 8),
            meterWidth,
            roomy ? 82 * larger : 40);
    front = front(width, face, radius, design);
    double strip = roomy ? 108 : 62;
    double beside = board.getMaxX() + (roomy ? 40 : 16);
    supply =
        new Rectangle2D.Double(
            Math.min(beside, width - margin - strip),
            board.getMaxY() - (roomy ? 30 : 22),
            strip,
            roomy ? 22 : 16);
  }

  /** Right of the rod and above the flame; empty where there is no room. */
  private Rectangle2D front(double width, Point2D face, double radius, Design design) {
    double rod = face.getX() + zone.length(design.rod().path().get(0).zMeters());
    double left = Math.max(rod + 0.15 * width, width - margin - Math.max(330, 0.3 * width));
    double bottom = face.getY() - zone.length(BELOW_RADII * radius) - 4;
    Rectangle2D there =
        new Rectangle2D.Double(left, margin, width - margin - left, bottom - margin);
    boolean room = roomy && there.getWidth() >= 150 && there.getHeight() >= 84;
    return room ? there : new Rectangle2D.Double();
  }
}
