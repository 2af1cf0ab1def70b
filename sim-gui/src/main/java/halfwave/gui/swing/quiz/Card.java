package halfwave.gui.swing.quiz;

import halfwave.gui.swing.widget.Theme;
import java.awt.BorderLayout;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** A card that lies on a plate. */
final class Card extends JPanel {

  private static final long serialVersionUID = 1L;
  private static final double ARC = 8;

  private final transient Theme theme;

  Card(Theme theme, JComponent content) {
    super(new BorderLayout());
    this.theme = theme;
    setOpaque(false);
    int pad = theme.px(9);
    setBorder(BorderFactory.createEmptyBorder(pad, pad, pad, pad));
    add(content, BorderLayout.CENTER);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    RoundRectangle2D card =
        new RoundRectangle2D.Double(0.5, 0.5, getWidth() - 1, getHeight() - 1, ARC, ARC);
    g.setColor(theme.palette().ground());
    g.fill(card);
    g.setColor(theme.palette().border());
    g.draw(card);
    g.dispose();
  }
}
