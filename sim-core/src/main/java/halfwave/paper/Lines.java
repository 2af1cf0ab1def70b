package halfwave.paper;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks text into lines and measures it; the same on every machine. */
final class Lines {

  /** Fractions of units count, as on paper. */
  private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);

  /** A number stays with its unit, a sign with its number. */
  private static final Pattern BREAK = Pattern.compile("(?<![\\d×±≈]) | (?![\\p{L}µ°%Ω×−\\d])");

  private static final char FIXED_SPACE = '\u00a0';

  private Lines() {}

  static double width(String text, Font font) {
    return font.getStringBounds(text, MEASURE).getWidth();
  }

  /** How far capitals rise above their line. */
  static double capital(Font font) {
    return font.createGlyphVector(MEASURE, "H").getVisualBounds().getHeight();
  }

  /**
   * The lines of a text.
   *
   * @param text one or more paragraphs, a line end between them
   * @param font what it is set in
   * @param width room for a line; a longer word stands alone and sticks out
   */
  static List<String> of(String text, Font font, double width) {
    List<String> lines = new ArrayList<>();
    for (String paragraph : text.split("\n", -1)) {
      StringBuilder line = new StringBuilder();
      for (String word : BREAK.split(paragraph.strip(), -1)) {
        String longer = line.length() == 0 ? word : line + " " + word;
        if (line.length() > 0 && width(longer, font) > width) {
          lines.add(shown(line.toString()));
          line.setLength(0);
          line.append(word);
        } else {
          line.setLength(0);
          line.append(longer);
        }
      }
      lines.add(shown(line.toString()));
    }
    return lines;
  }

  /** Spaces that hold words together have done so by now; who searches types the usual one. */
  private static String shown(String line) {
    return line.replace(FIXED_SPACE, ' ');
  }
}
