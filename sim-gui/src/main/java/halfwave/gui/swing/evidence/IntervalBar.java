package halfwave.gui.swing.evidence;

import halfwave.gui.presentation.evidence.MatchView;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Painted;
import halfwave.gui.swing.widget.Theme;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** A fitted number: its name, its value, and the interval as a bar. */
final class IntervalBar extends JPanel {

  private static final long serialVersionUID = 1L;

  IntervalBar(Theme theme, MatchView.Bar bar) {
    super(new MigLayout("insets 0, gap 8 1, fillx, novisualpadding", "[grow,fill]"));
    setOpaque(false);
    var p = theme.palette();
    add(Lettering.paragraph(bar.name(), theme.note(), p.softInk()), "growx, wmin 0, wrap");
    add(Lettering.paragraph(bar.text(), theme.body(), p.ink()), "growx, wmin 0, wrap");
    Strip strip = new Strip(theme, bar);
    strip.setToolTipText(bar.tip());
    strip.getAccessibleContext().setAccessibleName(bar.name() + ": " + bar.text());
    add(strip, "growx, wmin 0, wrap");
  }

  /** The bar: the interval, the value as a stroke, the bench from which the fit started. */
  private static final class Strip extends Painted {
    private static final long serialVersionUID = 1L;

    private final transient MatchView.Bar bar;
    private final Color ground;
    private final Color fill;
    private final Color best;
    private final Color start;
    private final int height;

    Strip(Theme theme, MatchView.Bar bar) {
      this.bar = bar;
      ground = theme.palette().hairline();
      fill = theme.palette().accent();
      best = theme.palette().ink();
      start = theme.palette().softInk();
      height = theme.px(18);
    }

    @Override
    public Dimension getPreferredSize() {
      return new Dimension(height, height);
    }

    @Override
    protected void paintComponent(Graphics g) {
      int third = height / 3;
      g.setColor(ground);
      g.fillRect(0, third, getWidth(), third);
      g.setColor(fill);
      int low = x(bar.low());
      g.fillRect(low, third - 1, Math.max(3, x(bar.high()) - low), third + 2);
      g.setColor(best);
      g.fillRect(x(bar.best()), 1, 3, height - 2);
      g.setColor(start);
      int x = Math.max(third, Math.min(getWidth() - third, x(bar.start())));
      g.fillPolygon(
          new int[] {x - third, x + third, x}, new int[] {height, height, height - third}, 3);
    }

    private int x(double place) {
      return (int) Math.round(place * (getWidth() - 3));
    }
  }
}
