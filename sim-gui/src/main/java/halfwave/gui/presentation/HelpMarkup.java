package halfwave.gui.presentation;

import java.util.regex.Pattern;

/**
 * The form of help pages: {@code # heading}, {@code ## heading below}, paragraphs with an empty
 * line between them, {@code - item}, {@code **bold**}. No more, so that a translator needs no tool.
 */
final class HelpMarkup {

  private static final Pattern BOLD = Pattern.compile("\\*\\*(.+?)\\*\\*");

  private HelpMarkup() {}

  /** As HTML. All else that stands in the source is text, whatever it looks like. */
  static String html(String source) {
    StringBuilder made = new StringBuilder("<html><body>");
    boolean list = false;
    for (String block : blocks(source)) {
      boolean item = block.startsWith("- ");
      if (item != list) {
        made.append(item ? "<ul>" : "</ul>");
        list = item;
      }
      if (item) {
        made.append(tagged("li", block.substring(2)));
      } else if (block.startsWith("## ")) {
        made.append(tagged("h2", block.substring(3)));
      } else if (block.startsWith("# ")) {
        made.append(tagged("h1", block.substring(2)));
      } else {
        made.append(tagged("p", block));
      }
    }
    return made.append(list ? "</ul>" : "").append("</body></html>").toString();
  }

  private static String tagged(String tag, String text) {
    String safe = text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    return "<" + tag + ">" + BOLD.matcher(safe).replaceAll("<b>$1</b>") + "</" + tag + ">";
  }

  /** The words alone, a line for each block. */
  static String text(String source) {
    StringBuilder made = new StringBuilder();
    for (String block : blocks(source)) {
      String bare = block.replaceFirst("^(#+|-) ", "");
      made.append(BOLD.matcher(bare).replaceAll("$1")).append('\n');
    }
    return made.toString();
  }

  /** Lines that belong together are joined: a file may break them where it likes. */
  static String[] blocks(String source) {
    String joined = source.strip().replaceAll("\\n(?=(- |#+ ))", "\n\n");
    String[] blocks = joined.split("\\n\\s*\\n");
    for (int k = 0; k < blocks.length; k++) {
      blocks[k] = blocks[k].strip().replaceAll("\\s*\\n\\s*", " ");
    }
    return blocks;
  }
}
