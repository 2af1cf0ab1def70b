package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.gui.swing.bench.BenchParts;
import halfwave.gui.swing.bench.DrawingPanel;
import java.awt.Component;
import java.awt.Dialog;
import java.awt.EventQueue;
import java.awt.Point;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JList;
import javax.swing.JMenuItem;
import javax.swing.JTabbedPane;
import javax.swing.MenuSelectionManager;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/** Hands that know nothing of the program: they click, drag, type and choose anything. */
final class RandomHands {

  /** What a text field may be given. */
  private static final List<String> TYPED =
      List.of("0", "open", "2.2M", "-5 mm", "1e9", "much", "ground", "Ω", "12 °", "  ", "abierto");

  private static final int[] KEYS = {
    KeyEvent.VK_SPACE, KeyEvent.VK_ENTER, KeyEvent.VK_ESCAPE, KeyEvent.VK_TAB, KeyEvent.VK_UP,
    KeyEvent.VK_DOWN, KeyEvent.VK_LEFT, KeyEvent.VK_RIGHT, KeyEvent.VK_HOME, KeyEvent.VK_END,
    KeyEvent.VK_PAGE_UP, KeyEvent.VK_PAGE_DOWN, KeyEvent.VK_F2, KeyEvent.VK_F3, KeyEvent.VK_F4,
    KeyEvent.VK_F6, KeyEvent.VK_PERIOD, KeyEvent.VK_F1, KeyEvent.VK_DELETE
  };

  /** With Ctrl; the key that ends the program is not among them. */
  private static final int[] CONTROL_KEYS = {
    KeyEvent.VK_Z,
    KeyEvent.VK_S,
    KeyEvent.VK_O,
    KeyEvent.VK_A,
    KeyEvent.VK_1,
    KeyEvent.VK_2,
    KeyEvent.VK_5,
    KeyEvent.VK_9,
    KeyEvent.VK_0,
    KeyEvent.VK_UP,
    KeyEvent.VK_LEFT
  };

  private final OpenWindow open;
  private final Hand hand;
  private final Path folder;
  private final Random random;

  /** Hands at a window, that save only into the folder. */
  RandomHands(OpenWindow open, Path folder, long seed) {
    this.open = open;
    this.folder = folder;
    hand = new Hand(open);
    random = new Random(seed);
  }

  /** One thing, whatever it is. */
  void anything() {
    if (Hand.look(Dialog.class, Dialog::isModal).isPresent()) {
      closeDialogs();
      return;
    }
    switch (random.nextInt(12)) {
      case 0, 1, 2, 3, 4 -> click();
      case 5 -> drag();
      case 6, 7, 8 -> hand.letterOrKey(KEYS[random.nextInt(KEYS.length)], 0);
      case 9 ->
          hand.letterOrKey(
              CONTROL_KEYS[random.nextInt(CONTROL_KEYS.length)],
              InputEvent.CTRL_DOWN_MASK
                  | (random.nextInt(4) == 0 ? InputEvent.SHIFT_DOWN_MASK : 0));
      case 10 -> typeSomething();
      default -> menu();
    }
    OpenWindow.onScreen(() -> null);
  }

  /** Something that can be pressed, chosen, typed into or dragged. */
  private Component target() {
    return OpenWindow.onScreen(
        () -> {
          List<Component> all = Hand.seen().stream().filter(this::handled).toList();
          return all.get(random.nextInt(all.size()));
        });
  }

  private boolean handled(Component c) {
    if (spared(c.getName())) {
      return false;
    }
    boolean kind =
        c instanceof AbstractButton
            || c instanceof JTextComponent text && text.isEditable()
            || c instanceof JList
            || c instanceof JComboBox
            || c instanceof JTabbedPane
            || BenchParts.slider(c)
            || c instanceof DrawingPanel;
    return kind && c.getWidth() > 0 && c.getHeight() > 0;
  }

  /** What would end the window, or come out of somebody's printer. */
  private static boolean spared(String name) {
    return name != null && (name.equals("menu.quit") || name.startsWith("paper.print-"));
  }

  private Point place(Component c) {
    // it may have lost its room since it was chosen
    return new Point(
        random.nextInt(Math.max(1, c.getWidth())), random.nextInt(Math.max(1, c.getHeight())));
  }

  private void click() {
    Component c = target();
    boolean scroll = random.nextBoolean();
    OpenWindow.onScreen(
        () -> {
          Point p = place(c);
          java.awt.Window window = SwingUtilities.getWindowAncestor(c);
          if (window == null || !c.isShowing()) {
            return null;
          }
          if (scroll && c instanceof JComponent inside) {
            inside.scrollRectToVisible(new java.awt.Rectangle(p.x, p.y, 1, 1));
          }
          int button = random.nextInt(8) == 0 ? MouseEvent.BUTTON3 : MouseEvent.BUTTON1;
          Point at = SwingUtilities.convertPoint(c, p, window);
          Component top = SwingUtilities.getDeepestComponentAt(window, at.x, at.y);
          if (top != null && spared(top.getName())) {
            return null;
          }
          Hand.mouse(window, at, MouseEvent.MOUSE_MOVED, button, 0);
          Hand.mouse(window, at, MouseEvent.MOUSE_PRESSED, button, 1);
          Hand.mouse(window, at, MouseEvent.MOUSE_RELEASED, button, 1);
          Hand.mouse(window, at, MouseEvent.MOUSE_CLICKED, button, 1);
          return null;
        });
  }

  private void drag() {
    Component c = target();
    OpenWindow.onScreen(
        () -> {
          java.awt.Window window = SwingUtilities.getWindowAncestor(c);
          if (window == null || !c.isShowing() || c instanceof JMenuItem) {
            return null;
          }
          Point from = SwingUtilities.convertPoint(c, place(c), window);
          Point to = SwingUtilities.convertPoint(c, place(c), window);
          Hand.mouse(window, from, MouseEvent.MOUSE_PRESSED, MouseEvent.BUTTON1, 1);
          for (int k = 1; k <= 5; k++) {
            Point at =
                new Point(from.x + (to.x - from.x) * k / 5, from.y + (to.y - from.y) * k / 5);
            Hand.mouse(window, at, MouseEvent.MOUSE_DRAGGED, MouseEvent.BUTTON1, 0);
          }
          Hand.mouse(window, to, MouseEvent.MOUSE_RELEASED, MouseEvent.BUTTON1, 1);
          return null;
        });
  }

  private void typeSomething() {
    for (char c : TYPED.get(random.nextInt(TYPED.size())).toCharArray()) {
      hand.letter(c);
    }
    hand.letterOrKey(KeyEvent.VK_ENTER, 0);
  }

  private void menu() {
    EventQueue.invokeLater(
        () -> {
          MenuSelectionManager.defaultManager().clearSelectedPath();
          List<JMenuItem> items =
              Hand.items(open.frame().getJMenuBar())
                  .filter(i -> i.getName() != null && !spared(i.getName()))
                  .filter(i -> i.getSubElements().length == 0)
                  .toList();
          items.get(random.nextInt(items.size())).doClick();
        });
  }

  /**
   * A dialog that waits for an answer gets it: it is answered by any of its buttons; a chooser gets
   * a file of the test's folder.
   */
  void closeDialogs() {
    for (int k = 0; k < 20 && Hand.look(Dialog.class, Dialog::isModal).isPresent(); k++) {
      Dialog dialog = Hand.look(Dialog.class, Dialog::isModal).orElseThrow();
      EventQueue.invokeLater(() -> close(dialog));
      OpenWindow.onScreen(() -> null);
      OpenWindow.onScreen(() -> null);
    }
    assertThat(Hand.look(Dialog.class, Dialog::isModal))
        .as("a dialog that cannot be closed")
        .isEmpty();
  }

  private void close(Dialog dialog) {
    List<Component> inside = Hand.seen().stream().filter(c -> Hand.within(c, dialog)).toList();
    JFileChooser chooser =
        inside.stream()
            .filter(JFileChooser.class::isInstance)
            .map(JFileChooser.class::cast)
            .findFirst()
            .orElse(null);
    if (chooser != null) {
      if (random.nextBoolean()) {
        chooser.cancelSelection();
      } else {
        chooser.setSelectedFile(folder.resolve("bench" + random.nextInt(3) + ".json").toFile());
        chooser.approveSelection();
      }
      return;
    }
    List<AbstractButton> buttons =
        inside.stream()
            .filter(AbstractButton.class::isInstance)
            .map(AbstractButton.class::cast)
            .filter(b -> b.getText() != null && !b.getText().isEmpty())
            .toList();
    if (buttons.isEmpty()) {
      dialog.dispose();
    } else {
      buttons.get(random.nextInt(buttons.size())).doClick();
    }
  }
}
