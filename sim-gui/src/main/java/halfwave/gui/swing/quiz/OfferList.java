package halfwave.gui.swing.quiz;

import halfwave.gui.presentation.quiz.Offer;
import halfwave.gui.swing.widget.Keys;
import halfwave.gui.swing.widget.Theme;
import java.awt.Color;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;
import org.jspecify.annotations.Nullable;

/** What may be done, part by part; what was typed narrows it down. */
final class OfferList extends JList<Offer> {

  private static final long serialVersionUID = 1L;

  private final DefaultListModel<Offer> rows = new DefaultListModel<>();
  private transient List<Offer> all = List.of();
  private String typed = "";

  /**
   * An empty list.
   *
   * @param chosen is told when another one is chosen
   * @param done is told when the chosen one is to be done
   */
  OfferList(Theme theme, String name, String label, Runnable chosen, Runnable done) {
    setModel(rows);
    setName(name);
    getAccessibleContext().setAccessibleName(label);
    setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    setCellRenderer(new OfferCell(theme));
    Color sheet = theme.palette().sheet();
    setBackground(sheet);
    addListSelectionListener(e -> chosen.run());
    Keys.bind(this, WHEN_FOCUSED, KeyEvent.VK_ENTER, done);
    addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent e) {
            if (e.getClickCount() == 2) {
              done.run();
            }
          }
        });
  }

  /** Long names end in dots; below the list the chosen one stands in full. */
  @Override
  public boolean getScrollableTracksViewportWidth() {
    return true;
  }

  JComponent scrolled() {
    JScrollPane pane =
        new JScrollPane(
            this,
            ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
            ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
    pane.setBorder(BorderFactory.createEmptyBorder());
    return pane;
  }

  /** Another call: what was chosen at the one before is not chosen any more. */
  void show(List<Offer> offers) {
    all = offers;
    clearSelection();
    fill();
  }

  /** Only what has these words. */
  void narrow(String words) {
    if (!words.equals(typed)) {
      typed = words;
      fill();
    }
  }

  private void fill() {
    Offer kept = getSelectedValue();
    rows.clear();
    all.stream().filter(o -> o.has(typed)).forEach(rows::addElement);
    int at = rows.indexOf(kept);
    if (!rows.isEmpty()) {
      setSelectedIndex(Math.max(0, at));
    }
  }

  /** The one that is chosen, or null. */
  @Nullable Offer chosen() {
    return getSelectedValue();
  }
}
