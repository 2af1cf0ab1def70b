package halfwave.gui.swing;

import halfwave.gui.presentation.Wording;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Plate;
import halfwave.gui.swing.widget.Theme;
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
    Column right = Column.filling(theme);
    right.add(p.meter(), "wmin 0, wrap");
    right.add(p.board(), "wmin 0, wrap");
    Plate tabs = Plate.around(theme, words.text("tab.condition"), p.tabs());
    right.add(tabs, "wmin 0, grow, pushy");
    SwingUtilities.invokeLater(() -> right.scrollRectToVisible(new Rectangle(0, 0, 1, 1)));
    JPanel body = new Sides(theme, p.divided(), right);
    all.add(body, BorderLayout.CENTER);
    JPanel foot = new JPanel(new MigLayout("insets 0 18 6 18"));
    foot.setOpaque(false);
    foot.add(p.notice());
    all.add(foot, BorderLayout.SOUTH);
    return all;
  }
}
