package halfwave.gui.swing.desk;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.desk.DeskReplay;
import halfwave.gui.presentation.desk.ReplayView;
import halfwave.gui.swing.bench.FurnacePicture;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import java.awt.Insets;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.function.IntSupplier;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** A call that is played again, move by move: the furnace and the meter as they stood. */
final class DeskReplayPanel extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Wording words;
  private final transient IntConsumer chosen;
  private final FurnacePicture picture;
  private final JTextArea move;
  private final JTextArea standing;
  private final JLabel reading;
  private final JTextArea place;
  private final JButton first;
  private final JButton back;
  private final JButton next;
  private final JButton last;
  private transient @Nullable DeskReplay replay;
  private int at = -1;

  /**
   * Nothing is played yet.
   *
   * @param chosen is told which move is wanted, counted from zero
   */
  DeskReplayPanel(Theme theme, Wording words, IntConsumer chosen) {
    super(
        new MigLayout(
            "insets 6, gap 4, fill, hidemode 3, novisualpadding",
            "[grow,fill]",
            "[][][0:0,grow,fill][][][]"));
    this.words = words;
    this.chosen = chosen;
    setOpaque(false);
    var p = theme.palette();
    first = step("desk.replay-first", () -> 0);
    back = step("desk.replay-back", () -> at - 1);
    next = step("desk.replay-next", () -> at + 1);
    last = step("desk.replay-last", () -> count() - 1);
    JPanel steps =
        new JPanel(new MigLayout("insets 0, gap 6, novisualpadding", "[0:pref,fill]".repeat(4)));
    steps.setOpaque(false);
    List.of(first, back, next, last).forEach(steps::add);
    add(steps, "wmin 0, wrap");
    move = Lettering.paragraph(words.text("desk.choose-move"), theme.heading(), p.ink());
    move.setName("desk.replay-move");
    add(move, "growx, wmin 0, wrap");
    picture = new FurnacePicture(theme, words, "desk.replay-furnace");
    add(picture, "wmin 0, hmin 0, wrap");
    reading = Lettering.label("", theme.second(), p.ink());
    reading.setName("desk.replay-reading");
    add(reading, "wrap");
    place = Lettering.paragraph(" ", theme.body(), p.ink());
    place.setName("desk.replay-place");
    add(place, "growx, wmin 0, wrap");
    standing = Lettering.paragraph(" ", theme.note(), p.softInk());
    standing.setName("desk.replay-standing");
    add(standing, "growx, wmin 0");
    free();
  }

  private JButton step(String key, IntSupplier to) {
    JButton button = Forms.button(words, key, key + "-tip", () -> chosen.accept(to.getAsInt()));
    button.setMargin(new Insets(2, 4, 2, 4));
    return button;
  }

  private int count() {
    return replay == null ? 0 : replay.acts().size();
  }

  private void free() {
    first.setEnabled(at > 0);
    back.setEnabled(at > 0);
    next.setEnabled(at < count() - 1);
    last.setEnabled(at < count() - 1);
  }

  /**
   * Shows a move.
   *
   * @param played the call; null before it is played
   * @param row which move; below zero: none
   */
  void show(@Nullable DeskReplay played, int row) {
    replay = played;
    at = played == null ? -1 : Math.min(row, played.acts().size() - 1);
    free();
    if (played == null || at < 0) {
      picture.show(null);
      move.setText(
          words.text(
              played == null
                  ? "desk.replay-none"
                  : played.acts().isEmpty() ? "desk.replay-nothing" : "desk.choose-move"));
      reading.setVisible(false);
      place.setText(" ");
      standing.setText(" ");
    } else {
      ReplayView view = ReplayView.of(played, at, words);
      picture.show(view.bench());
      move.setText(view.move());
      reading.setText(view.reading());
      reading.setVisible(!view.reading().isEmpty());
      place.setText(view.place());
      standing.setText(view.standing());
    }
    revalidate();
  }
}
