package halfwave.gui.swing;

import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import halfwave.gui.presentation.HelpPage;
import halfwave.gui.presentation.HelpPages;
import halfwave.gui.swing.widget.Theme;
import halfwave.picture.Palette;
import java.awt.Color;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.event.KeyEvent;
import java.awt.geom.Rectangle2D;
import java.util.function.Consumer;
import javax.swing.JEditorPane;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.event.HyperlinkEvent;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultCaret;
import javax.swing.text.DefaultHighlighter;
import javax.swing.text.Document;
import javax.swing.text.Element;
import javax.swing.text.StyleConstants;
import javax.swing.text.View;
import javax.swing.text.ViewFactory;
import javax.swing.text.html.HTML;
import javax.swing.text.html.HTMLDocument;
import javax.swing.text.html.HTMLEditorKit;
import javax.swing.text.html.ImageView;
import javax.swing.text.html.ParagraphView;
import javax.swing.text.html.StyleSheet;
import org.jspecify.annotations.Nullable;

/** A page of help in the type and colours of the window; what was searched for is marked. */
final class HelpSheet extends JEditorPane {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;

  /**
   * An empty one.
   *
   * @param follow is told where a link leads
   */
  HelpSheet(Theme theme, Consumer<String> follow) {
    this.theme = theme;
    addHyperlinkListener(
        e -> {
          if (e.getEventType() == HyperlinkEvent.EventType.ACTIVATED) {
            follow.accept(e.getDescription());
          }
        });
    setName("help.page");
    setEditorKit(new Kit(styles(theme)));
    setEditable(false);
    setBackground(theme.palette().sheet());
    DefaultCaret caret = new DefaultCaret();
    caret.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
    setCaret(caret);
    // a page scrolls: there is no cursor to move, so these keys are left to the pane around it
    for (int code :
        new int[] {
          KeyEvent.VK_UP,
          KeyEvent.VK_DOWN,
          KeyEvent.VK_PAGE_UP,
          KeyEvent.VK_PAGE_DOWN,
          KeyEvent.VK_HOME,
          KeyEvent.VK_END
        }) {
      getInputMap().put(KeyStroke.getKeyStroke(code, 0), "none");
    }
  }

  /** With styles of its own: those of the look and feel's kit are shared by all. */
  private static final class Kit extends HTMLEditorKit {
    private static final long serialVersionUID = 1L;

    private final transient StyleSheet styles;

    Kit(StyleSheet styles) {
      this.styles = styles;
    }

    @Override
    public StyleSheet getStyleSheet() {
      return styles;
    }

    @Override
    public ViewFactory getViewFactory() {
      return new HTMLFactory() {
        @Override
        public View create(Element element) {
          // lines of code are broken too: one that is not would make the whole page too wide
          if (element.getAttributes().getAttribute(StyleConstants.NameAttribute)
              == HTML.Tag.IMPLIED) {
            return new ParagraphView(element);
          }
          View usual = super.create(element);
          return usual instanceof ImageView ? new Smooth(element) : usual;
        }
      };
    }
  }

  /** A picture that is made smaller without losing the thin lines in it. */
  private static final class Smooth extends ImageView {
    Smooth(Element element) {
      super(element);
    }

    @Override
    public void paint(Graphics g, Shape where) {
      ((Graphics2D) g)
          .setRenderingHint(
              RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
      super.paint(g, where);
    }
  }

  /** In points, which to this viewer are the pixels of all other type; its own px are larger. */
  private static StyleSheet styles(Theme theme) {
    Palette p = theme.palette();
    StyleSheet made = new StyleSheet();
    made.addStyleSheet(new HTMLEditorKit().getStyleSheet());
    String ink = "color: " + css(p.ink());
    made.addRule(
        "body { font-family: \"%s\"; font-size: %dpt; %s; margin: %dpt %dpt; }"
            .formatted(FlatInterFont.FAMILY, theme.px(14), ink, theme.px(14), theme.px(20)));
    made.addRule(
        "h1 { font-size: %dpt; font-weight: bold; %s; margin: 0 0 %dpt 0; }"
            .formatted(theme.px(20), ink, theme.px(10)));
    made.addRule(
        "h2 { font-size: %dpt; font-weight: bold; color: %s; margin: %dpt 0 %dpt 0; }"
            .formatted(theme.px(15), css(p.accent()), theme.px(14), theme.px(6)));
    made.addRule("p { margin: 0 0 %dpt 0; }".formatted(theme.px(9)));
    made.addRule("ul { margin: 0 0 %dpt %dpt; }".formatted(theme.px(9), theme.px(18)));
    String line = css(p.hairline());
    made.addRule("a { color: %s; }".formatted(css(p.accent())));
    made.addRule("code, pre { font-family: Monospaced; font-size: %dpt; }".formatted(theme.px(12)));
    made.addRule("pre { margin: 0 0 %dpt %dpt; }".formatted(theme.px(9), theme.px(8)));
    made.addRule("table { margin: 0 0 %dpt 0; }".formatted(theme.px(9)));
    made.addRule(
        "th { text-align: left; font-weight: bold; padding: %dpt; border-bottom: 2px solid %s; }"
            .formatted(theme.px(3), line));
    made.addRule("td { padding: %dpt; border-bottom: 1px solid %s; }".formatted(theme.px(3), line));
    made.addRule("li { margin: 0 0 %dpt 0; }".formatted(theme.px(5)));
    return made;
  }

  private static String css(Color c) {
    return "#%02X%02X%02X".formatted(c.getRed(), c.getGreen(), c.getBlue());
  }

  /**
   * Shows a page from its beginning, or from where one of the words stands.
   *
   * @param page which, or null for none
   * @param words what was searched for, plain
   */
  void show(@Nullable HelpPage page, String[] words) {
    HTMLDocument empty = (HTMLDocument) getEditorKit().createDefaultDocument();
    empty.setBase(HelpPages.base());
    setDocument(empty);
    setText(page == null ? "" : page.html());
    getAccessibleContext().setAccessibleName(page == null ? "" : page.title());
    int first = mark(words);
    SwingUtilities.invokeLater(() -> reveal(first));
  }

  /** Where the first one stands, or the beginning. */
  private int mark(String[] words) {
    getHighlighter().removeAllHighlights();
    Color a = theme.palette().accent();
    var painter =
        new DefaultHighlighter.DefaultHighlightPainter(
            new Color(a.getRed(), a.getGreen(), a.getBlue(), 60));
    int first = Integer.MAX_VALUE;
    try {
      Document shown = getDocument();
      String text = HelpPage.plain(shown.getText(0, shown.getLength()));
      for (String word : words) {
        for (int at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1)) {
          getHighlighter().addHighlight(at, at + word.length(), painter);
          first = Math.min(first, at);
        }
      }
    } catch (BadLocationException e) {
      throw new IllegalStateException(e);
    }
    return first == Integer.MAX_VALUE ? 0 : first;
  }

  private void reveal(int place) {
    Rectangle top = new Rectangle(0, 0, 1, 1);
    try {
      Rectangle2D there =
          place == 0 || place > getDocument().getLength() ? null : modelToView2D(place);
      if (there != null) {
        top = there.getBounds();
        // with the lines around it
        top.grow(0, theme.px(60));
      }
    } catch (BadLocationException e) {
      // the page was changed meanwhile: its beginning will do
    }
    scrollRectToVisible(new Rectangle(0, 0, 1, 1));
    scrollRectToVisible(top);
  }
}
