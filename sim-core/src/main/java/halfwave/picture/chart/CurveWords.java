package halfwave.picture.chart;

import halfwave.picture.PaperLook;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.data.xy.XYSeries;

/** The words within a chart of curves, placed where they cover nothing. */
final class CurveWords extends AbstractXYAnnotation {

  private static final long serialVersionUID = 1L;

  /** A word and where it belongs. */
  private static final class Word {
    private final double place;
    private final String text;
    private final Color ink;

    Word(double place, String text, Color ink) {
      this.place = place;
      this.text = text;
      this.ink = ink;
    }
  }

  private final XYSeries lower;
  private final XYSeries upper;
  private final transient List<Word> marks = new ArrayList<>();
  private final transient List<Word> gaps = new ArrayList<>();
  private String reversed = "";

  CurveWords(XYSeries lower, XYSeries upper) {
    this.lower = lower;
    this.upper = upper;
  }

  /** Says what an upright line means. */
  void mark(double place, String text, Color ink) {
    marks.add(new Word(place, text, ink));
  }

  /** Says that there are no readings about a place. */
  void gap(double place, String text) {
    gaps.add(new Word(place, text, PaperLook.SOFT_INK));
  }

  /** Says what it means to be below zero. */
  void reversed(String text) {
    reversed = text;
  }

  @Override
  public void draw(
      Graphics2D g,
      XYPlot plot,
      Rectangle2D area,
      ValueAxis domain,
      ValueAxis range,
      int renderer,
      PlotRenderingInfo info) {
    marks(g, area, domain);
    List<Line2D> lines = lines(area, domain, range);
    for (Word gap : gaps) {
      double x = domain.valueToJava2D(gap.place, area, RectangleEdge.BOTTOM);
      double length = PaperLook.width(g, gap.text, PaperLook.NOTE);
      // upright, since no reading is often a narrow band
      AffineTransform level = g.getTransform();
      g.rotate(-Math.PI / 2, x, area.getCenterY());
      PaperLook.words(g, gap.text, PaperLook.NOTE, gap.ink, x - length / 2, area.getCenterY() + 6);
      g.setTransform(level);
      lines.add(
          new Line2D.Double(x, area.getCenterY() - length / 2, x, area.getCenterY() + length / 2));
    }
    if (!reversed.isEmpty()) {
      double width = PaperLook.width(g, reversed, PaperLook.NOTE);
      double zero = range.valueToJava2D(0, area, RectangleEdge.LEFT);
      double line = Math.max(area.getMaxY() - 8, zero + 18);
      PaperLook.words(
          g, reversed, PaperLook.NOTE, PaperLook.SOFT_INK, area.getMaxX() - width - 8, line);
    }
    names(g, lines, area, domain, range);
  }

  /** Side by side at the top; of two, the left one stands left of its line where there is room. */
  private void marks(Graphics2D g, Rectangle2D area, ValueAxis domain) {
    List<Word> ordered = new ArrayList<>(marks);
    ordered.sort(Comparator.comparingDouble(mark -> mark.place));
    for (int k = 0; k < ordered.size(); k++) {
      Word mark = ordered.get(k);
      double x = domain.valueToJava2D(mark.place, area, RectangleEdge.BOTTOM);
      double width = PaperLook.width(g, mark.text, PaperLook.NOTE);
      boolean roomLeft = x - width - 8 > area.getMinX();
      boolean roomRight = x + width + 8 < area.getMaxX();
      boolean left = !roomRight || (roomLeft && ordered.size() == 2 && k == 0);
      PaperLook.words(
          g,
          mark.text,
          PaperLook.NOTE,
          mark.ink,
          left ? x - width - 8 : x + 8,
          area.getMinY() + 24 + (roomLeft ? 0 : 22 * k));
    }
  }

  /** The name of each curve beside it, where the two are far apart and no line is covered. */
  private void names(
      Graphics2D g, List<Line2D> lines, Rectangle2D area, ValueAxis domain, ValueAxis range) {
    List<Integer> farApart =
        IntStream.range(0, lower.getItemCount())
            .filter(k -> apart(k) >= 0)
            .boxed()
            .sorted(Comparator.comparingDouble(k -> -apart(k)))
            .toList();
    for (XYSeries curve : List.of(lower, upper)) {
      String text = curve.getKey().toString();
      double width = PaperLook.width(g, text, PaperLook.BODY_STRONG);
      boolean done = false;
      // a steep or bent curve needs the word a little farther off
      for (double off = 9; !done && off <= 45; off += 9) {
        for (int k = 0; !done && k < farApart.size(); k++) {
          int at = farApart.get(k);
          double x = domain.valueToJava2D(curve.getX(at).doubleValue(), area, RectangleEdge.BOTTOM);
          double y = range.valueToJava2D(curve.getY(at).doubleValue(), area, RectangleEdge.LEFT);
          double left = x - width / 2;
          done =
              area.contains(left - 4, y - off - 18, width + 8, 22)
                  && !covers(lines, left, y - off, width);
          if (done) {
            PaperLook.words(g, text, PaperLook.BODY_STRONG, PaperLook.MICROAMPS, left, y - off);
          }
        }
      }
    }
  }

  private static boolean covers(List<Line2D> lines, double left, double line, double width) {
    return lines.stream().anyMatch(l -> l.intersects(left - 4, line - 18, width + 8, 22));
  }

  private List<Line2D> lines(Rectangle2D area, ValueAxis domain, ValueAxis range) {
    List<Line2D> lines = new ArrayList<>();
    lines(lines, lower, area, domain, range);
    lines(lines, upper, area, domain, range);
    for (Word mark : marks) {
      double x = domain.valueToJava2D(mark.place, area, RectangleEdge.BOTTOM);
      lines.add(new Line2D.Double(x, area.getMinY(), x, area.getMaxY()));
    }
    return lines;
  }

  /** NaN, where there is no reading, is not far apart. */
  private double apart(int k) {
    double apart = Math.abs(upper.getY(k).doubleValue() - lower.getY(k).doubleValue());
    return apart >= 0 ? apart : -1;
  }

  private static void lines(
      List<Line2D> lines, XYSeries curve, Rectangle2D area, ValueAxis domain, ValueAxis range) {
    for (int k = 0; k + 1 < curve.getItemCount(); k++) {
      double y = range.valueToJava2D(curve.getY(k).doubleValue(), area, RectangleEdge.LEFT);
      double next = range.valueToJava2D(curve.getY(k + 1).doubleValue(), area, RectangleEdge.LEFT);
      if (!Double.isNaN(y + next)) {
        lines.add(
            new Line2D.Double(
                domain.valueToJava2D(curve.getX(k).doubleValue(), area, RectangleEdge.BOTTOM),
                y,
                domain.valueToJava2D(curve.getX(k + 1).doubleValue(), area, RectangleEdge.BOTTOM),
                next));
      }
    }
  }
}
