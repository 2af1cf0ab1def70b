package halfwave.gui.swing.evidence;

import halfwave.bench.Bench;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.presentation.evidence.MatchAnswer;
import halfwave.gui.presentation.evidence.MatchModel;
import halfwave.gui.presentation.evidence.MatchView;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Plate;
import halfwave.gui.swing.widget.Theme;
import halfwave.matching.TakenReading;
import halfwave.matching.Unknown;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** Readings of a furnace on the left, the bench that fits them on the right. */
public final class MatchPanel extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient MatchModel model;
  private final JPanel taken;
  private final Map<Unknown, JCheckBox> unknowns = new EnumMap<>(Unknown.class);
  private final JButton save;
  private final JButton clear;
  private final JButton fit;
  private final BusyRow busy;
  private final MatchResults results;
  private transient @Nullable MatchAnswer shown;
  private transient @Nullable List<TakenReading> listed;
  private boolean fresh = true;

  /** A panel. */
  public MatchPanel(
      Theme theme,
      Wording words,
      MatchModel model,
      Workbench workbench,
      ReadingsFiles files,
      Consumer<Bench> open) {
    super(
        new MigLayout(
            "insets 12, gap 12, fill, novisualpadding",
            "[" + theme.px(360) + "px!,fill][grow,fill]",
            "[grow,fill]"));
    this.theme = theme;
    this.words = words;
    this.model = model;
    setBackground(theme.palette().ground());
    taken = bare("[grow,fill][]");
    save = Forms.button(words, "match.save", "match.save-tip", () -> files.save(this));
    clear = Forms.button(words, "match.clear", () -> model.readings(List.of()));
    fit = Forms.button(words, "match.fit", "match.fit-tip", () -> model.fit(workbench.shown()));
    busy = new BusyRow(theme, words, "match.fitting", "match.cancel", model::cancel);
    results = new MatchResults(theme, words, open);
    add(Plate.around(theme, words.text("match.readings"), left(files).scrolled()), "hmin 0");
    Column right = new Column(theme);
    right.add(results, "growx, wmin 0, wrap");
    add(Plate.around(theme, words.text("match.fitted"), right.scrolled()), "wmin 0, hmin 0");
  }

  private static JPanel bare(String columns) {
    JPanel panel =
        new JPanel(new MigLayout("insets 0, gap 6 2, fillx, hidemode 3, novisualpadding", columns));
    panel.setOpaque(false);
    return panel;
  }

  private Column left(ReadingsFiles files) {
    Column column = new Column(theme);
    column.add(
        Lettering.paragraph(words.text("match.hint"), theme.note(), theme.palette().softInk()),
        "growx, wmin 0, wrap");
    heading(column, "match.readings");
    column.add(new ReadingFields(theme, words, model), "growx, wmin 0, wrap");
    column.add(taken, "growx, wmin 0, wrap");
    JButton load = Forms.button(words, "match.load", "match.load-tip", () -> files.open(this));
    column.add(Forms.row(load, save, clear), "wrap");
    heading(column, "match.unknowns");
    for (Unknown unknown : Unknown.values()) {
      JCheckBox box = new JCheckBox(words.heading(unknown));
      box.setOpaque(false);
      box.setName("match.unknown." + unknown.name().toLowerCase(java.util.Locale.ROOT));
      box.setToolTipText(
          words.text(unknown.isWear() ? "match.unknown-wear" : "match.unknown-size"));
      box.addActionListener(e -> model.choose(unknown, box.isSelected()));
      unknowns.put(unknown, box);
      column.add(box, "wmin 0, wrap, hmin " + theme.px(24) + "px");
    }
    column.add(Forms.row(fit), "gaptop 6, wrap");
    column.add(busy, "growx, wmin 0, wrap");
    return column;
  }

  private void heading(Column column, String key) {
    column.add(
        Lettering.label(words.text(key), theme.heading(), theme.palette().ink()), "gaptop 6, wrap");
  }

  /** Shows what the model has. */
  public void refresh() {
    if (!model.readings().equals(listed)) {
      listed = model.readings();
      list(listed);
    }
    unknowns.forEach((unknown, box) -> box.setSelected(model.unknowns().contains(unknown)));
    save.setEnabled(!model.readings().isEmpty());
    clear.setEnabled(!model.readings().isEmpty());
    fit.setEnabled(model.ready());
    if (busy.isVisible() != model.busy()) {
      busy.setVisible(model.busy());
      revalidate();
    }
    MatchAnswer answer = model.answer();
    if (answer != null && (answer != shown || fresh != model.fresh())) {
      shown = answer;
      fresh = model.fresh();
      results.show(MatchView.of(answer, words), !fresh);
    }
  }

  private void list(List<TakenReading> readings) {
    taken.removeAll();
    for (int k = 0; k < readings.size(); k++) {
      int index = k;
      String line =
          words.text(
              "match.line",
              MatchView.name(readings.get(k), words),
              words.sentences().text(readings.get(k).value()));
      taken.add(Lettering.paragraph(line, theme.body(), theme.palette().ink()), "growx, wmin 0");
      JButton remove =
          Forms.remove(theme, words.text("match.remove", line), () -> model.remove(index));
      remove.setName("match.remove." + k);
      taken.add(remove, "top, wrap");
    }
    taken.revalidate();
    taken.repaint();
  }
}
