package halfwave.gui.swing;

import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.TabSheet;
import halfwave.gui.swing.widget.Theme;
import java.awt.CardLayout;
import java.awt.GridBagLayout;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;

/** A panel under a sheet of paper while nobody may see it. */
final class Covered extends TabSheet {

  private static final long serialVersionUID = 1L;
  private static final String PANEL = "panel";
  private static final String COVER = "cover";

  Covered(Theme theme, JComponent panel, String why) {
    super(new CardLayout());
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
    ((CardLayout) getLayout()).show(this, covered ? COVER : PANEL);
  }
}
