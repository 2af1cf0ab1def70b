package halfwave.gui.swing;

import java.awt.CardLayout;
import java.awt.GridBagLayout;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;

/** A panel under a sheet of paper while nobody may see it. */
final class Covered extends JPanel {

  private static final long serialVersionUID = 1L;
  private static final String PANEL = "panel";
  private static final String COVER = "cover";

  private final CardLayout cards = new CardLayout();

  Covered(Theme theme, JComponent panel, String why) {
    setLayout(cards);
    setOpaque(false);
    add(panel, PANEL);
    JPanel sheet = new JPanel(new GridBagLayout());
    sheet.setOpaque(false);
    JTextArea text = Lettering.paragraph(why, theme.body(), theme.palette().ink());
    text.setColumns(22);
    text.setName("covered");
    sheet.add(text);
    add(sheet, COVER);
  }

  /** Covers it, or takes the cover away. */
  void cover(boolean covered) {
    cards.show(this, covered ? COVER : PANEL);
  }
}
