package halfwave.gui.swing.widget;

import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;

/**
 * Fills a menu when someone wants to see it.
 *
 * @param fill fills it
 */
public record Opened(Runnable fill) implements MenuListener {

  @Override
  public void menuSelected(MenuEvent e) {
    fill.run();
  }

  @Override
  public void menuDeselected(MenuEvent e) {}

  @Override
  public void menuCanceled(MenuEvent e) {}
}
