package halfwave.gui.swing.lesson;

import halfwave.gui.presentation.lesson.ProjectorView.Signal;
import halfwave.gui.swing.charts.ChartInk;
import halfwave.gui.swing.widget.Theme;
import halfwave.picture.Palette;
import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;

/** The flame signal of the last minutes, for the wall. */
final class ProjectorSignal extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final double line;
  private final String pickUp;
  private final String dropOut;
  private @Nullable transient Signal signal;

  /**
   * A chart.
   *
   * @param line width of its finest line, in pixels
   * @param pickUp what the upper limit is called
   * @param dropOut what the lower limit is called
   */
  ProjectorSignal(Theme theme, double line, String pickUp, String dropOut) {
    this.theme = theme;
    this.line = line;
    this.pickUp = pickUp;
    this.dropOut = dropOut;
    setOpaque(false);
    setName("projector.signal");
  }

  /** What it is lettered in. */
  Font type() {
    return theme.body();
  }

  void show(Signal newSignal) {
    signal = newSignal;
    getAccessibleContext().setAccessibleDescription(newSignal.spoken());
    repaint();
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Signal s = signal;
    if (s == null) {
      return;
    }
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setFont(theme.body());
    FontMetrics metrics = g.getFontMetrics();
    Palette p = theme.palette();
    double left = metrics.stringWidth(s.most()) + theme.px(6);
    double top = 0.5 * metrics.getHeight();
    Rectangle2D plot =
        new Rectangle2D.Double(
            left, top, getWidth() - left - line, getHeight() - top - 1.5 * metrics.getHeight());
    g.setColor(p.ink());
    g.setStroke(new BasicStroke((float) line));
    g.draw(new Line2D.Double(left, top, left, plot.getMaxY()));
    g.draw(new Line2D.Double(left, plot.getMaxY(), plot.getMaxX(), plot.getMaxY()));
    end(g, s.most(), left, top);
    end(g, "0", left, plot.getMaxY());
    limit(g, plot, s.pickUp(), pickUp, true);
    limit(g, plot, s.dropOut(), dropOut, false);
    g.setColor(p.microamps());
    g.setStroke(new BasicStroke((float) (2 * line), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    g.draw(ChartInk.path(plot, s.trace()));
    g.setColor(p.ink());
    int span = metrics.stringWidth(s.span());
    g.drawString(
        s.span(), (float) (plot.getMaxX() - span), (float) (getHeight() - metrics.getDescent()));
    g.dispose();
  }

  private void end(Graphics2D g, String text, double x, double y) {
    FontMetrics metrics = g.getFontMetrics();
    g.drawString(
        text,
        (float) (x - metrics.stringWidth(text) - theme.px(4)),
        (float) (y + 0.35 * metrics.getAscent()));
  }

  private void limit(Graphics2D g, Rectangle2D plot, double level, String name, boolean above) {
    double y = plot.getMaxY() - level * plot.getHeight();
    float dash = (float) (4 * line);
    g.setStroke(
        new BasicStroke(
            (float) line,
            BasicStroke.CAP_BUTT,
            BasicStroke.JOIN_MITER,
            1,
            new float[] {dash, dash},
            0));
    g.draw(new Line2D.Double(plot.getX(), y, plot.getMaxX(), y));
    FontMetrics metrics = g.getFontMetrics();
    double base = above ? y - metrics.getDescent() : y + metrics.getAscent();
    g.drawString(name, (float) (plot.getX() + theme.px(8)), (float) base);
  }
}
