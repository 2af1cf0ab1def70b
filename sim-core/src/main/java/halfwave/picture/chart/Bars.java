package halfwave.picture.chart;

import halfwave.display.Sentences;
import halfwave.picture.PaperLook;
import halfwave.picture.Picture;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Numbers of named things side by side, as level bars with the number at the end of each: for
 * notebooks. The words come from the caller, units included. Immutable.
 */
public final class Bars implements Picture {

  private static final double WIDTH = 960;
  private static final double TOP = 64;
  private static final double BOTTOM = 48;
  private static final double ROW = 34;

  /** Room for the number beyond the end of the longest bar. */
  private static final double NUMBER = 90;

  /** A class and no record, as its unit is that of the axis. */
  private static final class Bar {
    private final String name;
    private final double value;

    Bar(String name, double value) {
      this.name = name;
      this.value = value;
    }
  }

  private final String title;
  private final String axis;
  private final int decimals;
  private final List<Bar> bars;

  private Bars(String title, String axis, int decimals, List<Bar> bars) {
    this.title = title;
    this.axis = axis;
    this.decimals = decimals;
    this.bars = List.copyOf(bars);
  }

  /**
   * No bars yet.
   *
   * @param title the title
   * @param axis what the bars measure, with its unit
   * @param decimals decimals of the numbers (1); 0 to 6
   */
  public static Bars of(String title, String axis, int decimals) {
    if (!(decimals >= 0 && decimals <= 6)) {
      throw new IllegalArgumentException("decimals = " + decimals + ": 0 to 6");
    }
    return new Bars(title, axis, decimals, List.of());
  }

  /** The same with one more bar below; its value is finite, and may be below zero. */
  public Bars bar(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("value = " + value + ": finite");
    }
    List<Bar> more = new ArrayList<>(bars);
    more.add(new Bar(name, value));
    return new Bars(title, axis, decimals, more);
  }

  @Override
  public double width() {
    return WIDTH;
  }

  @Override
  public double height() {
    return TOP + ROW * Math.max(1, bars.size()) + BOTTOM;
  }

  @Override
  public void paint(Graphics2D g) {
    g.setColor(PaperLook.GROUND);
    g.fill(new Rectangle2D.Double(0, 0, WIDTH, height()));
    put(g, title, PaperLook.TITLE, PaperLook.INK, 20, 38);
    double names = 0;
    double low = 0;
    double high = 0;
    for (Bar bar : bars) {
      names = Math.max(names, PaperLook.width(g, bar.name, PaperLook.NOTE));
      low = Math.min(low, bar.value);
      high = Math.max(high, bar.value);
    }
    double left = 20 + names + 14 + (low < 0 ? NUMBER : 0);
    double right = WIDTH - 20 - (high > 0 ? NUMBER : 0);
    double scale = high > low ? (right - left) / (high - low) : 0;
    double zero = left - low * scale;
    for (int k = 0; k < bars.size(); k++) {
      row(g, bars.get(k), TOP + ROW * k, 20 + names, zero, scale);
    }
    g.setColor(PaperLook.SOFT_INK);
    g.fill(new Rectangle2D.Double(zero - 0.6, TOP - 4, 1.2, ROW * bars.size() + 4));
    double length = PaperLook.width(g, axis, PaperLook.NOTE);
    double at = Math.min(zero, WIDTH - 20 - length);
    put(g, axis, PaperLook.NOTE, PaperLook.SOFT_INK, at, height() - 16);
  }

  private void row(Graphics2D g, Bar bar, double top, double nameEnd, double zero, double scale) {
    double line = top + ROW / 2 + 6;
    double end = zero + bar.value * scale;
    put(
        g,
        bar.name,
        PaperLook.NOTE,
        PaperLook.INK,
        nameEnd - PaperLook.width(g, bar.name, PaperLook.NOTE),
        line);
    g.setColor(bar.value < 0 ? PaperLook.FLAME : PaperLook.MICROAMPS);
    double begin = Math.min(zero, end);
    g.fill(new Rectangle2D.Double(begin, top + 6, Math.abs(end - zero), ROW - 12));
    String number = Sentences.in(Locale.ENGLISH).quantities().fixed(bar.value, decimals);
    double width = PaperLook.width(g, number, PaperLook.NOTE);
    put(g, number, PaperLook.NOTE, PaperLook.INK, bar.value < 0 ? end - width - 8 : end + 8, line);
  }

  private static void put(Graphics2D g, String text, Font font, Color ink, double x, double y) {
    g.setFont(font);
    g.setColor(ink);
    g.drawString(text, (float) x, (float) y);
  }
}
