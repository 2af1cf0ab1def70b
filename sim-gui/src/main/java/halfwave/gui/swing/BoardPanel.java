package halfwave.gui.swing;

import halfwave.gui.presentation.BoardView;
import halfwave.gui.presentation.State;
import halfwave.gui.presentation.Wording;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** What the board does about it, with the numbers that made it do so. */
final class BoardPanel extends Plate {

  private static final long serialVersionUID = 1L;

  private final transient Wording words;
  private final JLabel headline;
  private final JLabel clock;
  private final JLabel signal;
  private final SignalGauge gauge;
  private final JLabel light;
  private final JLabel counts;
  private final JTextArea next;
  private final JTextArea cause;

  BoardPanel(Theme theme, Wording words) {
    super(theme, words.text("board.title"));
    this.words = words;
    var p = theme.palette();
    JPanel face = new JPanel(new MigLayout("insets 0, gap 4, fillx", "[grow][]"));
    face.setOpaque(false);
    face.add(Lettering.label(words.text("board.title"), theme.heading(), p.ink()), "span, wrap");
    headline = Lettering.label(" ", theme.second(), p.ink());
    headline.setName("board.headline");
    clock = Lettering.label(" ", theme.body(), p.softInk());
    face.add(headline, "wmin 0");
    face.add(clock, "alignx right, wrap");
    signal = Lettering.label(" ", theme.body(), p.ink());
    face.add(Lettering.label(words.text("board.signal"), theme.body(), p.softInk()), "split 2");
    face.add(signal, "wrap");
    gauge = new SignalGauge(theme);
    face.add(gauge, "span, growx, wrap");
    next = Lettering.paragraph(" ", theme.body(), p.ink());
    face.add(next, "span, growx, wmin 0, wrap");
    cause = Lettering.paragraph(" ", theme.note(), p.softInk());
    face.add(cause, "span, growx, wmin 0, wrap");
    light = Lettering.label(" ", theme.note(), p.softInk());
    counts = Lettering.label(" ", theme.note(), p.softInk());
    face.add(light, "wmin 0");
    face.add(counts, "alignx right");
    add(face);
  }

  void show(State state) {
    BoardView view = BoardView.of(state, words);
    set(headline, view.headline());
    set(clock, view.clock());
    set(signal, view.signal());
    gauge.show(view.gauge());
    String flashes =
        view.longFlashes() + view.shortFlashes() == 0
            ? ""
            : " (" + words.text("board.flashes", view.longFlashes(), view.shortFlashes()) + ")";
    set(light, view.light() + flashes);
    light.setToolTipText(light.getText());
    set(counts, view.counts());
    if (!next.getText().equals(view.next())) {
      next.setText(view.next());
    }
    if (!cause.getText().equals(view.cause())) {
      cause.setText(view.cause());
    }
    headline.getAccessibleContext().setAccessibleName(view.spoken());
  }

  private static void set(JLabel label, String text) {
    if (!label.getText().equals(text)) {
      label.setText(text.isEmpty() ? " " : text);
    }
  }
}
