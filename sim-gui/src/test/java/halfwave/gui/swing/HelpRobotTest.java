package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JEditorPane;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import javax.swing.text.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Help opens about what is in use, finds words, and goes away; all of it by keys. */
class HelpRobotTest extends WithWindow {

  @BeforeEach
  void begin() {
    hand.takeKeyboard();
  }

  private JDialog help() {
    JDialog help = hand.aside();
    open.await(
        "the keyboard in help",
        () -> Hand.focused() != null && SwingUtilities.isDescendingFrom(Hand.focused(), help));
    return help;
  }

  private String shown() {
    JEditorPane page = hand.find(JEditorPane.class, "help.page");
    return OpenWindow.onScreen(
        () -> {
          Document text = page.getDocument();
          return text.getText(0, text.getLength());
        });
  }

  private int pages() {
    JList<?> list = hand.find(JList.class, "help.topics");
    return OpenWindow.onScreen(() -> list.getModel().getSize());
  }

  private void focus(String name) {
    OpenWindow.onScreen(() -> hand.find(javax.swing.JComponent.class, name).requestFocusInWindow());
    open.await("the keyboard at " + name, () -> name.equals(hand.focusOwner().getName()));
  }

  @Test
  void f1OpensSearchFindsEscapeCloses() {
    focus("drawing");
    hand.key(KeyEvent.VK_F1);
    JDialog help = help();
    assertThat(OpenWindow.onScreen(help::isModal)).isFalse();
    assertThat(shown()).contains("sense circuit with the flame zone");
    int all = pages();
    hand.type("ground");
    assertThat(pages()).isBetween(1, all - 1);
    assertThat(shown().toLowerCase(java.util.Locale.ROOT)).contains("ground");
    hand.type(" zzz");
    assertThat(pages()).isZero();
    hand.key(KeyEvent.VK_ESCAPE);
    open.await("help's end", () -> !help.isShowing());
  }

  @Test
  void theKeyboardGoesThroughThePages() {
    focus("drawing");
    hand.key(KeyEvent.VK_F1);
    help();
    String first = shown();
    hand.key(KeyEvent.VK_DOWN);
    assertThat(shown()).isNotEqualTo(first);
    hand.tabTo("help.page");
    hand.tabTo("help.topics");
    hand.key(KeyEvent.VK_END);
    assertThat(shown()).contains("Nothing has to be installed");
    hand.key(KeyEvent.VK_UP);
    hand.key(KeyEvent.VK_UP);
    hand.key(KeyEvent.VK_ENTER);
    assertThat(hand.focusOwner().getName()).isEqualTo("help.page");
    JScrollPane around =
        (JScrollPane) SwingUtilities.getAncestorOfClass(JScrollPane.class, hand.focusOwner());
    hand.key(KeyEvent.VK_PAGE_DOWN);
    assertThat(OpenWindow.onScreen(() -> around.getVerticalScrollBar().getValue())).isPositive();
  }

  @Test
  void tabsAndMeterHaveTheirPages() {
    focus("tabs");
    hand.key(KeyEvent.VK_F1);
    JDialog help = help();
    assertThat(shown()).contains("How worn, dirty, misplaced");
    hand.key(KeyEvent.VK_ESCAPE);
    open.await("help's end", () -> !help.isShowing());
    hand.takeKeyboard();
    focus("meter.leads");
    hand.key(KeyEvent.VK_F1);
    help();
    assertThat(shown()).contains("multimeter");
  }

  @Test
  void theEditorAndTheWallHaveTheirPages() {
    hand.menu("menu-lesson.new");
    JList<?> steps = hand.find(JList.class, "editor.steps");
    open.await("the keyboard in the editor", steps::isFocusOwner);
    hand.key(KeyEvent.VK_F1);
    open.await("help", () -> hand.there("help.page"));
    assertThat(shown()).contains("Editor of demonstrations");
    hand.find(JTextField.class, "help.search");
    open.await("the keyboard in help", () -> "help.search".equals(hand.focusOwner().getName()));
    hand.key(KeyEvent.VK_ESCAPE);
    open.await("help's end", () -> !hand.there("help.page"));
    OpenWindow.onScreen(
        () -> {
          open.window().project(new Rectangle(0, 0, 1280, 720));
          return null;
        });
    JComponent wall = hand.find(JComponent.class, "projector");
    open.await(
        "the keyboard on the wall",
        () -> wall.getTopLevelAncestor() instanceof java.awt.Window w && w.isFocused());
    hand.key(KeyEvent.VK_F1);
    open.await("help", () -> hand.there("help.page"));
    assertThat(shown()).contains("With a class");
  }

  @Test
  void anotherLanguageKeepsThePage() {
    hand.menu("menu.glossary");
    JDialog english = help();
    hand.menu("language.es");
    open.await("the English help's end", () -> !english.isShowing());
    assertThat(shown()).contains("Glosario");
    JTextField search = hand.find(JTextField.class, "help.search");
    OpenWindow.onScreen(
        () -> {
          search.setText("CERAMICA");
          return null;
        });
    assertThat(shown()).contains("erámica");
    assertThat(pages()).isPositive();
  }
}
