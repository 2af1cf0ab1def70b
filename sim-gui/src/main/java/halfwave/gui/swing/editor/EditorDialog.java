package halfwave.gui.swing.editor;

import halfwave.gui.swing.widget.Keys;
import halfwave.gui.swing.widget.RememberedBounds;
import halfwave.gui.swing.widget.Theme;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.List;
import javax.swing.JComponent;
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

  /** As small as it may be made while it is whole. */
  private Dimension least = new Dimension();

  EditorDialog(JFrame over, Runnable help, Runnable close) {
    super(over, false);
    setName("editor");
    setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    // whole or little: its menus are gone while it records
    Keys.bind(getRootPane(), JComponent.WHEN_IN_FOCUSED_WINDOW, KeyEvent.VK_F1, help);
    // what is recorded is not thrown away by a key that means something else at the bench
    Keys.bind(
        getRootPane(),
        JComponent.WHEN_IN_FOCUSED_WINDOW,
        KeyEvent.VK_ESCAPE,
        () -> whole == null,
        close);
    addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent e) {
            close.run();
          }
        });
  }

  /**
   * Without what was in it in an earlier language or look. Keys of a menu that lies in a window
   * which was never shown are registered with the toolkit for ever, so nothing is in it before it
   * is opened.
   */
  void undress() {
    whole(null, new JPanel());
    SwingUtilities.updateComponentTreeUI(this);
  }

  /** In a language and look; where it is remembered to be, unless it is open. */
  void dress(Theme theme, JMenuBar menus, JPanel content, @Nullable List<Integer> remembered) {
    // larger type needs more room, where there is any
    Rectangle screen = getOwner().getGraphicsConfiguration().getBounds();
    least =
        new Dimension(
            Math.min(theme.px(760), screen.width), Math.min(theme.px(480), screen.height));
    whole(menus, content);
    if (!isVisible()) {
      setBounds(RememberedBounds.of(remembered, theme.px(1000), theme.px(720)));
    }
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
  void whole(@Nullable JMenuBar menus, JPanel content) {
    setJMenuBar(menus);
    setContentPane(content);
    setMinimumSize(least);
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
}
