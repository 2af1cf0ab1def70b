package halfwave.gui.swing.lesson;

import halfwave.gui.presentation.lesson.LessonModel;
import java.awt.KeyEventDispatcher;
import java.awt.event.KeyEvent;
import java.util.function.BooleanSupplier;
import javax.swing.text.JTextComponent;

/**
 * In a demonstration the keys of a presenter's remote belong to it, whatever has the focus, lest a
 * step also press a button.
 *
 * @param lesson the demonstration
 * @param presenting whether the window has the keyboard and the demonstration can be seen
 */
public record LessonKeys(LessonModel lesson, BooleanSupplier presenting)
    implements KeyEventDispatcher {

  @Override
  public boolean dispatchKeyEvent(KeyEvent e) {
    boolean types = e.getComponent() instanceof JTextComponent;
    if (lesson.at() == null || types || e.getModifiersEx() != 0 || !presenting.getAsBoolean()) {
      return false;
    }
    boolean forward =
        e.getKeyCode() == KeyEvent.VK_SPACE || e.getKeyCode() == KeyEvent.VK_PAGE_DOWN;
    boolean back = e.getKeyCode() == KeyEvent.VK_PAGE_UP;
    if (e.getID() == KeyEvent.KEY_PRESSED && forward) {
      lesson.forward();
    } else if (e.getID() == KeyEvent.KEY_PRESSED && back) {
      lesson.back();
    }
    return forward || back;
  }
}
