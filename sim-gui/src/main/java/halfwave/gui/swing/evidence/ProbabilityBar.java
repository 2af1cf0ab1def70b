package halfwave.gui.swing.evidence;

import halfwave.gui.presentation.evidence.EvidenceView;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** A share as a bar, with a mark where it was before. */
public final class ProbabilityBar extends JPanel {

  private static final long serialVersionUID = 1L;

  private final String said;

  /** A bar. */
  public ProbabilityBar(Theme theme, EvidenceView.Bar bar) {
    super(new MigLayout("insets 0, gap 8 1, fillx, novisualpadding", "[grow,fill][]"));
    said = bar.name() + ": " + bar.text();
    setOpaque(false);
    var p = theme.palette();
    add(Lettering.paragraph(bar.name(), theme.body(), p.ink()), "growx, wmin 0");
    add(Lettering.label(bar.text(), theme.body(), p.ink()), "wrap");
    add(new Strip(theme, bar.before(), bar.after()), "span, growx, wmin 0");
    setToolTipText(said);
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext =
          new AccessibleJPanel() {
            private static final long serialVersionUID = 1L;

            @Override
            public AccessibleRole getAccessibleRole() {
              return AccessibleRole.LABEL;
            }

            @Override
            public String getAccessibleName() {
              return said;
            }
          };
    }
    return accessibleContext;
  }

  /** The bar itself. */
  private static final class Strip extends JComponent {
    private static final long serialVersionUID = 1L;

    private final Color ground;
    private final Color fill;
    private final Color mark;
    private final int height;
    private final double before;
    private final double after;

    Strip(Theme theme, double before, double after) {
      ground = theme.palette().hairline();
      fill = theme.palette().accent();
      mark = theme.palette().ink();
      height = theme.px(8);
      this.before = before;
      this.after = after;
    }

    @Override
    public Dimension getPreferredSize() {
      return new Dimension(height, height);
    }

    @Override
    protected void paintComponent(Graphics g) {
      int width = getWidth();
      g.setColor(ground);
      g.fillRect(0, height / 4, width, height / 2);
      g.setColor(fill);
      g.fillRect(0, 0, (int) Math.round(after * width), height);
      if (before != after) {
        g.setColor(mark);
        int x = (int) Math.round(before * (width - 2));
        g.fillRect(x, 0, 2, height);
      }
    }
  }
}
