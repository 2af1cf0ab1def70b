package halfwave.picture;

import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Puts words where they cover nothing: each has a few places it may stand at, the first free one is
 * taken. What finds no place is left out; the description has it.
 */
public final class LabelPlacer {

  /** Small words. */
  public static final Font NOTE = PaperLook.font(Font.PLAIN, 11);

  /** Names of parts. */
  public static final Font BODY = PaperLook.font(Font.PLAIN, 13);

  /** What must not be missed. */
  public static final Font STRONG = PaperLook.font(Font.BOLD, 13);

  /** What a meter shows. */
  public static final Font READING = PaperLook.font(Font.BOLD, 16);

  private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);
  private static final double ASCENT = 0.95;
  private static final double HEIGHT = 1.25;
  private static final double EDGE = 3;

  /**
   * Words that have found their place.
   *
   * @param text the words
   * @param font their type
   * @param colour their ink
   * @param halo whether they stand over the flame
   * @param bounds where
   * @param from what a dotted line leads to them from, or null
   */
  public record Placed(
      String text,
      Font font,
      Color colour,
      boolean halo,
      Rectangle2D bounds,
      @Nullable Point2D from) {
    /** The left end of their base line. */
    public Point2D start() {
      return new Point2D.Double(bounds.getX(), bounds.getY() + ASCENT * font.getSize());
    }
  }

  /**
   * A place where words may stand.
   *
   * @param at a point beside them
   * @param across −1 left of the point, 0 centred, 1 right of it
   * @param down −1 above the point, 0 centred, 1 below it
   * @param from what they are led to from, where they stand apart from it, or null
   */
  public record Spot(Point2D at, int across, int down, @Nullable Point2D from) {
    /** A place beside a point. */
    public static Spot of(double x, double y, int across, int down) {
      return new Spot(new Point2D.Double(x, y), across, down, null);
    }

    /** The same where the words stand apart, and a line leads to them. */
    public Spot led(Point2D start) {
      return new Spot(at, across, down, start);
    }
  }

  private final List<Placed> placed = new ArrayList<>();
  private final List<Rectangle2D> obstacles = new ArrayList<>();
  private final Rectangle2D sheet;

  /** Begins with nothing on a sheet. */
  public LabelPlacer(Rectangle2D sheet) {
    this.sheet = sheet;
  }

  /** Keeps words off a surface. */
  public void avoid(Rectangle2D box) {
    obstacles.add(box);
  }

  /** Keeps words off a line or an outline. */
  public void avoid(Shape line, double margin) {
    PathIterator path = line.getPathIterator(null, 1);
    double[] p = new double[6];
    double x = 0;
    double y = 0;
    for (; !path.isDone(); path.next()) {
      int kind = path.currentSegment(p);
      if (kind == PathIterator.SEG_LINETO) {
        double left = Math.min(x, p[0]) - margin;
        double top = Math.min(y, p[1]) - margin;
        obstacles.add(
            new Rectangle2D.Double(
                left, top, Math.abs(x - p[0]) + 2 * margin, Math.abs(y - p[1]) + 2 * margin));
      }
      if (kind != PathIterator.SEG_CLOSE) {
        x = p[0];
        y = p[1];
      }
    }
  }

  /** How wide words are, in units of the sheet. */
  public static double width(String text, Font font) {
    return font.getStringBounds(text, CONTEXT).getWidth();
  }

  /** All words that have found a place, in the order in which they did. */
  public List<Placed> placed() {
    return List.copyOf(placed);
  }

  /** Words that may be left out; whether they have found a place. */
  public boolean place(String text, Font font, Color colour, boolean halo, Spot... spots) {
    for (Spot spot : spots) {
      Rectangle2D box = box(text, font, spot);
      if (free(box, true)) {
        return put(text, font, colour, halo, box, spot.from());
      }
    }
    return false;
  }

  /** Words that rather cover a line than be left out. */
  public boolean insist(String text, Font font, Color colour, boolean halo, Spot... spots) {
    if (place(text, font, colour, halo, spots)) {
      return true;
    }
    for (Spot spot : spots) {
      Rectangle2D box = box(text, font, spot);
      if (free(box, false)) {
        return put(text, font, colour, true, box, spot.from());
      }
    }
    return false;
  }

  /** Words inside a box of their own. */
  public boolean inside(Rectangle2D frame, String text, Font font, Color colour, Spot spot) {
    Rectangle2D box = box(text, font, spot);
    return frame.contains(box) && free(box, false) && put(text, font, colour, false, box, null);
  }

  /** Words inside a box of their own, off the shapes that are in it. */
  public boolean inside(
      Rectangle2D frame, String text, Font font, Color colour, List<Shape> off, Spot... spots) {
    for (Spot spot : spots) {
      Rectangle2D box = box(text, font, spot);
      if (off.stream().noneMatch(shape -> shape.intersects(box))
          && inside(frame, text, font, colour, spot)) {
        return true;
      }
    }
    return false;
  }

  private boolean put(
      String text, Font font, Color colour, boolean halo, Rectangle2D box, @Nullable Point2D from) {
    placed.add(new Placed(text, font, colour, halo, box, from));
    return true;
  }

  private static Rectangle2D box(String text, Font font, Spot spot) {
    double w = width(text, font);
    double h = HEIGHT * font.getSize();
    return new Rectangle2D.Double(
        spot.at().getX() + 0.5 * w * (spot.across() - 1),
        spot.at().getY() + 0.5 * h * (spot.down() - 1),
        w,
        h);
  }

  private boolean free(Rectangle2D box, boolean offLines) {
    boolean in =
        box.getX() >= sheet.getX() + EDGE
            && box.getY() >= sheet.getY() + EDGE
            && box.getMaxX() <= sheet.getMaxX() - EDGE
            && box.getMaxY() <= sheet.getMaxY() - EDGE;
    Rectangle2D wide =
        new Rectangle2D.Double(
            box.getX() - 4, box.getY() - 1, box.getWidth() + 8, box.getHeight() + 2);
    return in
        && placed.stream().noneMatch(p -> p.bounds().intersects(wide))
        && (!offLines || obstacles.stream().noneMatch(o -> o.intersects(box)));
  }
}
