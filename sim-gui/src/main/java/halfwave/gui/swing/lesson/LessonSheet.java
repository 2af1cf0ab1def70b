package halfwave.gui.swing.lesson;

import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Theme;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/**
 * What a step says, and below it what it asks. Where both have no room the saying is scrolled, so
 * that the question is seen with all its answers; only where even they are too high they scroll
 * too.
 */
final class LessonSheet extends JPanel {

  private static final long serialVersionUID = 1L;

  /** The saying keeps three lines of text (px). */
  private static final double LEAST_SAID = 54;

  private final Column said;
  private final Column asked;
  private final JScrollPane saidPane;
  private final JScrollPane askedPane;
  private final int leastSaid;

  LessonSheet(Theme theme) {
    super(null);
    setOpaque(false);
    leastSaid = theme.px(LEAST_SAID);
    said = new Column(theme);
    asked = new Column(theme);
    // one lies close to the other, and to the buttons
    int side = theme.px(4);
    said.setBorder(BorderFactory.createEmptyBorder(0, side, 0, theme.px(10)));
    asked.setBorder(BorderFactory.createEmptyBorder(0, side, 0, theme.px(10)));
    saidPane = said.scrolled();
    askedPane = asked.scrolled();
    add(saidPane);
    add(askedPane);
  }

  /** Is filled with what is said. */
  Column said() {
    return said;
  }

  /** Is filled with what is asked and must be seen together; empty where nothing is. */
  Column asked() {
    return asked;
  }

  void clear() {
    said.removeAll();
    asked.removeAll();
  }

  /** Where it is scrolled to. */
  Point place() {
    return saidPane.getViewport().getViewPosition();
  }

  /** Scrolls there, once it is laid out. */
  void place(Point place) {
    SwingUtilities.invokeLater(() -> saidPane.getViewport().setViewPosition(place));
  }

  /**
   * Scrolls to its beginning, once it is laid out; or as far to its end as all of one thing is
   * still seen.
   */
  void begin(@Nullable JComponent thing) {
    SwingUtilities.invokeLater(
        () -> {
          said.scrollRectToVisible(new Rectangle(0, thing == null ? 0 : said.getHeight(), 1, 1));
          if (thing != null) {
            said.scrollRectToVisible(thing.getBounds());
          }
          asked.scrollRectToVisible(new Rectangle(0, 0, 1, 1));
        });
  }

  @Override
  public Dimension getPreferredSize() {
    return new Dimension(0, said.getPreferredSize().height + asked.getPreferredSize().height);
  }

  @Override
  public void doLayout() {
    int width = getWidth();
    int height = getHeight();
    boolean asks = asked.getComponentCount() > 0;
    int question = asks ? wanted(askedPane, asked, width, height) : 0;
    int text = asks ? wanted(saidPane, said, width, height) : height;
    int top = Math.min(text, Math.max(height - question, Math.min(leastSaid, height / 2)));
    saidPane.setBounds(0, 0, width, top);
    askedPane.setVisible(asks);
    askedPane.setBounds(0, top, width, Math.min(question, height - top));
  }

  /** How high a column is at a width: its lines break when its pane has it. */
  private static int wanted(JScrollPane pane, Component column, int width, int height) {
    pane.setBounds(0, 0, width, height);
    pane.doLayout();
    pane.getViewport().doLayout();
    return column.getPreferredSize().height;
  }
}
