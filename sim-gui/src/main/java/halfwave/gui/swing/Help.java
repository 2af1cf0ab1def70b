package halfwave.gui.swing;

import halfwave.gui.presentation.HelpPages;
import halfwave.gui.presentation.HelpTopics;
import halfwave.gui.presentation.Wording;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import javax.swing.JFrame;
import javax.swing.JOptionPane;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;

/** Opens help: a window of pages, and the box of the first start. */
final class Help {

  private final JFrame over;
  private final Theme theme;
  private final Wording words;
  private @Nullable HelpWindow window;

  Help(JFrame over, Theme theme, Wording words) {
    this.over = over;
    this.theme = theme;
    this.words = words;
  }

  /** In another language or look; what was open stays open. */
  static Help anew(@Nullable Help before, JFrame over, Theme theme, Wording words) {
    Help made = new Help(over, theme, words);
    if (before != null && before.window != null) {
      HelpWindow old = before.window;
      boolean open = old.isShowing();
      old.dispose();
      if (open) {
        made.open(old.topic());
      }
    }
    return made;
  }

  /** About what has the keyboard. */
  void here() {
    open(topic(KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner()));
  }

  private static String topic(@Nullable Component owner) {
    for (Component c = owner; c != null; c = c.getParent()) {
      int tab = c instanceof JTabbedPane tabs ? tabs.getSelectedIndex() : 0;
      String topic = c.getName() == null ? "" : HelpTopics.of(c.getName(), tab);
      if (!topic.isEmpty()) {
        return topic;
      }
    }
    return HelpTopics.FIRST;
  }

  void open(String topic) {
    if (window == null) {
      String version = Help.class.getPackage().getImplementationVersion();
      window = new HelpWindow(over, theme, words, HelpPages.of(words, version));
    }
    window.open(topic);
  }

  /** On the first start. */
  void first() {
    JTextArea area =
        Lettering.paragraph(words.text("help.cautions"), theme.body(), theme.palette().ink());
    area.setColumns(46);
    area.setSize(theme.px(460), Short.MAX_VALUE);
    area.setFocusable(true);
    Object[] buttons = {words.text("help.understood")};
    JOptionPane.showOptionDialog(
        over,
        area,
        words.text("help.first"),
        JOptionPane.DEFAULT_OPTION,
        JOptionPane.PLAIN_MESSAGE,
        null,
        buttons,
        buttons[0]);
  }
}
