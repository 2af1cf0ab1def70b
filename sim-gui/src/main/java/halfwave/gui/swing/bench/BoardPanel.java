package halfwave.gui.swing.bench;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.BoardView;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Plate;
import halfwave.gui.swing.widget.Reserved;
import halfwave.gui.swing.widget.Theme;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** What the board does about it, with the numbers that made it do so. */
public final class BoardPanel extends Plate {

  private static final long serialVersionUID = 1L;

  /** One line more than the sentences have mostly (px). */
  private static final double WORDS_HEIGHT = 74;

  /** One line (px). */
  private static final double BRIEF_HEIGHT = 20;

  private final transient Wording words;
  private final JLabel headline;
  private final JLabel clock;
  private final JLabel signal;
  private final SignalGauge gauge;
  private final JTextArea light;
  private final JLabel counts;
  private final JTextArea next;
  private final JTextArea cause;
  private final Reserved said;

  /** A panel. */
  public BoardPanel(Theme theme, Wording words) {
    super(theme, words.text("board.title"));
    setName("board");
    this.words = words;
    var p = theme.palette();
    JPanel face =
        new JPanel(new MigLayout("insets 0, gap 4, fillx, novisualpadding", "[grow,fill]"));
    face.setOpaque(false);
    headline = Lettering.label(" ", theme.second(), p.ink());
    headline.setName("board.headline");
    clock = Lettering.label(" ", theme.body(), p.softInk());
    signal = Lettering.label(" ", theme.body(), p.ink());
    counts = Lettering.label(" ", theme.note(), p.softInk());
    gauge = new SignalGauge(theme);
    next = Lettering.paragraph(" ", theme.body(), p.ink());
    cause = Lettering.paragraph(" ", theme.note(), p.softInk());
    light = Lettering.paragraph(" ", theme.note(), p.softInk());
    JLabel title = Lettering.label(words.text("board.title"), theme.heading(), p.ink());
    JLabel signalName = Lettering.label(words.text("board.signal"), theme.body(), p.softInk());
    face.add(ends(new JComponent[] {title}, clock), "wrap");
    face.add(headline, "wmin 0, wrap");
    face.add(ends(new JComponent[] {signalName, signal}, counts), "wmin 0, wrap");
    face.add(gauge, "wrap");
    said = new Reserved(theme, WORDS_HEIGHT, next, cause, light);
    face.add(said, "wmin 0");
    add(face);
  }

  /** Some things at the left end of a row, one at the right. */
  private static JPanel ends(JComponent[] left, JComponent right) {
    JPanel row = new JPanel(new MigLayout("insets 0, gap 6, fillx, novisualpadding"));
    row.setOpaque(false);
    for (JComponent component : left) {
      row.add(component);
    }
    row.add(right, "pushx, alignx right, wmin 0");
    return row;
  }

  /** Only what the board does, and its light: a demonstration on a small window needs the room. */
  public void brief(boolean on) {
    next.setVisible(!on);
    cause.setVisible(!on);
    said.lower(on ? BRIEF_HEIGHT : WORDS_HEIGHT);
  }

  /** Shows the board of a state. */
  public void show(State state) {
    BoardView view = BoardView.of(state, words);
    set(headline, view.headline());
    set(clock, view.clock());
    set(signal, view.signal());
    gauge.show(view.gauge());
    String flashes =
        view.longFlashes() + view.shortFlashes() == 0 ? "" : " (" + view.flashes(words) + ")";
    set(light, view.light() + flashes);
    set(counts, view.counts());
    set(next, view.next());
    set(cause, view.cause());
    headline.getAccessibleContext().setAccessibleName(view.spoken());
  }

  private static void set(JTextArea area, String text) {
    if (!area.getText().equals(text)) {
      area.setText(text);
    }
  }

  private static void set(JLabel label, String text) {
    if (!label.getText().equals(text)) {
      label.setText(text.isEmpty() ? " " : text);
    }
  }
}
