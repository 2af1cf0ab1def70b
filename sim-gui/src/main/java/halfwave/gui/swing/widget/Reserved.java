package halfwave.gui.swing.widget;

import java.awt.Dimension;
import java.awt.Point;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/**
 * Room that is kept for words which come and go: whatever they say, nothing below moves. More than
 * the room holds is scrolled.
 */
public final class Reserved extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final JScrollPane pane;
  private int height;

  /**
   * Room.
   *
   * @param height kept, at 100 % (px)
   * @param words what comes and goes, one below the other
   */
  public Reserved(Theme theme, double height, JComponent... words) {
    super(new MigLayout("insets 0, gap 0, fill, novisualpadding", "[grow,fill]", "[grow,fill]"));
    this.theme = theme;
    this.height = theme.px(height);
    setOpaque(false);
    Column column = new Column(theme);
    column.setBorder(BorderFactory.createEmptyBorder());
    for (JComponent each : words) {
      column.add(each, "growx, wmin 0, wrap");
    }
    pane = column.scrolled();
    add(pane, "wmin 0, hmin 0");
  }

  /** Scrolls to the first of them, once it is laid out. */
  public void toTop() {
    SwingUtilities.invokeLater(() -> pane.getViewport().setViewPosition(new Point(0, 0)));
  }

  /** Keeps another height, at 100 % (px). */
  public void lower(double other) {
    if (height != theme.px(other)) {
      height = theme.px(other);
      revalidate();
    }
  }

  @Override
  public Dimension getMinimumSize() {
    return new Dimension(0, height);
  }

  @Override
  public Dimension getPreferredSize() {
    return new Dimension(super.getPreferredSize().width, height);
  }

  @Override
  public Dimension getMaximumSize() {
    return new Dimension(Integer.MAX_VALUE, height);
  }
}
