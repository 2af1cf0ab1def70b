package halfwave.gui.swing.widget;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** A caution: a plate with a sign and words, never colour alone. Not there where none is needed. */
public final class CautionPlate extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final JTextArea text;
  private List<String> shown = List.of();

  /** A plate without a caution: it is not seen. */
  public CautionPlate(Theme theme, String heading) {
    super(new MigLayout("insets 3 6 3 6, gap 6, novisualpadding, fillx", "[][grow]"));
    this.theme = theme;
    setOpaque(false);
    add(Lettering.label("⚠", theme.second(), theme.palette().danger()), "top");
    text = Lettering.paragraph("", theme.body(), theme.palette().ink());
    add(text, "growx, wmin 0");
    getAccessibleContext().setAccessibleName(heading);
    setVisible(false);
  }

  /** In smaller type: there are more of them than one. */
  public void small(boolean on) {
    text.setFont(on ? theme.note() : theme.body());
  }

  /** Shows them; whether they are other ones than before. */
  public boolean show(List<String> cautions) {
    boolean other = !cautions.equals(shown);
    if (other) {
      shown = List.copyOf(cautions);
      text.setText(String.join("\n", cautions));
      text.getAccessibleContext().setAccessibleName(text.getText());
      setVisible(!cautions.isEmpty());
      revalidate();
    }
    return other;
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(theme.palette().danger());
    g.draw(new RoundRectangle2D.Double(0.5, 0.5, getWidth() - 1, getHeight() - 1, 7, 7));
    g.dispose();
  }
}
