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
    setJMenuBar(menus);
    setContentPane(content);
    setMinimumSize(new Dimension(760, 480));
    if (!isVisible()) {
      setBounds(bounds(theme, remembered));
    }
    SwingUtilities.updateComponentTreeUI(this);
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
