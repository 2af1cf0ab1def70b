package halfwave.gui.swing;

import halfwave.gui.presentation.Wording;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.JFrame;
import javax.swing.JOptionPane;
import javax.swing.JTextArea;

/** Pages of help in a box. */
final class Help {

  private static final List<String> KEYS =
      List.of(
          "key.play",
          "key.step",
          "key.faster",
          "key.call",
          "key.power",
          "key.meter",
          "key.function",
          "key.undo",
          "key.files",
          "key.panels",
          "key.tabs",
          "key.charts",
          "key.drawing",
          "key.why",
          "key.lesson",
          "key.seal",
          "key.cursor",
          "key.help");

  private final JFrame over;
  private final Theme theme;
  private final Wording words;

  Help(JFrame over, Theme theme, Wording words) {
    this.over = over;
    this.theme = theme;
    this.words = words;
  }

  void keys() {
    box(
        words.text("help.keys-title"),
        KEYS.stream().map(words::text).collect(Collectors.joining("\n\n")),
        words.text("help.close"));
  }

  void cautions() {
    box(words.text("help.cautions-title"), words.text("help.cautions"), words.text("help.close"));
  }

  /** On the first start. */
  void first() {
    box(words.text("help.first"), words.text("help.cautions"), words.text("help.understood"));
  }

  void about() {
    String version = Help.class.getPackage().getImplementationVersion();
    box(
        words.text("help.about-title"),
        version == null ? words.text("help.about-unversioned") : words.text("help.about", version),
        words.text("help.close"));
  }

  private void box(String title, String text, String button) {
    JTextArea area = Lettering.paragraph(text, theme.body(), theme.palette().ink());
    area.setColumns(46);
    area.setSize(theme.px(460), Short.MAX_VALUE);
    area.setFocusable(true);
    Object[] buttons = {button};
    JOptionPane.showOptionDialog(
        over,
        area,
        title,
        JOptionPane.DEFAULT_OPTION,
        JOptionPane.PLAIN_MESSAGE,
        null,
        buttons,
        buttons[0]);
  }
}
