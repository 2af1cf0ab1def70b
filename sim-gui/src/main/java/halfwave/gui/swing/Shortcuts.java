package halfwave.gui.swing;

import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.presentation.lesson.LessonModel;
import halfwave.gui.swing.lesson.Wall;
import halfwave.gui.swing.widget.Keys;
import halfwave.instrument.MeterFunction;
import halfwave.lesson.Question;
import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.jspecify.annotations.Nullable;

/** The keys of the window, besides those of its menus. */
final class Shortcuts {

  private static final int SHIFT = InputEvent.SHIFT_DOWN_MASK;

  private final JComponent root;
  private final Workbench workbench;
  private final LessonModel lesson;
  private final Wall wall;
  private final Panels panels;

  /** For the panels of one language and look. */
  Shortcuts(JComponent root, Models models, Wall wall, Panels panels) {
    this.root = root;
    workbench = models.workbench();
    lesson = models.lesson();
    this.wall = wall;
    this.panels = panels;
  }

  /** Binds them. */
  void bind() {
    types(KeyStroke.getKeyStroke(KeyEvent.VK_SPACE, 0), panels.bar()::togglePlay);
    types(KeyStroke.getKeyStroke(KeyEvent.VK_PERIOD, 0), () -> step(1000L));
    types(KeyStroke.getKeyStroke(KeyEvent.VK_PERIOD, SHIFT), () -> step(null));
    types(KeyStroke.getKeyStroke('+'), () -> panels.bar().faster(1));
    types(KeyStroke.getKeyStroke('-'), () -> panels.bar().faster(-1));
    key(KeyEvent.VK_F2, 0, panels.bar()::toggleCall);
    key(KeyEvent.VK_F3, 0, panels.bar()::togglePower);
    key(KeyEvent.VK_F4, 0, panels.meter()::openSpots);
    key(KeyEvent.VK_F8, 0, this::hide);
    key(KeyEvent.VK_F11, SHIFT, wall::freeze);
    key(KeyEvent.VK_F6, 0, () -> nextPanel(1));
    key(KeyEvent.VK_F6, SHIFT, () -> nextPanel(-1));
    for (MeterFunction function : MeterFunction.values()) {
      int digit = KeyEvent.VK_0 + (function.ordinal() + 1) % 10;
      key(digit, InputEvent.CTRL_DOWN_MASK, () -> panels.meter().turn(function));
    }
    for (int k = 0; k < Question.MOST_ANSWERS; k++) {
      int answer = k;
      types(KeyStroke.getKeyStroke((char) ('1' + k)), () -> lesson.vote(answer));
      types(KeyStroke.getKeyStroke((char) ('a' + k)), () -> lesson.vote(answer));
      types(KeyStroke.getKeyStroke((char) ('A' + k)), () -> lesson.takeBackVote(answer));
    }
    for (int k = 0; k < panels.charts().count(); k++) {
      int index = k;
      key(KeyEvent.VK_1 + k, InputEvent.ALT_DOWN_MASK | SHIFT, () -> panels.charts().chart(index));
    }
    for (int k = 0; k < panels.tabs().getTabCount(); k++) {
      int index = k;
      key(KeyEvent.VK_1 + k, InputEvent.ALT_DOWN_MASK, () -> tab(index));
    }
  }

  private void step(@Nullable Long millis) {
    workbench.want(new Intent.StepOn(millis));
  }

  /** With one key, and before anybody sees the other tabs. */
  private void hide() {
    panels.tabs().setSelectedComponent(panels.desk());
    if (lesson.at() == null) {
      workbench.want(new Intent.Hide());
    }
  }

  private void tab(int index) {
    JTabbedPane tabs = panels.tabs();
    tabs.setSelectedIndex(index);
    tabs.getSelectedComponent().requestFocusInWindow();
  }

  private void nextPanel(int by) {
    List<JComponent> stops =
        List.of(panels.bar(), panels.drawing(), panels.meter(), panels.charts(), panels.tabs());
    Component owner = focused();
    int at = 0;
    for (int k = 0; k < stops.size(); k++) {
      if (owner != null && SwingUtilities.isDescendingFrom(owner, stops.get(k))) {
        at = k;
      }
    }
    JComponent to = stops.get(Math.floorMod(at + by, stops.size()));
    if (!to.requestFocusInWindow() || !to.isFocusable() || to instanceof JPanel) {
      to.transferFocus();
    }
  }

  private static @Nullable Component focused() {
    return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
  }

  private void key(int code, int held, Runnable action) {
    bind(KeyStroke.getKeyStroke(code, held), action);
  }

  /** A key that types is left to fields. */
  private void types(KeyStroke stroke, Runnable action) {
    bind(
        stroke,
        () -> {
          if (!(focused() instanceof JTextComponent)) {
            action.run();
          }
        });
  }

  /** Until the first bench is there, and while it is covered, no key has anything to act on. */
  private void bind(KeyStroke stroke, Runnable action) {
    Keys.bind(
        root,
        JComponent.WHEN_IN_FOCUSED_WINDOW,
        stroke,
        () -> {
          if (workbench.ready() && panels.bar().isShowing()) {
            action.run();
          }
        });
  }

  /** A click on a button leaves the keys where they were. */
  static void leaveFocus(Container within) {
    for (Component c : within.getComponents()) {
      if (c instanceof AbstractButton || c instanceof JComboBox) {
        ((JComponent) c).setRequestFocusEnabled(false);
      } else if (c instanceof Container container) {
        leaveFocus(container);
      }
    }
  }
}
