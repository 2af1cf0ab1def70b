package halfwave.gui.swing.evidence;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.evidence.WhyAnswer;
import halfwave.gui.presentation.evidence.WhyModel;
import halfwave.gui.presentation.evidence.WhyView;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Keys;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import halfwave.picture.scene.DrawnPart;
import java.awt.BorderLayout;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The present reading in plain words; each sentence lights what it speaks of. */
public final class WhyPanel extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient WhyModel model;
  private final transient Consumer<Set<DrawnPart>> light;
  private final JTextArea title;
  private final JLabel status;
  private final Column column;
  private final JScrollPane pane;
  private final List<SaidRow> rows = new ArrayList<>();
  private transient List<Integer> shape = List.of();
  private transient List<String> headings = List.of();
  private transient Set<DrawnPart> lit = Set.of();
  private transient @Nullable WhyAnswer shown;

  /**
   * A panel.
   *
   * @param light lights parts of the drawing
   */
  public WhyPanel(Theme theme, Wording words, WhyModel model, Consumer<Set<DrawnPart>> light) {
    super(new BorderLayout());
    this.theme = theme;
    this.words = words;
    this.model = model;
    this.light = light;
    setOpaque(false);
    var p = theme.palette();
    JPanel head = new JPanel(new MigLayout("insets 8 4 2 4, gap 6, fillx", "[grow][]"));
    head.setOpaque(false);
    title = Lettering.paragraph(" ", theme.second(), p.ink());
    title.setName("why.title");
    status = Lettering.label(" ", theme.note(), p.softInk());
    head.add(title, "growx, wmin 0");
    head.add(status, "top");
    add(head, BorderLayout.NORTH);
    column = new Column(theme);
    pane = column.scrolled();
    add(pane, BorderLayout.CENTER);
    step(KeyEvent.VK_DOWN, 1);
    step(KeyEvent.VK_UP, -1);
  }

  /** Shows what the model has. */
  public void refresh() {
    status.setText(
        model.slow()
            ? words.text("why.computing")
            : model.failed() ? words.text("why.failed") : " ");
    WhyAnswer answer = model.answer();
    if (answer != null && answer != shown) {
      shown = answer;
      show(WhyView.of(answer, words));
    }
  }

  /** Where only words have changed, they change in place: focus and scroll stay. */
  private void show(WhyView view) {
    if (!title.getText().equals(view.title())) {
      title.setText(view.title());
    }
    List<Integer> newShape = view.sections().stream().map(s -> s.sentences().size()).toList();
    List<String> newHeadings = view.sections().stream().map(WhyView.Section::heading).toList();
    if (newShape.equals(shape) && newHeadings.equals(headings)) {
      List<WhyView.Sentence> all =
          view.sections().stream().flatMap(s -> s.sentences().stream()).toList();
      for (int k = 0; k < all.size(); k++) {
        rows.get(k).show(all.get(k));
      }
    } else {
      shape = newShape;
      headings = newHeadings;
      fill(view);
    }
    relight();
  }

  private void fill(WhyView view) {
    int focused = focused();
    Point before = pane.getViewport().getViewPosition();
    rows.clear();
    column.removeAll();
    var p = theme.palette();
    column.add(
        Lettering.paragraph(words.text("why.hint"), theme.note(), p.softInk()),
        "growx, wmin 0, wrap");
    for (WhyView.Section section : view.sections()) {
      if (!section.heading().isEmpty()) {
        column.add(Lettering.label(section.heading(), theme.heading(), p.ink()), "gaptop 10, wrap");
      }
      for (WhyView.Sentence sentence : section.sentences()) {
        SaidRow row = new SaidRow(theme, sentence, this::relight);
        row.setName("why." + rows.size());
        rows.add(row);
        column.add(row, "growx, wmin 0, wrap");
      }
    }
    if (focused >= 0) {
      rows.get(Math.min(focused, rows.size() - 1)).requestFocusInWindow();
    }
    column.revalidate();
    column.repaint();
    // lines that are broken anew must not move what somebody reads
    SwingUtilities.invokeLater(() -> pane.getViewport().setViewPosition(before));
  }

  private int focused() {
    for (int k = 0; k < rows.size(); k++) {
      if (rows.get(k).isFocusOwner()) {
        return k;
      }
    }
    return -1;
  }

  /** What is pointed at comes before what has the focus. */
  private void relight() {
    Set<DrawnPart> parts = Set.of();
    for (SaidRow row : rows) {
      if (row.pointed()) {
        parts = row.sentence().parts();
        break;
      }
      if (row.isFocusOwner()) {
        parts = row.sentence().parts();
      }
    }
    if (!parts.equals(lit)) {
      lit = parts;
      light.accept(parts);
    }
  }

  private void step(int key, int by) {
    // nearer than the scroll pane, whose arrows would scroll
    Keys.bind(
        column,
        JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT,
        key,
        () -> {
          int to = focused() + by;
          if (to >= 0 && to < rows.size()) {
            rows.get(to).requestFocusInWindow();
          }
        });
  }
}
