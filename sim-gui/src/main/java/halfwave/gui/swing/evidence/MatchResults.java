package halfwave.gui.swing.evidence;

import halfwave.bench.Bench;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.evidence.MatchView;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import java.awt.Color;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What came of a fit. */
final class MatchResults extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient Consumer<Bench> open;

  MatchResults(Theme theme, Wording words, Consumer<Bench> open) {
    super(new MigLayout("insets 0, gap 4, fillx, novisualpadding", "[grow,fill]"));
    this.theme = theme;
    this.words = words;
    this.open = open;
    setOpaque(false);
    setName("match.results");
    text(words.text("match.none-yet"), theme.palette().softInk());
  }

  /** Shows a fit; stale where the readings have changed since. */
  void show(MatchView view, boolean stale) {
    removeAll();
    if (stale) {
      text(words.text("match.stale"), theme.palette().attention());
    }
    if (!view.warning().isEmpty()) {
      text("⚠ " + view.warning(), theme.palette().danger());
    }
    Bench bench = view.bench();
    if (bench != null) {
      heading("match.fitted");
      view.bars().forEach(b -> add(new IntervalBar(theme, b), "wmin 0, gaptop 3, wrap"));
      JButton opens = Forms.button(words, "match.open", "match.open-tip", () -> open.accept(bench));
      add(Forms.row(opens), "gaptop 4, wrap");
      heading("match.follows");
      view.said().forEach(s -> text(s, theme.palette().ink()));
      heading("match.compared");
      add(table(view.lines()), "wmin 0, wrap");
    }
    revalidate();
    repaint();
  }

  private void heading(String key) {
    add(Lettering.label(words.text(key), theme.heading(), theme.palette().ink()), "gaptop 8, wrap");
  }

  private void text(String text, Color ink) {
    add(Lettering.paragraph(text, theme.body(), ink), "growx, wmin 0, wrap");
  }

  private JPanel table(List<MatchView.Line> lines) {
    JPanel table =
        new JPanel(
            new MigLayout(
                "insets 0, gap 10 3, fillx, novisualpadding", "[grow,fill][right][right][right]"));
    table.setOpaque(false);
    var p = theme.palette();
    for (String key : List.of("match.reading", "match.read", "match.gives", "match.off")) {
      var label = Lettering.label(words.text(key), theme.note(), p.softInk());
      label.setToolTipText(words.text(key.equals("match.off") ? "match.off-tip" : key));
      table.add(label, key.equals("match.off") ? "wrap" : "");
    }
    for (MatchView.Line line : lines) {
      Color ink = line.far() ? p.danger() : p.ink();
      table.add(Lettering.paragraph(line.name(), theme.body(), ink), "growx, wmin 0");
      table.add(Lettering.label(line.read(), theme.body(), ink));
      table.add(Lettering.label(line.fitted(), theme.body(), ink));
      table.add(
          Lettering.label(line.far() ? line.off() + " !" : line.off(), theme.body(), ink), "wrap");
    }
    return table;
  }
}
