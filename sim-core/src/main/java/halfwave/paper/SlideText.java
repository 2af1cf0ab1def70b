package halfwave.paper;

import halfwave.picture.Palette;
import halfwave.picture.Typeface;
import java.awt.Color;
import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** The words of a phase of a step, broken into columns: one for each slide it needs. */
final class SlideText {

  /** Capitals of 1/40 of the height of {@link SlidePainter#HEIGHT}, and a little more. */
  static final Font BODY = Typeface.PLAIN.font(38.5);

  static final Font STRONG = Typeface.STRONG.font(38.5);

  private static final Pattern SENTENCES = Pattern.compile("(?<=[.!?»]) ");

  private static final int SHORT = 12;

  static final double LINE = 50;
  private static final double GAP = 22;
  private static final double INDENT = 58;

  private final double width;
  private final double height;
  private final List<List<Line>> columns = new ArrayList<>();
  private double filled;

  /** A line in its place. */
  static final class Line {
    final String sign;
    final String text;
    final Font font;
    final Color colour;
    final double indent;
    final double base;

    private Line(String sign, String text, Font font, Color colour, double indent, double base) {
      this.sign = sign;
      this.text = text;
      this.font = font;
      this.colour = colour;
      this.indent = indent;
      this.base = base;
    }
  }

  SlideText(double width, double height) {
    this.width = width;
    this.height = height;
    columns.add(new ArrayList<>());
  }

  SlideText paragraph(String text, Font font) {
    return add("", text, font, Palette.LIGHT.ink());
  }

  /** An answer behind its letter. */
  SlideText answer(String letter, String text, boolean right) {
    return add(
        letter, text, right ? STRONG : BODY, right ? Palette.LIGHT.accent() : Palette.LIGHT.ink());
  }

  private SlideText add(String sign, String text, Font font, Color colour) {
    double indent = sign.isEmpty() ? 0 : INDENT;
    List<String> lines = Lines.of(text, font, width - indent);
    filled += filled == 0 ? 0 : GAP;
    double whole = lines.size() * LINE;
    if (filled > 0 && filled + whole > height) {
      turn();
    }
    for (int k = 0; k < lines.size(); k++) {
      if (filled + LINE > height) {
        turn();
      }
      columns
          .get(columns.size() - 1)
          .add(
              new Line(
                  k == 0 ? sign : "", lines.get(k), font, colour, indent, filled + 0.78 * LINE));
      filled += LINE;
    }
    return this;
  }

  private void turn() {
    columns.add(new ArrayList<>());
    filled = 0;
  }

  /**
   * A text in parts that fill about as much of a slide each, cut between sentences.
   *
   * @param text the text
   * @param width of a column
   * @param height of a column
   */
  static List<String> parts(String text, double width, double height) {
    int all = Lines.of(text, BODY, width).size();
    int most = (int) (height / LINE);
    int count = (all + most - 1) / most;
    int fair = (all + count - 1) / count;
    List<String> parts = new ArrayList<>();
    String part = "";
    for (String sentence : sentences(text)) {
      String longer = part.isEmpty() ? sentence : part + " " + sentence;
      boolean full =
          Lines.of(longer, BODY, width).size() > (parts.size() < count - 1 ? fair : most);
      if (full && !part.isEmpty()) {
        parts.add(part);
        longer = sentence;
      }
      part = longer;
    }
    parts.add(part);
    return parts;
  }

  /** Sentences; one of a word or two, such as a number, belongs to the one that it begins. */
  private static List<String> sentences(String text) {
    List<String> all = new ArrayList<>();
    String begun = "";
    for (String sentence : SENTENCES.split(text)) {
      String longer = begun.isEmpty() ? sentence : begun + " " + sentence;
      begun = sentence.length() < SHORT ? longer : "";
      if (begun.isEmpty()) {
        all.add(longer);
      }
    }
    if (!begun.isEmpty()) {
      all.add(begun);
    }
    return all;
  }

  /** The columns. */
  List<List<Line>> columns() {
    return columns;
  }
}
