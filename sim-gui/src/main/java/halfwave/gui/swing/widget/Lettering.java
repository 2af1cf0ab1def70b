package halfwave.gui.swing.widget;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;

/** Labels and paragraphs. */
public final class Lettering {

  private Lettering() {}

  /** A line of type. */
  public static JLabel label(String text, Font font, Color ink) {
    JLabel label = new Settled(text);
    label.setFont(font);
    label.setForeground(ink);
    return label;
  }

  /** Text that breaks where its width ends. */
  public static JTextArea paragraph(String text, Font font, Color ink) {
    JTextArea area = new SettledArea(text);
    area.setCaret(new Unseen());
    area.setFont(font);
    area.setForeground(ink);
    area.setLineWrap(true);
    area.setWrapStyleWord(true);
    area.setEditable(false);
    area.setFocusable(false);
    area.setOpaque(false);
    // none at all would be taken for one that the look may put there
    area.setBorder(BorderFactory.createEmptyBorder());
    return area;
  }

  /** The same, further in: a column knows nothing of gaps when it breaks lines. */
  public static JTextArea indented(String text, Font font, Color ink, int indent) {
    JTextArea area = paragraph(text, font, ink);
    area.setBorder(BorderFactory.createEmptyBorder(0, indent, 0, 0));
    return area;
  }

  /** A reading changes many times a second: its panel is laid out anew only when it needs more. */
  private static final class Settled extends JLabel {
    private static final long serialVersionUID = 1L;

    Settled(String text) {
      super(text);
    }

    @Override
    public void revalidate() {
      Dimension wanted = getPreferredSize();
      if (!isValid() || wanted.width > getWidth() || wanted.height > getHeight()) {
        super.revalidate();
      }
    }
  }

  /** The same for text that breaks: only another number of lines moves what is below. */
  private static final class SettledArea extends JTextArea {
    private static final long serialVersionUID = 1L;

    private boolean writing;

    SettledArea(String text) {
      super(text);
    }

    @Override
    public void setText(String text) {
      if (text.equals(getText())) {
        return;
      }
      writing = true;
      super.setText(text);
      writing = false;
      if (!isValid() || getPreferredSize().height != getHeight()) {
        revalidate();
      }
    }

    @Override
    public void revalidate() {
      if (!writing) {
        super.revalidate();
      }
    }
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
