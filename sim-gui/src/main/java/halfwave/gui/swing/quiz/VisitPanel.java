package halfwave.gui.swing.quiz;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.quiz.Visiting;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Keys;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Plate;
import halfwave.gui.swing.widget.Theme;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** A service call: what is told on the left, what can be done, what was found on the right. */
final class VisitPanel extends JPanel {

  private static final long serialVersionUID = 1L;

  /** So much room has what can be done (px). */
  private static final int MIDDLE = 268;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient Visiting visiting;
  private final VisitCard card;
  private final OffersPanel offers;
  private final VisitLog log;
  private final transient SuspectsForm suspects;
  private final transient ConcludeForm conclude;
  private final JTabbedPane tabs = new JTabbedPane();
  private final JTextArea said;

  /**
   * A panel.
   *
   * @param head stands above what the customer says, or null: nothing does
   */
  VisitPanel(Theme theme, Wording words, Visiting visiting, @Nullable JComponent head) {
    super(
        new MigLayout(
            "insets 0, gap 10, fill, novisualpadding, hidemode 3",
            // in large type on a small screen none may take the room of another
            width(theme, 246, 290, 290) + middle(theme) + width(theme, 220, 350, 350),
            "[grow,fill][]"));
    this.theme = theme;
    this.words = words;
    this.visiting = visiting;
    setOpaque(false);
    card = new VisitCard(theme, words, visiting);
    offers = new OffersPanel(theme, words, visiting);
    log = new VisitLog(theme, words, visiting);
    suspects = new SuspectsForm(theme, words, visiting);
    conclude = new ConcludeForm(theme, words, visiting);
    Column left = new Column(theme);
    if (head != null) {
      left.add(head, "growx, wmin 0, wrap");
    }
    left.add(card, "growx, wmin 0, wrap");
    tabs.setName("visit.tabs");
    tabs.getAccessibleContext().setAccessibleName(words.text("visit.told"));
    tab("visit.log", log);
    tab("visit.suspects", suspects.column().scrolled());
    tab("visit.conclude", conclude.column().scrolled());
    add(plate("visit.call", left.scrolled()), "wmin 0, hmin 0");
    add(plate("visit.offers", offers), "wmin 0, hmin 0");
    add(plate("visit.told", tabs), "wmin 0, hmin 0, wrap");
    said = Lettering.paragraph(" ", theme.body(), theme.palette().danger());
    said.setName("visit.said");
    add(said, "span, growx, wmin 0, gapleft 4");
    tabKeys();
  }

  private static String width(Theme theme, int least, int usual, int most) {
    return "[%dpx:%dpx:%dpx,fill]".formatted(theme.px(least), theme.px(usual), theme.px(most));
  }

  private static String middle(Theme theme) {
    return "[%1$dpx:%1$dpx,grow,fill]".formatted(theme.px(MIDDLE));
  }

  private void tab(String key, JComponent content) {
    tabs.addTab(words.text(key), content);
  }

  private JComponent plate(String key, JComponent content) {
    return Plate.around(theme, words.text(key), content);
  }

  /** Ctrl and 1 to 3: what was found, what is possible still, the conclusion. */
  private void tabKeys() {
    for (int k = 0; k < tabs.getTabCount(); k++) {
      int index = k;
      KeyStroke stroke = KeyStroke.getKeyStroke(KeyEvent.VK_1 + k, InputEvent.CTRL_DOWN_MASK);
      Keys.bind(
          this, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, stroke, () -> tabs.setSelectedIndex(index));
    }
  }

  /** Brings the keyboard to what can be done. */
  void toOffers() {
    offers.toList();
  }

  /** Shows what there is; empty where no call is open. */
  void refresh() {
    card.refresh();
    offers.refresh();
    log.refresh();
    suspects.refresh();
    conclude.refresh();
    String text = visiting.busy() ? words.text("visit.busy") : visiting.said(words);
    said.setForeground(visiting.busy() ? theme.palette().softInk() : theme.palette().danger());
    said.setText(text.isEmpty() ? " " : text);
    said.getAccessibleContext().setAccessibleName(text);
  }
}
