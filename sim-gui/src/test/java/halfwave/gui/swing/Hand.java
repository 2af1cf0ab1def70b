package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFileChooser;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JTabbedPane;
import javax.swing.MenuElement;
import javax.swing.SwingUtilities;

/**
 * A hand at the window: mouse and keys as events in the queue of the program, through the window
 * they are made for. So they meet what lies on top, as a real pointer does, and leave the pointer
 * of whoever runs the tests alone.
 */
public final class Hand {

  private final OpenWindow open;

  public Hand(OpenWindow open) {
    this.open = open;
  }

  // ---------------------------------------------------------------- finding

  /** Everything that can be seen, in all windows. */
  static List<Component> seen() {
    List<Component> all = new ArrayList<>();
    for (java.awt.Window window : java.awt.Window.getWindows()) {
      if (window.isShowing()) {
        collect(window, all);
      }
    }
    return all;
  }

  static void collect(Component from, List<Component> into) {
    if (from.isShowing()) {
      into.add(from);
      if (from instanceof Container container) {
        for (Component child : container.getComponents()) {
          collect(child, into);
        }
      }
    }
  }

  static <T extends Component> Optional<T> look(Class<T> type, Predicate<T> which) {
    return OpenWindow.onScreen(
        () -> seen().stream().filter(type::isInstance).map(type::cast).filter(which).findFirst());
  }

  <T extends Component> T find(Class<T> type, String name) {
    open.await(
        type.getSimpleName() + " " + name,
        () -> look(type, c -> name.equals(c.getName())).isPresent());
    return look(type, c -> name.equals(c.getName())).orElseThrow();
  }

  /** What is there at once, or a failure. */
  <T extends Component> T now(Class<T> type, String name) {
    return look(type, c -> name.equals(c.getName()))
        .orElseThrow(() -> new AssertionError("no " + name));
  }

  boolean there(String name) {
    return look(Component.class, c -> name.equals(c.getName())).isPresent();
  }

  /** Waits until a button can be used. */
  void ready(String name) {
    open.await(
        name,
        () ->
            look(AbstractButton.class, b -> name.equals(b.getName()))
                .filter(AbstractButton::isEnabled)
                .isPresent());
    open.settle();
  }

  // ------------------------------------------------------------------ mouse

  /** Clicks the thing of that name. */
  void click(String name) {
    click(find(Component.class, name));
  }

  void click(Component c) {
    click(c, OpenWindow.onScreen(() -> middle(c)));
  }

  /** Clicks a place of a thing, after it was scrolled into sight. */
  void click(Component c, Point at) {
    Point reached = reach(c, at);
    post(c, reached, MouseEvent.MOUSE_PRESSED, true);
    post(c, reached, MouseEvent.MOUSE_RELEASED, false);
    post(c, reached, MouseEvent.MOUSE_CLICKED, false);
    open.settle();
  }

  /** Presses on a place, moves on in steps and lets go. */
  void drag(Component c, Point from, Point to, int steps) {
    reach(c, from);
    post(c, from, MouseEvent.MOUSE_PRESSED, true);
    for (int k = 1; k <= steps; k++) {
      int x = from.x + (to.x - from.x) * k / steps;
      int y = from.y + (to.y - from.y) * k / steps;
      post(c, new Point(x, y), MouseEvent.MOUSE_DRAGGED, true);
    }
    open.settle();
    post(c, to, MouseEvent.MOUSE_RELEASED, false);
    open.settle();
  }

  private static Point middle(Component c) {
    return new Point(c.getWidth() / 2, c.getHeight() / 2);
  }

  /** Waits until nothing covers it: a menu may be seen before it is laid out. */
  private Point reach(Component c, Point at) {
    open.await(
        c.getClass().getSimpleName() + " " + c.getName() + " in reach of the hand",
        () -> free(c, at));
    return at;
  }

  private static boolean free(Component c, Point at) {
    if (c instanceof JComponent inside) {
      inside.scrollRectToVisible(new Rectangle(at.x - 4, at.y - 4, 8, 8));
    }
    java.awt.Window window = SwingUtilities.getWindowAncestor(c);
    if (window == null) {
      return false;
    }
    Point inWindow = SwingUtilities.convertPoint(c, at, window);
    Component top = SwingUtilities.getDeepestComponentAt(window, inWindow.x, inWindow.y);
    return top != null && SwingUtilities.isDescendingFrom(top, c);
  }

  private static void post(Component c, Point at, int id, boolean down) {
    OpenWindow.onScreen(
        () -> {
          java.awt.Window window =
              c instanceof java.awt.Window w ? w : SwingUtilities.getWindowAncestor(c);
          if (window == null) {
            return null;
          }
          Point p = SwingUtilities.convertPoint(c, at, window);
          queue()
              .postEvent(
                  new MouseEvent(
                      window,
                      id,
                      System.currentTimeMillis(),
                      down ? InputEvent.BUTTON1_DOWN_MASK : 0,
                      p.x,
                      p.y,
                      1,
                      false,
                      MouseEvent.BUTTON1));
          return null;
        });
    OpenWindow.onScreen(() -> null);
  }

  private static EventQueue queue() {
    return Toolkit.getDefaultToolkit().getSystemEventQueue();
  }

  /** Any mouse event anywhere in a window. */
  static void mouse(java.awt.Window window, Point at, int id, int button, int clicks) {
    int mask =
        id == MouseEvent.MOUSE_PRESSED || id == MouseEvent.MOUSE_DRAGGED
            ? InputEvent.getMaskForButton(button)
            : 0;
    queue()
        .postEvent(
            new MouseEvent(
                window,
                id,
                System.currentTimeMillis(),
                mask,
                at.x,
                at.y,
                clicks,
                false,
                id == MouseEvent.MOUSE_MOVED ? MouseEvent.NOBUTTON : button));
  }

  /** Brings a tab to the front by its heading. */
  void tab(String heading) {
    JTabbedPane tabs = find(JTabbedPane.class, "tabs");
    Rectangle bounds =
        OpenWindow.onScreen(
            () -> {
              int index = tabs.indexOfTab(heading);
              assertThat(index).as("tab %s", heading).isNotNegative();
              return tabs.getBoundsAt(index);
            });
    click(tabs, new Point((int) bounds.getCenterX(), (int) bounds.getCenterY()));
  }

  /** Chooses from the menu bar by name; the menus themselves are the platform's. */
  void menu(String name) {
    JMenuItem item =
        OpenWindow.onScreen(
            () ->
                items(open.frame().getJMenuBar())
                    .filter(i -> name.equals(i.getName()))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no menu item " + name)));
    EventQueue.invokeLater(() -> item.doClick(0));
    OpenWindow.onScreen(() -> null);
    open.settle();
  }

  /** Opens a menu that is filled only then, and chooses by the words of its item. */
  void menu(String name, String words) {
    EventQueue.invokeLater(
        () -> {
          JMenu menu =
              (JMenu)
                  items(open.frame().getJMenuBar())
                      .filter(i -> name.equals(i.getName()))
                      .findFirst()
                      .orElseThrow();
          menu.setSelected(true);
          Stream.of(menu.getMenuComponents())
              .filter(JMenuItem.class::isInstance)
              .map(JMenuItem.class::cast)
              .filter(i -> words.equals(i.getText()))
              .findFirst()
              .orElseThrow()
              .doClick(0);
          menu.setSelected(false);
        });
    OpenWindow.onScreen(() -> null);
    open.settle();
  }

  static Stream<JMenuItem> items(MenuElement from) {
    Stream<JMenuItem> self = from instanceof JMenuItem item ? Stream.of(item) : Stream.empty();
    return Stream.concat(self, Stream.of(from.getSubElements()).flatMap(Hand::items));
  }

  // ------------------------------------------------------------------- keys

  /** The window has to have the keyboard before keys can mean anything. */
  void takeKeyboard() {
    EventQueue.invokeLater(
        () -> {
          open.frame().toFront();
          open.frame().requestFocus();
        });
    open.await("the keyboard's focus", () -> focused() != null);
  }

  /** What has the keyboard, or null just now. */
  static Component focused() {
    return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
  }

  Component focusOwner() {
    return Objects.requireNonNull(OpenWindow.onScreen(Hand::focused), "no focus owner");
  }

  /** A key, pressed and let go. */
  public void key(int code, int modifiers) {
    post(KeyEvent.KEY_PRESSED, code, KeyEvent.CHAR_UNDEFINED, modifiers);
    post(KeyEvent.KEY_RELEASED, code, KeyEvent.CHAR_UNDEFINED, modifiers);
    open.settle();
  }

  public void key(int code) {
    key(code, 0);
  }

  /** Keys that make letters. */
  void type(String text) {
    for (char c : text.toCharArray()) {
      letter(c);
    }
    open.settle();
  }

  /** A key without waiting for what it does. */
  void letterOrKey(int code, int modifiers) {
    boolean letter = code == KeyEvent.VK_SPACE || code == KeyEvent.VK_PERIOD;
    if (letter && modifiers == 0) {
      letter(code == KeyEvent.VK_SPACE ? ' ' : '.');
      return;
    }
    post(KeyEvent.KEY_PRESSED, code, KeyEvent.CHAR_UNDEFINED, modifiers);
    post(KeyEvent.KEY_RELEASED, code, KeyEvent.CHAR_UNDEFINED, modifiers);
  }

  void letter(char c) {
    int code = KeyEvent.getExtendedKeyCodeForChar(c);
    post(KeyEvent.KEY_PRESSED, code, c, 0);
    post(KeyEvent.KEY_TYPED, KeyEvent.VK_UNDEFINED, c, 0);
    post(KeyEvent.KEY_RELEASED, code, c, 0);
  }

  private void post(int id, int code, char c, int modifiers) {
    OpenWindow.onScreen(
        () -> {
          Component to = focused() == null ? open.frame() : focused();
          queue().postEvent(new KeyEvent(to, id, System.currentTimeMillis(), modifiers, code, c));
          return null;
        });
    OpenWindow.onScreen(() -> null);
  }

  /** Brings the keyboard to a thing by the Tab key alone. */
  void tabTo(String name) {
    for (int k = 0; k < 200 && !name.equals(focusOwner().getName()); k++) {
      key(KeyEvent.VK_TAB);
    }
    assertThat(focusOwner().getName()).as("reached by the Tab key").isEqualTo(name);
  }

  // ---------------------------------------------------------------- dialogs

  /** One that waits for nobody, such as help. */
  JDialog aside() {
    open.await("a dialog", () -> look(JDialog.class, d -> !d.isModal()).isPresent());
    return look(JDialog.class, d -> !d.isModal()).orElseThrow();
  }

  /** The one that waits for an answer; the editor does not. */
  JDialog dialog() {
    open.await("a dialog", () -> look(JDialog.class, JDialog::isModal).isPresent());
    return look(JDialog.class, JDialog::isModal).orElseThrow();
  }

  /** Answers the dialog on top by the words of a button. */
  void answer(String words) {
    JDialog asked = dialog();
    AbstractButton button =
        look(AbstractButton.class, b -> words.equals(b.getText()) && within(b, asked))
            .orElseThrow(() -> new AssertionError("no button " + words));
    EventQueue.invokeLater(() -> button.doClick(0));
    open.await("the dialog's end", () -> !asked.isShowing());
    open.settle();
  }

  /** Chooses a file in the chooser that is open or about to open. */
  void choose(Path file) {
    open.await("the file chooser", () -> look(JFileChooser.class, c -> true).isPresent());
    JFileChooser chooser = look(JFileChooser.class, c -> true).orElseThrow();
    EventQueue.invokeLater(
        () -> {
          chooser.setSelectedFile(file.toFile());
          chooser.approveSelection();
        });
    open.await("the chooser's end", () -> !chooser.isShowing());
    open.settle();
  }

  static boolean within(Component c, java.awt.Window window) {
    return SwingUtilities.isDescendingFrom(c, window);
  }
}
