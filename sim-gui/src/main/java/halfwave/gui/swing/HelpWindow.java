package halfwave.gui.swing;

import com.formdev.flatlaf.FlatClientProperties;
import halfwave.gui.presentation.HelpPage;
import halfwave.gui.presentation.HelpPages;
import halfwave.gui.presentation.Wording;
import halfwave.gui.swing.widget.Keys;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import halfwave.gui.swing.widget.Typing;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;

/** Help: a field to search, a list of pages, the page. Stays open beside the work. */
final class HelpWindow extends JDialog {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient HelpPages pages;
  private final JTextField search = new JTextField();
  private final DefaultListModel<HelpPage> model = new DefaultListModel<>();
  private final JList<HelpPage> list = new JList<>(model);
  private final JLabel count;
  private final HelpSheet sheet;
  private boolean filling;

  HelpWindow(JFrame over, Theme theme, Wording words, HelpPages pages) {
    super(over, words.text("help.title"), false);
    this.theme = theme;
    this.words = words;
    this.pages = pages;
    count = Lettering.label(" ", theme.note(), theme.palette().softInk());
    sheet = new HelpSheet(theme, link -> HelpPages.linked(link).ifPresent(this::open));
    setName("help");
    setDefaultCloseOperation(HIDE_ON_CLOSE);
    setContentPane(content());
    Keys.bind(getRootPane(), JComponent.WHEN_IN_FOCUSED_WINDOW, KeyEvent.VK_ESCAPE, this::closed);
    size(over);
  }

  private void size(JFrame over) {
    Rectangle screen = over.getGraphicsConfiguration().getBounds();
    setSize(
        Math.min(theme.px(860), screen.width - 40), Math.min(theme.px(620), screen.height - 40));
    setMinimumSize(new Dimension(480, 320));
    setLocationRelativeTo(over);
  }

  private JPanel content() {
    search.setName("help.search");
    search.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, words.text("help.search-hint"));
    search.getAccessibleContext().setAccessibleName(words.text("help.search"));
    Typing.on(search, this::fill);
    Keys.bind(search, JComponent.WHEN_FOCUSED, KeyEvent.VK_DOWN, () -> step(1));
    Keys.bind(search, JComponent.WHEN_FOCUSED, KeyEvent.VK_UP, () -> step(-1));
    Keys.bind(search, JComponent.WHEN_FOCUSED, KeyEvent.VK_ENTER, sheet::requestFocusInWindow);
    list.setName("help.topics");
    list.getAccessibleContext().setAccessibleName(words.text("help.topics"));
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setCellRenderer(new HelpTopicCell(theme));
    // as wide as the room there is, so that a long title ends in dots and is not cut
    list.setFixedCellWidth(1);
    list.addListSelectionListener(
        e -> {
          if (!filling) {
            show(list.getSelectedValue());
          }
        });
    Keys.bind(list, JComponent.WHEN_FOCUSED, KeyEvent.VK_ENTER, sheet::requestFocusInWindow);
    JScrollPane topics = scrolled(list);
    JPanel all =
        new JPanel(
            new MigLayout(
                "insets 12, gap 8 6, fill, novisualpadding",
                "[" + theme.px(230) + "px!,fill][grow,fill]",
                "[][grow,fill][]"));
    all.setBackground(theme.palette().ground());
    all.add(search);
    JScrollPane page = scrolled(sheet);
    // a table of a document may be wider than the window in large type
    page.setHorizontalScrollBarPolicy(ScrollPaneConstants.HORIZONTAL_SCROLLBAR_AS_NEEDED);
    all.add(page, "spany 3, grow, wmin 0, hmin 0, wrap");
    all.add(topics, "wmin 0, hmin 0, wrap");
    all.add(count, "wmin 0");
    return all;
  }

  private JScrollPane scrolled(JComponent inside) {
    JScrollPane pane = new JScrollPane(inside);
    pane.setHorizontalScrollBarPolicy(ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
    pane.setBorder(BorderFactory.createLineBorder(theme.palette().hairline()));
    pane.getVerticalScrollBar().setUnitIncrement(theme.px(24));
    pane.getVerticalScrollBar().setFocusable(false);
    return pane;
  }

  /** Shows a page, among all of them. */
  void open(String topic) {
    search.setText("");
    fill();
    list.setSelectedValue(pages.page(topic), true);
    setVisible(true);
    toFront();
    search.requestFocusInWindow();
  }

  /** What is being read. */
  String topic() {
    HelpPage page = list.getSelectedValue();
    return page == null ? "" : page.topic();
  }

  /**
   * A page with the words in its title comes; else the page stays while it is among those found.
   */
  private void fill() {
    HelpPage before = list.getSelectedValue();
    filling = true;
    model.clear();
    model.addAll(pages.found(search.getText()));
    filling = false;
    boolean none = model.isEmpty();
    count.setText(none ? words.text("help.none-found") : words.text("help.count", model.getSize()));
    if (!none) {
      HelpPage kept = before != null && model.contains(before) ? before : model.get(0);
      list.setSelectedValue(pages.titled(search.getText()).orElse(kept), true);
    }
    show(list.getSelectedValue());
  }

  private void show(HelpPage page) {
    sheet.show(page, HelpPage.words(search.getText()));
  }

  private void step(int by) {
    int to = Math.max(0, Math.min(model.getSize() - 1, list.getSelectedIndex() + by));
    list.setSelectedIndex(to);
    list.ensureIndexIsVisible(to);
  }

  private void closed() {
    setVisible(false);
  }
}
