package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.gui.swing.editor.EditorParts;
import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.Toolkit;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.StringSelection;
import java.awt.event.MouseEvent;
import java.lang.ref.WeakReference;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Panels that were made anew for another language or look leave no old ones behind. */
class PanelsReleasedRobotTest extends WithWindow {

  /** The toolkit holds what had the keyboard or the mouse last; older panels nobody may hold. */
  private static final int LOOKS = 5;

  private static final int ROUNDS = 100;

  @Test
  void norDoesWhatIsSaidBesideThePointer() {
    WeakReference<Component> old = new WeakReference<>(entered());
    hand.menu("menu.dark");
    assertThat(left(List.of(old))).as("what is still held").isEmpty();
  }

  /** The pointer comes to the drawing, and never leaves it: something else lay there next. */
  private Component entered() {
    Component drawing = hand.find(Component.class, "drawing");
    open.run(
        () ->
            drawing.dispatchEvent(
                new MouseEvent(
                    drawing,
                    MouseEvent.MOUSE_ENTERED,
                    System.currentTimeMillis(),
                    0,
                    9,
                    9,
                    0,
                    false)));
    return drawing;
  }

  @Test
  void nobodyHoldsThePanelsOfAnEarlierLook() throws ReflectiveOperationException {
    for (String menu :
        List.of("menu.match", "menu.forecast", "menu.take", "menu.practise", "menu.desk")) {
      hand.menu(menu);
    }
    hand.menu("menu.keys");
    open.settle();
    List<WeakReference<Component>> old = OpenWindow.onScreen(this::all);
    assertThat(old).as("panels and windows of the program").hasSizeGreaterThan(50);
    for (int k = 0; k < LOOKS; k++) {
      hand.menu(k % 2 == 0 ? "menu.dark" : "menu.light");
      hand.menu(k % 2 == 0 ? "language.es" : "language.en");
      open.settle();
    }
    // who selects a text owns the selection of the whole desktop, until somebody else does
    Clipboard selection = Toolkit.getDefaultToolkit().getSystemSelection();
    if (selection != null) {
      selection.setContents(new StringSelection(""), null);
    }
    forgetWhoWasToGetTheKeyboard();
    assertThat(left(old)).as("what is still held").isEmpty();
  }

  /**
   * The toolkit may keep who was to get the keyboard when it has gone elsewhere meanwhile, until
   * somebody else waits for it; nothing that is public makes it forget.
   */
  private static void forgetWhoWasToGetTheKeyboard() throws ReflectiveOperationException {
    Field kept = KeyboardFocusManager.class.getDeclaredField("newFocusOwner");
    kept.setAccessible(true);
    OpenWindow.onScreen(
        () -> {
          kept.set(null, null);
          return null;
        });
  }

  /**
   * Panels of the window that is open and of those beside it, shown or not, but not the frames that
   * stay. The toolkit may still know windows that other tests closed: nobody makes those anew.
   */
  private List<WeakReference<Component>> all() {
    List<WeakReference<Component>> found = new ArrayList<>();
    collect(open.frame(), found);
    return found;
  }

  private static void collect(Component from, List<WeakReference<Component>> into) {
    boolean ours = from.getClass().getName().startsWith("halfwave.");
    if (ours && !EditorParts.dialog(from)) {
      into.add(new WeakReference<>(from));
    }
    if (from instanceof Container container) {
      for (Component child : container.getComponents()) {
        collect(child, into);
      }
    }
    if (from instanceof java.awt.Window window) {
      for (java.awt.Window owned : window.getOwnedWindows()) {
        collect(owned, into);
      }
    }
  }

  /**
   * A collection may need several rounds: what waits for one is held until it is done, and what is
   * said beside a control for as long as it stays.
   */
  private List<String> left(List<WeakReference<Component>> old) {
    List<String> left = List.of();
    for (int k = 0; k < ROUNDS; k++) {
      open.settle();
      System.gc();
      left =
          old.stream()
              .map(WeakReference::get)
              .filter(Objects::nonNull)
              .map(c -> c.getClass().getSimpleName() + " " + c.getName())
              .distinct()
              .toList();
      if (left.isEmpty()) {
        break;
      }
    }
    return left;
  }
}
