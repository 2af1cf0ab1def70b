package halfwave.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Stroke;
import java.awt.TexturePaint;
import java.awt.font.GlyphVector;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;

/** Colours, type and strokes of the light look: what every picture on paper is made of. */
public final class PaperLook {

  /** What surrounds a sheet. */
  public static final Color GROUND = new Color(0xF4F1EA);

  /** The paper itself. */
  public static final Color SHEET = new Color(0xFBFAF6);

  /** Lines and words. */
  public static final Color INK = new Color(0x1F2A33);

  /** Secondary words. */
  public static final Color SOFT_INK = new Color(0x5A6670);

  /** Axes and borders that only divide. */
  public static final Color HAIRLINE = new Color(0xCFC8BA);

  /** What is selected, now. */
  public static final Color ACCENT = new Color(0x0B6E69);

  /** Current curves. */
  public static final Color MICROAMPS = new Color(0xB4530A);

  /** What belongs to the flame. */
  public static final Color FLAME = new Color(0x3E7CC4);

  /** Something that is on. */
  public static final Color RUNNING = new Color(0xA3A6A6);

  /** Large enough for the back of a class on a picture of 600 units height. */
  public static final Font TITLE = font(Font.BOLD, 24);

  /** Words of axes. */
  public static final Font BODY = font(Font.PLAIN, 19);

  /** Words that name a curve. */
  public static final Font BODY_STRONG = font(Font.BOLD, 19);

  /** In the lanes of a timeline, where much stands side by side on 720 units of height. */
  public static final Font LANE = font(Font.PLAIN, 15);

  /** Small words. */
  public static final Font NOTE = font(Font.PLAIN, 17);

  private static final int TILE = 8;

  private PaperLook() {}

  /**
   * The program's own type.
   *
   * @param style {@link Font#PLAIN} or {@link Font#BOLD}
   * @param size in units of the drawing
   */
  public static Font font(int style, int size) {
    return (style == Font.BOLD ? Typeface.STRONG : Typeface.PLAIN).font(size);
  }

  /** A line with round ends and corners. */
  public static Stroke solid(float width) {
    return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
  }

  /** A dashed line. */
  public static Stroke dashed(float width) {
    return dashed(width, 9);
  }

  /** A dashed line with dashes of a length. */
  public static Stroke dashed(float width, float dash) {
    return new BasicStroke(
        width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {dash, 6}, 0);
  }

  /** A share that is no less than nought and no more than one (1). */
  public static double share(double ratio) {
    return Math.max(0, Math.min(1, ratio));
  }

  /** A colour between two, nought for the first, one for the second (1). */
  public static Color mixed(Color from, Color to, double share) {
    double s = share(share);
    return new Color(
        (int) Math.round(from.getRed() + s * (to.getRed() - from.getRed())),
        (int) Math.round(from.getGreen() + s * (to.getGreen() - from.getGreen())),
        (int) Math.round(from.getBlue() + s * (to.getBlue() - from.getBlue())));
  }

  /** That ground, ruled with slanted lines. */
  public static TexturePaint hatched(Color ground, Color line) {
    int fine = 4 * TILE;
    BufferedImage tile = new BufferedImage(fine, fine, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = tile.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(ground);
    g.fillRect(0, 0, fine, fine);
    g.setColor(line);
    g.setStroke(new BasicStroke(4));
    for (int k = -1; k <= 1; k++) {
      g.draw(new Line2D.Double(k * fine - 4, fine + 4, k * fine + fine + 4, -4));
    }
    g.dispose();
    return new TexturePaint(tile, new Rectangle2D.Double(0, 0, TILE, TILE));
  }

  /** Words that stay readable on any ground; the place is the left end of their base line. */
  public static void words(Graphics2D g, String text, Font font, Color ink, double x, double y) {
    GlyphVector glyphs = font.createGlyphVector(g.getFontRenderContext(), text);
    var outline = glyphs.getOutline((float) x, (float) y);
    g.setStroke(new BasicStroke(5, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    g.setColor(SHEET);
    g.draw(outline);
    g.setColor(ink);
    g.fill(outline);
  }

  /** How wide words are, in units of the drawing. */
  public static double width(Graphics2D g, String text, Font font) {
    return font.getStringBounds(text, g.getFontRenderContext()).getWidth();
  }
}
