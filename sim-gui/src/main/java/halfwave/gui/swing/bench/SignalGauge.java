package halfwave.gui.swing.bench;

import halfwave.gui.presentation.bench.BoardView.Gauge;
import halfwave.gui.presentation.bench.BoardView.Mark;
import halfwave.gui.swing.widget.Painted;
import halfwave.gui.swing.widget.Theme;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** The flame signal as a bar among its limits. */
final class SignalGauge extends Painted {

  private static final long serialVersionUID = 1L;

  /** Rows of words below the bar: neighbours that are close stand in different ones. */
  private static final int ROWS = 2;

  private final transient Theme theme;
  private transient Gauge gauge = new Gauge(0, List.of(), "");

  SignalGauge(Theme theme) {
    this.theme = theme;
    setPreferredSize(new Dimension(theme.px(200), theme.px(46)));
    setMinimumSize(new Dimension(theme.px(120), theme.px(46)));
  }

  void show(Gauge newGauge) {
    if (!newGauge.equals(gauge)) {
      gauge = newGauge;
      repaint();
    }
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    var p = theme.palette();
    double width = getWidth() - 1.0;
    double bar = theme.px(10);
    g.setColor(p.ground());
    g.fill(new Rectangle2D.Double(0, 0, width, bar));
    g.setColor(p.microamps());
    g.fill(new Rectangle2D.Double(0, 0, width * gauge.share(), bar));
    g.setColor(p.border());
    g.draw(new Rectangle2D.Double(0.5, 0.5, width - 0.5, bar - 0.5));
    g.setFont(theme.note());
    FontMetrics metrics = g.getFontMetrics();
    double row = metrics.getHeight();
    double[] free = new double[ROWS];
    for (Mark mark : gauge.marks()) {
      double x = width * mark.share();
      int at = Math.max(free[0], x) <= Math.max(free[1], x) ? 0 : 1;
      double left = Math.max(free[at], x + theme.px(3));
      double base = bar + theme.px(3) + (at + 1) * row - metrics.getDescent();
      g.setColor(p.ink());
      g.draw(new Line2D.Double(x, 0, x, base));
      g.setColor(p.softInk());
      g.drawString(mark.words(), (float) left, (float) base);
      free[at] = left + theme.px(6) + metrics.stringWidth(mark.words());
    }
    int full = metrics.stringWidth(gauge.full());
    double base = bar + theme.px(3) + (free[0] <= width - full ? 1 : ROWS) * row;
    g.setColor(p.softInk());
    g.drawString(gauge.full(), (float) (width - full), (float) (base - metrics.getDescent()));
    g.dispose();
  }
}
