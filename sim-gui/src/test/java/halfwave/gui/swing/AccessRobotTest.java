package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.gui.presentation.Settings;
import halfwave.gui.swing.bench.BenchParts;
import halfwave.gui.swing.bench.DrawingPanel;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JScrollBar;
import javax.swing.JSpinner;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The window for who hears it, uses only the keyboard, or hits small things badly. Criteria: W3C,
 * WCAG 2.2, 2.1.2 (no keyboard trap), 2.5.8 (targets of 24 px), 4.1.2 (name, role, value).
 */
class AccessRobotTest {

  /** WCAG 2.2, 2.5.8. */
  private static final int LEAST_TARGET = 24;

  /** More stops than any tab of the window has; whoever needs more is caught. */
  private static final int MOST_STOPS = 200;

  @TempDir private Path folder;

  private static boolean control(Component c) {
    // arrows inside a box to choose from belong to the box
    boolean inside = SwingUtilities.getAncestorOfClass(JComboBox.class, c) != null;
    boolean bar = c instanceof JScrollBar || c.getParent() instanceof JScrollBar;
    return !inside
        && !bar
        && (c instanceof AbstractButton
            || c instanceof JComboBox
            || c instanceof JList
            || c instanceof JSpinner
            || BenchParts.slider(c)
            || c instanceof JTabbedPane
            || c instanceof DrawingPanel
            || (c instanceof JTextComponent text && text.isEditable()));
  }

  static List<Component> controls() {
    return Hand.seen().stream().filter(AccessRobotTest::control).toList();
  }

  /**
   * WCAG 2.2, 2.5.8 and 4.1.2, in the windows beside the main one.
   *
   * @param wrong is told what has no name or is too small
   * @return how many controls there are
   */
  static int beside(OpenWindow open, List<String> wrong) {
    return OpenWindow.onScreen(
        () -> {
          List<Component> controls = new ArrayList<>(controls());
          controls.removeIf(c -> SwingUtilities.getWindowAncestor(c) == open.frame());
          for (Component c : controls) {
            String name = c.getAccessibleContext().getAccessibleName();
            if (name == null || name.isBlank() || c.getName() == null) {
              wrong.add("no name: " + c);
            }
            if (Math.min(c.getWidth(), c.getHeight()) < LEAST_TARGET) {
              wrong.add("too small: " + name + ' ' + c.getSize());
            }
          }
          return controls.size();
        });
  }

  private static void eachTab(OpenWindow open, Runnable look) {
    JTabbedPane tabs = new Hand(open).find(JTabbedPane.class, "tabs");
    for (int k = 0; k < OpenWindow.onScreen(tabs::getTabCount); k++) {
      int index = k;
      OpenWindow.onScreen(
          () -> {
            tabs.setSelectedIndex(index);
            return null;
          });
      open.settle();
      open.settle();
      look.run();
    }
  }

  /** The tree that a screen reader gets is written beside the test's results. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void everyControlHasNameAndRole(String language) throws Exception {
    Map<String, String> nameless = new TreeMap<>();
    List<String> tree = new ArrayList<>();
    try (OpenWindow open = OpenWindow.with(folder, OpenWindow.PLAIN.withLanguage(language))) {
      eachTab(
          open,
          () ->
              OpenWindow.onScreen(
                  () -> {
                    tree(open.frame(), "", tree);
                    for (Component c : controls()) {
                      AccessibleContext context = c.getAccessibleContext();
                      String name = context.getAccessibleName();
                      if (name == null || name.isBlank() || context.getAccessibleRole() == null) {
                        nameless.put(c.getClass().getSimpleName() + ' ' + c.getName(), "" + name);
                      }
                    }
                    return null;
                  }));
    }
    Files.write(
        Files.createDirectories(Path.of("target")).resolve("accessible-tree-" + language + ".txt"),
        tree);
    assertThat(tree).hasSizeGreaterThan(200);
    assertThat(nameless).isEmpty();
  }

  private static void tree(Component c, String indent, List<String> lines) {
    if (!c.isShowing()) {
      return;
    }
    String deeper = indent;
    if (c instanceof Accessible a && a.getAccessibleContext() != null) {
      AccessibleContext context = a.getAccessibleContext();
      String name = context.getAccessibleName();
      if (name != null && !name.isBlank()) {
        Object value =
            context.getAccessibleValue() == null
                ? ""
                : " = " + context.getAccessibleValue().getCurrentAccessibleValue();
        lines.add(indent + context.getAccessibleRole() + ": " + name + value);
        deeper = indent + "  ";
      }
    }
    if (c instanceof Container container) {
      for (Component child : container.getComponents()) {
        tree(child, deeper, lines);
      }
    }
  }

  @Test
  void everyTargetIsLargeEnough() throws Exception {
    Map<String, String> small = new TreeMap<>();
    try (OpenWindow open = OpenWindow.plain(folder)) {
      eachTab(
          open,
          () ->
              OpenWindow.onScreen(
                  () -> {
                    for (Component c : controls()) {
                      if (c.getWidth() < LEAST_TARGET || c.getHeight() < LEAST_TARGET) {
                        small.put(
                            c.getClass().getSimpleName() + ' ' + c.getName(),
                            c.getWidth() + " x " + c.getHeight());
                      }
                    }
                    return null;
                  }));
    }
    assertThat(small).isEmpty();
  }

  /** At the least size that is asked for, and with type twice as large. */
  @ParameterizedTest
  @ValueSource(doubles = {1, 2})
  void theTabKeyGoesRoundAndReachesEverything(double ratio) throws Exception {
    Settings settings =
        OpenWindow.PLAIN
            .withTextRatio(ratio)
            .withPlace(Settings.Place.at(List.of(0, 0, 1024, 700)));
    try (OpenWindow open = OpenWindow.with(folder, settings)) {
      OpenWindow.onScreen(
          () -> {
            open.frame().setSize(new Dimension(1024, 700));
            open.frame().validate();
            return null;
          });
      Hand hand = new Hand(open);
      hand.takeKeyboard();
      OpenWindow.onScreen(
          () -> {
            hand.now(DrawingPanel.class, "drawing").requestFocusInWindow();
            return null;
          });
      open.await(
          "the drawing's focus", () -> hand.now(DrawingPanel.class, "drawing").isFocusOwner());
      Component first = hand.focusOwner();
      Set<Component> reached = new LinkedHashSet<>(List.of(first));
      int stops = 0;
      do {
        OpenWindow.onScreen(
            () -> {
              Component owner =
                  java.awt.KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
              (owner == null ? open.frame() : owner).transferFocus();
              return null;
            });
        reached.add(hand.focusOwner());
        stops++;
      } while (hand.focusOwner() != first && stops < MOST_STOPS);
      assertThat(hand.focusOwner()).as("the Tab key is caught").isSameAs(first);
      List<String> missed =
          OpenWindow.onScreen(
              () ->
                  controls().stream()
                      .filter(c -> c.isEnabled() && c.isFocusable())
                      .filter(c -> !(c instanceof JTabbedPane))
                      .filter(c -> c instanceof JComponent j && j.getParent() != null)
                      .filter(c -> reached.stream().noneMatch(r -> r == c || within(r, c)))
                      .filter(
                          c ->
                              SwingUtilities.getAncestorOfClass(javax.swing.JMenuBar.class, c)
                                  == null)
                      .map(c -> c.getClass().getSimpleName() + ' ' + c.getName())
                      .toList());
      assertThat(missed).isEmpty();
    }
  }

  private static boolean within(Component inside, Component c) {
    return c instanceof Container && SwingUtilities.isDescendingFrom(inside, c);
  }

  /** Also where a key has another meaning in the window. */
  @Test
  void aTextFieldLetsGoOfTheKeyboard() throws Exception {
    try (OpenWindow open = OpenWindow.plain(folder)) {
      Hand hand = new Hand(open);
      hand.takeKeyboard();
      hand.tab("Faults");
      JTextComponent search = hand.find(JTextComponent.class, "fault.search");
      hand.click(search);
      open.await("the field's focus", search::isFocusOwner);
      hand.key(KeyEvent.VK_TAB);
      open.await("the next stop", () -> !search.isFocusOwner());
      hand.key(KeyEvent.VK_TAB, InputEvent.SHIFT_DOWN_MASK);
      open.await("back", search::isFocusOwner);
    }
  }
}
