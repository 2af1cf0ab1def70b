package halfwave.gui.swing;

import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.List;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JMenuBar;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;
import org.jspecify.annotations.Nullable;

/** The window of the editor; the main window beside it stays free to work in. */
final class EditorDialog extends JDialog {

  private static final long serialVersionUID = 1L;

  /** Where it was before it made room for a recording, or null while it is whole. */
  private @Nullable Rectangle whole;

  EditorDialog(JFrame over, Runnable close) {
    super(over, false);
    setName("editor");
    setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent e) {
            close.run();
          }
        });
  }

  /** In another language or look; where it is remembered to be, unless it is open. */
  void dress(Theme theme, JMenuBar menus, JPanel content, @Nullable List<Integer> remembered) {
    whole(menus, content);
    if (!isVisible()) {
      setBounds(bounds(theme, remembered));
    }
    SwingUtilities.updateComponentTreeUI(this);
  }

  /** Shows little, in a corner, and leaves the bench free. */
  void makeRoom(Theme theme, JPanel little) {
    if (whole == null) {
      whole = getBounds();
      setJMenuBar(null);
      setContentPane(little);
      setMinimumSize(new Dimension(240, 160));
      Rectangle main = getOwner().getBounds();
      int width = theme.px(430);
      int height = theme.px(250);
      int gap = theme.px(16);
      setBounds(main.x + gap, main.y + main.height - height - gap, width, height);
      validate();
    }
  }

  /** Shows all of it again, where it was. */
  void whole(JMenuBar menus, JPanel content) {
    setJMenuBar(menus);
    setContentPane(content);
    setMinimumSize(new Dimension(760, 480));
    if (whole != null) {
      setBounds(whole);
      whole = null;
    }
    validate();
  }

  /** Where it is, or was before it made room. */
  Rectangle wholeBounds() {
    return whole == null ? getBounds() : whole;
  }

  /** Whether it has made room. */
  boolean little() {
    return whole != null;
  }

  private static Rectangle bounds(Theme theme, @Nullable List<Integer> f) {
    Rectangle screen = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
    if (f != null) {
      Rectangle remembered = new Rectangle(f.get(0), f.get(1), f.get(2), f.get(3));
      if (screen.intersects(remembered)) {
        return remembered;
      }
    }
    int width = Math.min(screen.width, theme.px(1000));
    int height = Math.min(screen.height, theme.px(720));
    return new Rectangle(
        screen.x + (screen.width - width) / 2,
        screen.y + (screen.height - height) / 2,
        width,
        height);
  }
}
