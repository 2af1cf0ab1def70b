package halfwave.gui.swing.widget;

import java.awt.BorderLayout;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** A sheet of paper on the ground: where a panel lies. */
public class Plate extends JPanel {

  private static final long serialVersionUID = 1L;
  private static final double ARC = 9;

  private final transient Theme theme;

  /**
   * An empty plate.
   *
   * @param name for who hears the screen
   */
  public Plate(Theme theme, String name) {
    super(new BorderLayout());
    this.theme = theme;
    setOpaque(false);
    int pad = theme.px(12);
    setBorder(BorderFactory.createEmptyBorder(pad, pad, pad, pad));
    getAccessibleContext().setAccessibleName(name);
  }

  /**
   * A plate with something on it.
   *
   * @param name for who hears the screen
   */
  public static Plate around(Theme theme, String name, JComponent content) {
    Plate plate = new Plate(theme, name);
    plate.add(content, BorderLayout.CENTER);
    return plate;
  }

  /** Its colours and type. */
  public final Theme theme() {
    return theme;
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    RoundRectangle2D sheet =
        new RoundRectangle2D.Double(0.5, 0.5, getWidth() - 1, getHeight() - 1, ARC, ARC);
    g.setColor(theme.palette().sheet());
    g.fill(sheet);
    g.setColor(theme.palette().hairline());
    g.draw(sheet);
    g.dispose();
  }
}
