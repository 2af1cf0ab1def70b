package halfwave.gui.swing;

import halfwave.gui.presentation.Wording;
import java.awt.BorderLayout;
import java.awt.Rectangle;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** Where the panels lie in the window. */
final class WindowSheet {

  private WindowSheet() {}

  /** The panels, laid out. */
  static JPanel of(Theme theme, Wording words, Panels p) {
    JPanel all = new JPanel(new BorderLayout());
    all.setBackground(theme.palette().ground());
    all.add(p.bar(), BorderLayout.NORTH);
    JPanel body =
        new JPanel(
            new MigLayout(
                "insets 0 14 6 14, gap 10, fill, novisualpadding",
                // the drawing gives way first: its words are laid out anew, those of panels are
                // cut.
                // In real pixels: a bare number grows with the type, and theme's have grown already
                "[grow 100,shrinkprio 200,fill]["
                    + theme.px(400)
                    + "px:"
                    + theme.px(430)
                    + "px:"
                    + theme.px(520)
                    + "px,fill]",
                "[grow,fill]"));
    body.setOpaque(false);
    body.add(p.divided(), "wmin 0, hmin 0");
    Column right = Column.filling(theme);
    right.add(p.meter(), "wmin 0, wrap");
    right.add(p.board(), "wmin 0, wrap");
    Plate tabs = Plate.around(theme, words.text("tab.condition"), p.tabs());
    right.add(tabs, "wmin 0, grow, h " + theme.px(300) + "px:" + theme.px(300) + "px:");
    body.add(right.scrolled(), "wmin 0, hmin 0");
    SwingUtilities.invokeLater(() -> right.scrollRectToVisible(new Rectangle(0, 0, 1, 1)));
    all.add(body, BorderLayout.CENTER);
    JPanel foot = new JPanel(new MigLayout("insets 0 18 6 18"));
    foot.setOpaque(false);
    foot.add(p.notice());
    all.add(foot, BorderLayout.SOUTH);
    return all;
  }
}
