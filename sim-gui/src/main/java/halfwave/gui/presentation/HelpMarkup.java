package halfwave.gui.presentation;

import java.util.List;
import java.util.Map;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Image;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.commonmark.renderer.text.LineBreakRendering;
import org.commonmark.renderer.text.TextContentRenderer;

/** The form of help pages and documents: CommonMark with tables. HTML in them is shown as text. */
final class HelpMarkup {

  /** Pictures of a window, made small enough for the sheet (px). */
  private static final int PICTURE_WIDTH = 600;

  private static final List<Extension> TABLES = List.of(TablesExtension.create());
  private static final Parser PARSER = Parser.builder().extensions(TABLES).build();
  private static final HtmlRenderer HTML =
      HtmlRenderer.builder()
          .extensions(TABLES)
          .escapeHtml(true)
          .attributeProviderFactory(context -> HelpMarkup::attributes)
          .build();
  private static final TextContentRenderer TEXT =
      TextContentRenderer.builder()
          .extensions(TABLES)
          .lineBreakRendering(LineBreakRendering.COMPACT)
          .build();

  private HelpMarkup() {}

  private static void attributes(Node node, String tag, Map<String, String> attributes) {
    if (node instanceof Image) {
      attributes.put("width", Integer.toString(PICTURE_WIDTH));
    } else if (node instanceof TableBlock && tag.equals("table")) {
      attributes.put("cellspacing", "0");
      attributes.put("width", "100%");
    }
  }

  /** As HTML. */
  static String html(String source) {
    return "<html><body>" + HTML.render(PARSER.parse(source)) + "</body></html>";
  }

  /** The words alone. */
  static String text(String source) {
    return TEXT.render(PARSER.parse(source));
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
