package halfwave.gui.swing;

import halfwave.gui.swing.widget.Theme;
import java.awt.Color;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.RoundRectangle2D;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JSplitPane;
import javax.swing.plaf.basic.BasicSplitPaneDivider;
import javax.swing.plaf.basic.BasicSplitPaneUI;
import org.jspecify.annotations.Nullable;

/** Two sheets one above the other, with a quiet divider that can be dragged. */
final class Divided extends JSplitPane {

  private static final long serialVersionUID = 1L;
  private static final double GRIP = 28;

  private final transient Theme theme;

  /** Height that the lower sheet had when it was left, or null: that which it likes (px). */
  private final @Nullable Integer before;

  /** Whether a hand has put the divider where it is. */
  private boolean chosen;

  Divided(Theme theme, String name, JComponent upper, JComponent lower, @Nullable Integer before) {
    super(VERTICAL_SPLIT, true, upper, lower);
    this.theme = theme;
    this.before = before;
    setResizeWeight(1);
    setBorder(BorderFactory.createEmptyBorder());
    setOpaque(false);
    setDividerSize(theme.px(10));
    setName("charts.divider");
    getAccessibleContext().setAccessibleName(name);
    updateUI();
  }

  /** Height of the lower sheet as a hand has chosen it, or null: none has (px). */
  @Nullable Integer lower() {
    return chosen ? Integer.valueOf(getBottomComponent().getHeight()) : before;
  }

  /** Until a hand has moved the divider, the lower sheet has its height of before. */
  @Override
  public void doLayout() {
    if (!chosen) {
      int lower = before == null ? getBottomComponent().getPreferredSize().height : before;
      int most = getHeight() - getTopComponent().getMinimumSize().height - getDividerSize();
      setDividerLocation(getHeight() - getDividerSize() - Math.min(lower, Math.max(0, most)));
    }
    super.doLayout();
  }

  @Override
  public void updateUI() {
    if (theme == null) {
      super.updateUI();
      return;
    }
    setUI(
        new BasicSplitPaneUI() {
          @Override
          public BasicSplitPaneDivider createDefaultDivider() {
            Grip grip = new Grip(this, theme);
            grip.addMouseListener(
                new MouseAdapter() {
                  @Override
                  public void mousePressed(MouseEvent e) {
                    chosen = true;
                  }
                });
            return grip;
          }
        });
    setBorder(BorderFactory.createEmptyBorder());
  }

  /** A short line in the gap between the sheets. */
  private static final class Grip extends BasicSplitPaneDivider {

    private static final long serialVersionUID = 1L;

    private final transient Theme theme;

    Grip(BasicSplitPaneUI ui, Theme theme) {
      super(ui);
      this.theme = theme;
      setBorder(BorderFactory.createEmptyBorder());
    }

    @Override
    public void paint(Graphics graphics) {
      Graphics2D g = (Graphics2D) graphics.create();
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      Color line = theme.palette().border();
      g.setColor(line);
      double wide = theme.px(GRIP);
      double tall = theme.px(3);
      g.fill(
          new RoundRectangle2D.Double(
              (getWidth() - wide) / 2, (getHeight() - tall) / 2, wide, tall, tall, tall));
      g.dispose();
    }
  }
}
