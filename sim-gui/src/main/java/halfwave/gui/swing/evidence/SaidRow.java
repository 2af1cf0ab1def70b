package halfwave.gui.swing.evidence;

import halfwave.gui.presentation.evidence.WhyView;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import java.awt.BorderLayout;
import java.awt.Cursor;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JTextArea;

/** A sentence that can be pointed at, or reached by the keyboard. */
final class SaidRow extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final JTextArea text;
  private transient WhyView.Sentence sentence;
  private boolean pointed;

  /**
   * A row.
   *
   * @param changed is called when the row begins or ceases to be pointed at
   */
  SaidRow(Theme theme, WhyView.Sentence sentence, Runnable changed) {
    super(new BorderLayout());
    this.theme = theme;
    this.sentence = sentence;
    int pad = theme.px(2);
    setOpaque(false);
    setBorder(BorderFactory.createEmptyBorder(pad, theme.px(10), pad, pad));
    setFocusable(true);
    text = Lettering.paragraph(sentence.text(), theme.body(), theme.palette().ink());
    text.setCursor(Cursor.getDefaultCursor());
    add(text, BorderLayout.CENTER);
    addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent e) {
            scrollRectToVisible(new Rectangle(getSize()));
            repaint();
            changed.run();
          }

          @Override
          public void focusLost(FocusEvent e) {
            repaint();
            changed.run();
          }
        });
    MouseAdapter mouse =
        new MouseAdapter() {
          @Override
          public void mouseEntered(MouseEvent e) {
            point(true);
          }

          @Override
          public void mouseExited(MouseEvent e) {
            point(false);
          }

          @Override
          public void mousePressed(MouseEvent e) {
            requestFocusInWindow();
          }

          private void point(boolean here) {
            pointed = here;
            repaint();
            changed.run();
          }
        };
    // the words cover the row but for its margins
    addMouseListener(mouse);
    text.addMouseListener(mouse);
  }

  void show(WhyView.Sentence other) {
    if (!other.equals(sentence)) {
      sentence = other;
      text.setText(other.text());
      revalidate();
      repaint();
    }
  }

  WhyView.Sentence sentence() {
    return sentence;
  }

  boolean pointed() {
    return pointed;
  }

  @Override
  protected void paintComponent(Graphics g) {
    super.paintComponent(g);
    boolean focused = isFocusOwner();
    if (focused || pointed) {
      g.setColor(focused ? theme.palette().accent() : theme.palette().border());
      g.fillRect(0, theme.px(2), theme.px(3), getHeight() - 2 * theme.px(2));
    }
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
              return sentence.text();
            }

            @Override
            public String getAccessibleDescription() {
              return sentence.spoken();
            }
          };
    }
    return accessibleContext;
  }
}
