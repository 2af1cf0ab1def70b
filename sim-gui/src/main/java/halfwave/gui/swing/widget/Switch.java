package halfwave.gui.swing.widget;

import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.RoundRectangle2D;
import javax.swing.AbstractButton;
import javax.swing.Icon;
import javax.swing.JCheckBox;

/** Something that is on or off, drawn as a switch; the word beside it says which. */
public final class Switch extends JCheckBox {

  private static final long serialVersionUID = 1L;

  /** A switch that is off. */
  public Switch(Theme theme, String name) {
    super(name);
    setIcon(new Drawn(theme));
    setIconTextGap(theme.px(7));
    setOpaque(false);
  }

  /** The switch. */
  private record Drawn(Theme theme) implements Icon {
    @Override
    public int getIconWidth() {
      return theme.px(34);
    }

    @Override
    public int getIconHeight() {
      return theme.px(20);
    }

    @Override
    public void paintIcon(Component c, Graphics graphics, int x, int y) {
      Graphics2D g = (Graphics2D) graphics.create();
      g.translate(x, y);
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      boolean on = ((AbstractButton) c).isSelected();
      double h = getIconHeight() - 1.0;
      double w = getIconWidth() - 1.0;
      RoundRectangle2D way = new RoundRectangle2D.Double(0.5, 0.5, w, h, h, h);
      var p = theme.palette();
      g.setColor(on ? p.accent() : p.sheet());
      g.fill(way);
      g.setColor(on ? p.accent() : p.border());
      g.setStroke(new BasicStroke(1.4f));
      g.draw(way);
      double r = h - theme.px(5);
      g.setColor(on ? p.sheet() : p.border());
      double at = on ? w - r - theme.px(2.5) : theme.px(3);
      g.fill(new Ellipse2D.Double(at, (h - r) / 2 + 0.5, r, r));
      if (c.isFocusOwner()) {
        g.setColor(p.ink());
        g.draw(new RoundRectangle2D.Double(-1, -1, w + 3, h + 3, h + 3, h + 3));
      }
      g.dispose();
    }
  }
}
