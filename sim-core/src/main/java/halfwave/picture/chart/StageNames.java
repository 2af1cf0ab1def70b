package halfwave.picture.chart;

import halfwave.picture.PaperLook;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Names of stages that are too short to hold them, in rows above. Each stands to the right of a
 * line that leads down to its stage; of names that would meet, the earlier one stands higher, so
 * that no line crosses a name. At the right edge a name stands to the left of its line. What finds
 * no place stays without a name.
 */
final class StageNames {

  /** Distance of two names in a row (units of the drawing). */
  private static final double APART = 8;

  /** Where there are more, each name is said once only. */
  private static final int MOST_NAMED = 24;

  /** One name. */
  private static final class Name {
    private final String text;
    private final double x;
    private final double width;
    private int row;

    Name(String text, double x, double width) {
      this.text = text;
      this.x = x;
      this.width = width;
    }

    boolean meets(double left, double right) {
      return left < x + width + APART && x - APART < right;
    }
  }

  private final int rows;
  private final List<Name> names = new ArrayList<>();

  StageNames(int rows) {
    this.rows = rows;
  }

  /** One name more, farther to the right. */
  void add(String text, double x, Graphics2D g) {
    names.add(new Name(text, x, 3 + PaperLook.width(g, text, PaperLook.LANE)));
  }

  /**
   * Draws them.
   *
   * @param area where they may stand
   * @param foot where the lowest row ends and the stages begin
   * @param step height of a row
   */
  void draw(Graphics2D g, Rectangle2D area, double foot, double step) {
    if (names.size() > MOST_NAMED) {
      Set<String> known = new HashSet<>();
      names.removeIf(name -> !known.add(name.text));
    }
    List<Name> placed = new ArrayList<>();
    List<Name> atEdge = new ArrayList<>();
    for (int k = names.size() - 1; k >= 0; k--) {
      Name name = names.get(k);
      if (name.x + name.width > area.getMaxX()) {
        atEdge.add(0, name);
        continue;
      }
      name.row = above(placed, name.x, name.x + name.width);
      if (name.row < rows) {
        placed.add(name);
        draw(g, name, name.x + 3, foot, step);
      }
    }
    for (Name name : atEdge) {
      boolean lineIsFree = placed.stream().noneMatch(p -> p.meets(name.x, name.x));
      name.row = above(placed, name.x - name.width, name.x);
      if (lineIsFree && name.row < rows) {
        placed.add(new Name(name.text, name.x - name.width, name.width));
        placed.get(placed.size() - 1).row = name.row;
        draw(g, name, name.x - name.width, foot, step);
      }
    }
  }

  private static int above(List<Name> placed, double left, double right) {
    return placed.stream()
        .filter(p -> p.meets(left, right))
        .mapToInt(p -> p.row + 1)
        .max()
        .orElse(0);
  }

  private static void draw(Graphics2D g, Name name, double left, double foot, double step) {
    double line = foot - name.row * step - 6;
    g.setPaint(PaperLook.SOFT_INK);
    g.setStroke(PaperLook.solid(0.8f));
    g.draw(new Line2D.Double(name.x, foot, name.x, line - 11));
    PaperLook.words(g, name.text, PaperLook.LANE, PaperLook.INK, left, line);
  }
}
