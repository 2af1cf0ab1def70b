package halfwave.gui.swing.bench;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.FaultCard;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.Seal;
import halfwave.gui.presentation.bench.SealView;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import java.awt.Component;
import java.util.List;
import java.util.function.LongSupplier;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** Hides the condition of the bench from a class, takes its answer, and replays its way. */
public final class SealPanel extends JPanel {

  private static final long serialVersionUID = 1L;

  /** Long enough to read a line and look at the bench (ms). */
  private static final int REPLAY_MILLIS = 3500;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient Workbench workbench;
  private final transient LongSupplier chance;
  private final Timer replay = new Timer(REPLAY_MILLIS, e -> onward());
  private @Nullable transient SealView shown;
  private @Nullable JComboBox<FaultCard> answer;
  private @Nullable JButton draw;

  /** The stage of the seal that the keyboard has followed. */
  private transient Object followed = "";

  /**
   * A panel.
   *
   * @param chance seeds of what is drawn
   */
  public SealPanel(Theme theme, Wording words, Workbench workbench, LongSupplier chance) {
    super(new MigLayout("insets 0, gap 4, fillx, hidemode 3, novisualpadding", "[grow,fill]"));
    this.theme = theme;
    this.words = words;
    this.workbench = workbench;
    this.chance = chance;
    setOpaque(false);
  }

  /** Shows the seal of a state. */
  public void show(State state) {
    SealView view = SealView.of(state, words);
    if (view.equals(shown)) {
      return;
    }
    FaultCard chosen = answer == null ? null : (FaultCard) answer.getSelectedItem();
    shown = view;
    removeAll();
    answer = null;
    var p = theme.palette();
    add(Lettering.label(view.heading(), theme.heading(), p.ink()), "gaptop 8, wrap");
    text(view.text());
    if (state.seal() == null) {
      add(button("seal.hide", new Intent.Hide()), "growx 0, wrap");
    } else if (state.sealed()) {
      closed(view, chosen);
    } else {
      open(view);
    }
    if (!replaying(view)) {
      replay.stop();
    }
    revalidate();
    repaint();
    follow(state);
  }

  /** A seal that has just been made or drawn takes the keyboard: no key goes astray. */
  private void follow(State state) {
    Seal seal = state.sealed() ? state.seal() : null;
    Object stage = seal == null ? "" : List.of(seal.drawn() != null);
    JComponent next = seal == null || seal.drawn() == null ? draw : answer;
    if (seal != null && !stage.equals(followed) && next != null && isShowing()) {
      SwingUtilities.invokeLater(next::requestFocusInWindow);
    }
    followed = stage;
  }

  private void closed(SealView view, @Nullable FaultCard chosen) {
    text(view.spent());
    JButton button = Forms.button(words, "seal.draw", "seal.draw-hint", this::draw);
    button.addActionListener(
        e -> {
          button.setEnabled(false);
          button.setText(words.text("seal.drawing"));
        });
    draw = button;
    add(button, "growx 0, wrap");
    JComboBox<FaultCard> kinds =
        new JComboBox<>(FaultCard.found("", words).toArray(FaultCard[]::new));
    kinds.insertItemAt(null, 0);
    kinds.setSelectedItem(chosen);
    kinds.setRenderer(new Kinds(words.text("seal.no-answer")));
    kinds.setName("seal.answer");
    kinds.getAccessibleContext().setAccessibleName(words.text("seal.answer"));
    kinds.setToolTipText(words.text("seal.answer"));
    answer = kinds;
    add(Lettering.label(words.text("seal.answer"), theme.body(), theme.palette().ink()), "wrap");
    add(kinds, "wmin 0, wrap");
    JButton reveal =
        Forms.button(words, "seal.reveal", () -> reveal((FaultCard) kinds.getSelectedItem()));
    reveal.setFont(theme.heading());
    add(reveal, "wrap");
    add(button("seal.give-up", new Intent.Unseal()), "growx 0, wrap");
  }

  private void open(SealView view) {
    text(view.verdict());
    text(view.outcome());
    add(
        Lettering.label(words.text("seal.path"), theme.heading(), theme.palette().ink()),
        "gaptop 8, wrap");
    if (view.path().isEmpty()) {
      text(words.text("seal.no-path"));
    } else {
      JToggleButton play = new JToggleButton(words.text("seal.replay"), replay.isRunning());
      play.setName("seal.replay");
      play.addActionListener(
          e -> {
            if (play.isSelected()) {
              workbench.want(new Intent.LookBack(0));
              replay.start();
            } else {
              replay.stop();
            }
          });
      add(play, "growx 0, wrap");
    }
    for (int k = 0; k < view.path().size(); k++) {
      add(step(view, k), "wmin 0, wrap");
    }
    JButton end = button("seal.end", new Intent.Unseal());
    end.setFont(theme.heading());
    add(end, "gaptop 8, wrap");
  }

  /** A line, and a button that puts the bench where it stood then. */
  private JPanel step(SealView view, int index) {
    JPanel row = new JPanel(new MigLayout("insets 0, gap 6, fillx, novisualpadding", "[][grow]"));
    row.setOpaque(false);
    JToggleButton button = new JToggleButton(Integer.toString(index + 1), index == view.at());
    button.setName("seal.step." + index);
    button.setToolTipText(words.text("seal.look-back"));
    button
        .getAccessibleContext()
        .setAccessibleName(words.text("seal.look-back") + ": " + view.path().get(index));
    button.addActionListener(
        e -> {
          replay.stop();
          workbench.want(new Intent.LookBack(index));
        });
    row.add(button, "top");
    row.add(
        Lettering.paragraph(view.path().get(index), theme.body(), theme.palette().ink()),
        "growx, wmin 0");
    return row;
  }

  private void text(String text) {
    if (!text.isEmpty()) {
      add(Lettering.paragraph(text, theme.body(), theme.palette().ink()), "wmin 0, wrap");
    }
  }

  private JButton button(String key, Intent intent) {
    return Forms.button(words, key, () -> workbench.want(intent));
  }

  private void draw() {
    workbench.want(new Intent.Draw(chance.getAsLong()));
  }

  private void reveal(@Nullable FaultCard card) {
    workbench.want(new Intent.Reveal(card == null ? null : card.kind()));
  }

  private boolean replaying(SealView view) {
    return replay.isRunning() && view.at() < view.path().size();
  }

  private void onward() {
    SealView view = shown;
    if (view != null && replaying(view)) {
      workbench.want(new Intent.LookBack(view.at() + 1));
    }
  }

  /** Kinds of faults by name, the empty one for a class without an answer. */
  private static final class Kinds extends DefaultListCellRenderer {
    private static final long serialVersionUID = 1L;
    private final String none;

    Kinds(String none) {
      this.none = none;
    }

    @Override
    public Component getListCellRendererComponent(
        JList<?> list, @Nullable Object value, int index, boolean selected, boolean focused) {
      String text = value instanceof FaultCard card ? card.name() : none;
      return super.getListCellRendererComponent(list, text, index, selected, focused);
    }
  }
}
