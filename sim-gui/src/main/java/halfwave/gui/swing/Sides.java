package halfwave.gui.swing;

import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Theme;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;

/**
 * The picture at the left and the panels at the right; where the window is too narrow for both, all
 * in one column that scrolls, the picture first.
 */
final class Sides extends JPanel {

  private static final long serialVersionUID = 1L;

  private static final double LEAST_PICTURE = 440;
  private static final double LEAST_PANELS = 400;
  private static final double PICTURE_HEIGHT = 480;

  private final transient Theme theme;
  private final JComponent picture;
  private final Column panels;
  private final JScrollPane scrolled;
  private boolean stacked;

  Sides(Theme theme, JComponent picture, Column panels) {
    super(
        new MigLayout(
            "insets 0 14 6 14, gap 10, fill, novisualpadding, hidemode 3",
            // the drawing gives way first: its words are laid out anew, those of panels are cut.
            // In real pixels: a bare number grows with the type, and theme's have grown already
            "[grow 100,shrinkprio 200,fill]["
                + theme.px(LEAST_PANELS)
                + "px:"
                + theme.px(470)
                + "px:"
                + theme.px(520)
                + "px,fill]",
            "[grow,fill]"));
    this.theme = theme;
    this.picture = picture;
    this.panels = panels;
    scrolled = panels.scrolled();
    setOpaque(false);
    add(picture, "wmin 0, hmin 0");
    add(scrolled, "wmin 0, hmin 0");
    addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent e) {
            arrange();
          }
        });
  }

  /** Whether all stands in one column. */
  boolean stacked() {
    return stacked;
  }

  /** Puts the picture where it has room. */
  void arrange() {
    boolean narrow = getWidth() < theme.px(LEAST_PICTURE + LEAST_PANELS);
    if (narrow == stacked) {
      return;
    }
    stacked = narrow;
    Component focus = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    remove(scrolled);
    if (narrow) {
      remove(picture);
      panels.add(picture, "wmin 0, wrap, h " + theme.px(PICTURE_HEIGHT) + "px!", 0);
      add(scrolled, "span 2, grow, wmin 0, hmin 0");
    } else {
      panels.remove(picture);
      add(picture, "wmin 0, hmin 0");
      add(scrolled, "wmin 0, hmin 0");
    }
    revalidate();
    repaint();
    if (focus != null && isAncestorOf(focus)) {
      focus.requestFocusInWindow();
    }
  }
}
