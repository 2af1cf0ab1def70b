package halfwave.gui.swing.editor;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.editor.EditorModel;
import halfwave.gui.presentation.editor.EditorWords;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Theme;
import halfwave.lesson.Draft;
import halfwave.lesson.DraftPlace;
import halfwave.lesson.DraftStep;
import java.awt.BorderLayout;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;

/** The steps of a draft in their order: choose, insert, double, delete, move. */
final class StepsPanel extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient EditorModel model;
  private final DefaultListModel<Row> rows = new DefaultListModel<>();
  private final JList<Row> list =
      new JList<>(rows) {
        private static final long serialVersionUID = 1L;

        /** Long headings end in dots; the tip has all of them. */
        @Override
        public boolean getScrollableTracksViewportWidth() {
          return true;
        }
      };

  private final JButton insert;
  private final JButton twice;
  private final JButton delete;
  private final JButton up;
  private final JButton down;
  private boolean filling;

  /**
   * A line of the list.
   *
   * @param text what it is
   * @param doubts how many doubts there are
   */
  private record Row(String text, int doubts) {}

  StepsPanel(Theme theme, Wording words, EditorModel model) {
    super(new BorderLayout(0, theme.px(8)));
    this.theme = theme;
    this.words = words;
    this.model = model;
    setOpaque(false);
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setName("editor.steps");
    list.setOpaque(false);
    list.getAccessibleContext().setAccessibleName(words.text("editor.steps"));
    list.setCellRenderer(new Line());
    list.addListSelectionListener(
        e -> {
          if (!filling && list.getSelectedIndex() >= 0) {
            model.choose(list.getSelectedIndex() - 1);
          }
        });
    JScrollPane scroll =
        new JScrollPane(
            list,
            ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
            ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.setOpaque(false);
    scroll.getViewport().setOpaque(false);
    add(scroll, BorderLayout.CENTER);
    insert = Forms.button(words, "editor.insert", "editor.insert-hint", this::insert);
    twice = Forms.button(words, "editor.twice", "editor.twice-hint", this::twice);
    delete = Forms.button(words, "editor.delete", "editor.delete-hint", this::delete);
    up = Forms.button(words, "editor.up", "editor.up-hint", () -> move(-1));
    down = Forms.button(words, "editor.down", "editor.down-hint", () -> move(1));
    JPanel buttons =
        new JPanel(
            new MigLayout(
                "insets 0, gap 6, fillx, wrap 2, novisualpadding",
                "[grow,fill,sg b][grow,fill,sg b]"));
    buttons.setOpaque(false);
    buttons.add(insert);
    buttons.add(twice);
    buttons.add(up);
    buttons.add(down);
    buttons.add(delete, "span");
    add(buttons, BorderLayout.SOUTH);
  }

  void refresh() {
    if (!model.open()) {
      return;
    }
    Draft draft = model.draft();
    List<EditorWords.Doubt> doubts = EditorWords.doubts(draft, model.checked(), words);
    List<Row> now = new ArrayList<>();
    for (int k = DraftPlace.WHOLE; k < draft.steps().size(); k++) {
      now.add(new Row(EditorWords.step(draft, k, words), EditorWords.of(k, doubts).size()));
    }
    filling = true;
    for (int k = 0; k < now.size(); k++) {
      if (k >= rows.size()) {
        rows.addElement(now.get(k));
      } else if (!rows.get(k).equals(now.get(k))) {
        rows.set(k, now.get(k));
      }
    }
    if (rows.size() > now.size()) {
      rows.removeRange(now.size(), rows.size() - 1);
    }
    list.setSelectedIndex(model.step() + 1);
    list.ensureIndexIsVisible(model.step() + 1);
    filling = false;
    boolean free = !model.bench().recording();
    boolean step = model.step() >= 0 && free;
    list.setEnabled(free);
    insert.setEnabled(free);
    twice.setEnabled(step);
    delete.setEnabled(step);
    up.setEnabled(step && model.step() > 0);
    down.setEnabled(step && model.step() + 1 < draft.steps().size());
  }

  /** Brings the keyboard here. */
  void focus() {
    list.requestFocusInWindow();
  }

  void insert() {
    if (insert.isEnabled()) {
      int at = model.step() + 1;
      model.change(model.draft().inserted(at, DraftStep.EMPTY), at, null);
    }
  }

  void twice() {
    if (twice.isEnabled()) {
      model.change(model.draft().duplicated(model.step()), model.step() + 1, null);
    }
  }

  void delete() {
    if (delete.isEnabled()) {
      int last = model.draft().steps().size() - 1;
      model.change(
          model.draft().removed(model.step()), Math.min(model.step(), Math.max(0, last - 1)), null);
    }
  }

  void move(int by) {
    if ((by < 0 ? up : down).isEnabled()) {
      int to = model.step() + by;
      model.change(model.draft().moved(model.step(), to), to, null);
    }
  }

  /** A step with its number, and a sign where the model has something against it. */
  private final class Line extends DefaultListCellRenderer {

    private static final long serialVersionUID = 1L;

    @Override
    public Component getListCellRendererComponent(
        JList<?> from, Object value, int index, boolean selected, boolean focused) {
      Row row = (Row) value;
      String text = row.doubts() == 0 ? row.text() : words.text("editor.doubted", row.text());
      super.getListCellRendererComponent(from, text, index, selected, focused);
      int pad = theme.px(6);
      setBorder(BorderFactory.createEmptyBorder(pad, pad, pad, pad));
      setFont(theme.body());
      setToolTipText(text);
      setOpaque(selected);
      if (!selected) {
        setForeground(row.doubts() == 0 ? theme.palette().ink() : theme.palette().danger());
      }
      return this;
    }
  }
}
