package halfwave.gui.swing;

import java.awt.Color;
import java.awt.Font;
import java.awt.Rectangle;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;

/** Labels and paragraphs. */
final class Lettering {

  private Lettering() {}

  static JLabel label(String text, Font font, Color ink) {
    JLabel label = new JLabel(text);
    label.setFont(font);
    label.setForeground(ink);
    return label;
  }

  /** Text that breaks where its width ends. */
  static JTextArea paragraph(String text, Font font, Color ink) {
    JTextArea area = new JTextArea(text);
    area.setCaret(new Unseen());
    area.setFont(font);
    area.setForeground(ink);
    area.setLineWrap(true);
    area.setWrapStyleWord(true);
    area.setEditable(false);
    area.setFocusable(false);
    area.setOpaque(false);
    area.setBorder(null);
    return area;
  }

  /** Otherwise every new text would lay out its whole panel and scroll itself into sight. */
  private static final class Unseen extends DefaultCaret {
    private static final long serialVersionUID = 1L;

    Unseen() {
      setUpdatePolicy(NEVER_UPDATE);
    }

    @Override
    protected void adjustVisibility(Rectangle place) {
      // nobody writes here
    }
  }
}
