package halfwave.gui.swing;

import halfwave.gui.swing.widget.Keys;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.function.Predicate;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;

/** A window beside the main one, which stays free to work in. */
final class SideWindow extends JDialog {

  private static final long serialVersionUID = 1L;

  private transient Predicate<Component> closing = asking -> true;

  /**
   * One that is not shown yet.
   *
   * @param name for tests and help
   * @param width wanted (px)
   * @param height wanted (px)
   */
  SideWindow(
      JFrame over,
      String name,
      String title,
      JPanel content,
      Runnable help,
      int width,
      int height) {
    super(over, title, false);
    setName(name);
    setContentPane(content);
    setDefaultCloseOperation(DO_NOTHING_ON_CLOSE);
    addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent e) {
            close();
          }
        });
    Keys.bind(getRootPane(), JComponent.WHEN_IN_FOCUSED_WINDOW, KeyEvent.VK_F1, help);
    Keys.bind(getRootPane(), JComponent.WHEN_IN_FOCUSED_WINDOW, KeyEvent.VK_ESCAPE, this::close);
    Rectangle screen = over.getGraphicsConfiguration().getBounds();
    setSize(Math.min(width, screen.width - 40), Math.min(height, screen.height - 40));
    setMinimumSize(new Dimension(640, 420));
    setLocationRelativeTo(over);
  }

  /** Asks before whoever sits there closes it. */
  SideWindow asking(Predicate<Component> mayClose) {
    closing = mayClose;
    return this;
  }

  private void close() {
    if (closing.test(this)) {
      setVisible(false);
    }
  }

  /** The same made anew for another language or look, where it is open; else nothing. */
  static @Nullable SideWindow anew(@Nullable SideWindow old, Supplier<SideWindow> make) {
    if (old == null) {
      return null;
    }
    SideWindow made = null;
    if (old.isVisible()) {
      made = make.get();
      made.setBounds(old.getBounds());
      made.setVisible(true);
    }
    old.dispose();
    return made;
  }

  /** It comes to the front, made where it was not there yet. */
  static SideWindow shown(@Nullable SideWindow there, Supplier<SideWindow> make) {
    SideWindow window = there == null ? make.get() : there;
    window.setVisible(true);
    window.toFront();
    return window;
  }
}
