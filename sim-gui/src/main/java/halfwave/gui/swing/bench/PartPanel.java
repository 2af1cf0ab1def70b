package halfwave.gui.swing.bench;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Knob;
import halfwave.gui.presentation.bench.PartCard;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.bench.WorkCard;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import halfwave.picture.scene.DrawnPart;
import java.awt.BorderLayout;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The card of the part that was clicked. */
public final class PartPanel extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient Workbench workbench;
  private final Column column;
  private final List<KnobRow> rows = new ArrayList<>();
  private @Nullable DrawnPart part;
  private @Nullable transient State state;

  /** What the card was made of, the numbers left out: they change in place. */
  private @Nullable transient Made made;

  private record Made(DrawnPart part, List<String> actions, List<String> history) {}

  /** A panel on which no part is open. */
  public PartPanel(Theme theme, Wording words, Workbench workbench) {
    super(new BorderLayout());
    this.theme = theme;
    this.words = words;
    this.workbench = workbench;
    setOpaque(false);
    column = new Column(theme);
    column.add(
        Lettering.paragraph(words.text("part.none"), theme.body(), theme.palette().softInk()),
        "gaptop 8, growx, wmin 0");
    add(column.scrolled(), BorderLayout.CENTER);
  }

  /** Which part is open, or null. */
  public @Nullable DrawnPart opened() {
    return part;
  }

  /** Opens the card of a part. */
  public void open(DrawnPart newPart) {
    part = newPart;
    made = null;
    if (state != null) {
      show(state);
    }
    SwingUtilities.invokeLater(() -> column.scrollRectToVisible(new Rectangle(0, 0, 1, 1)));
  }

  /** Shows the part that is open in a state. */
  public void show(State newState) {
    State before = state;
    state = newState;
    DrawnPart here = part;
    boolean same =
        before != null
            && made != null
            && before.moment().bench().equals(newState.moment().bench())
            && before.standing().work().equals(newState.standing().work())
            && before.moment().supply() == newState.moment().supply()
            && before.moment().damp() == newState.moment().damp();
    if (here == null || same) {
      return;
    }
    PartCard card = PartCard.of(here, newState, words);
    Made wanted =
        new Made(
            here, card.actions().stream().map(PartCard.Action::words).toList(), card.history());
    if (!wanted.equals(made)) {
      made = wanted;
      fill(card);
    }
    for (int k = 0; k < rows.size(); k++) {
      rows.get(k).show(card.knobs().get(k));
    }
  }

  private void fill(PartCard card) {
    column.removeAll();
    rows.clear();
    var p = theme.palette();
    JLabel name = Lettering.label(card.name(), theme.second(), p.ink());
    name.setName("part.name");
    column.add(name, "gaptop 8, wrap");
    if (!card.reach().isEmpty()) {
      column.add(
          Lettering.paragraph(card.reach(), theme.note(), p.softInk()), "growx, wmin 0, wrap");
    }
    if (!card.actions().isEmpty()) {
      JPanel actions =
          new JPanel(
              new MigLayout(
                  "insets 2 0 2 0, gap 6, wrap 1, fillx, novisualpadding", "[grow,fill]"));
      actions.setOpaque(false);
      for (PartCard.Action action : card.actions()) {
        JButton button = new JButton(action.words());
        button.setName("action." + card.actions().indexOf(action));
        button.addActionListener(e -> workbench.want(action.intent()));
        actions.add(button);
      }
      column.add(actions, "growx, wmin 0, wrap");
    }
    if (!card.knobs().isEmpty()) {
      heading("part.condition");
      for (Knob knob : card.knobs()) {
        KnobRow row = new KnobRow(theme, words, workbench);
        row.show(knob);
        rows.add(row);
        column.add(row, "growx, wmin 0, wrap");
      }
    }
    heading("part.history");
    String history =
        card.history().isEmpty()
            ? words.text("part.history-empty")
            : String.join("\n", card.history());
    column.add(Lettering.paragraph(history, theme.body(), p.softInk()), "growx, wmin 0, wrap");
    if (!card.works().isEmpty()) {
      heading("part.can-do");
      for (WorkCard work : card.works()) {
        column.add(new WorkRow(theme, words, workbench, work), "growx, wmin 0, wrap");
      }
    }
    column.revalidate();
    column.repaint();
  }

  private void heading(String key) {
    column.add(
        Lettering.label(words.text(key), theme.heading(), theme.palette().ink()),
        "gaptop 10, wrap");
  }
}
