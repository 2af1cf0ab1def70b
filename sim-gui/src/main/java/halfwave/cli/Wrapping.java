package halfwave.cli;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines. */
final class Wrapping {

  /** As wide as a page of text may be. */
  static final int WIDTH = 120;

  private Wrapping() {}

  /** The lines of a paragraph; a word that is wider has a line of its own. */
  static List<String> lines(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    // a number stays with its unit
    for (String word : text.split("(?<!\\d) ", -1)) {
      if (line.length() > 0 && line.length() + 1 + word.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  /** Sentences one below the other, each broken into lines. */
  static String paragraphs(List<String> sentences) {
    StringBuilder text = new StringBuilder();
    sentences.forEach(
        sentence -> lines(sentence, WIDTH).forEach(line -> text.append(line).append('\n')));
    return text.toString();
  }
}
