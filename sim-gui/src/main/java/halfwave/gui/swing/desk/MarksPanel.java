package halfwave.gui.swing.desk;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.desk.MarksView;
import halfwave.gui.presentation.evidence.EvidenceView;
import halfwave.gui.swing.evidence.ProbabilityBar;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;

/** The marks of a practised call: each criterion, and each move with what was better. */
public final class MarksPanel {

  private final Theme theme;
  private final Wording words;
  private final Column column;

  /** No marks are shown yet. */
  public MarksPanel(Theme theme, Wording words) {
    this.theme = theme;
    this.words = words;
    column = new Column(theme);
    column.setName("practice.marks");
  }

  /** What is seen of it. */
  public Column column() {
    return column;
  }

  /** Shows marks. */
  public void show(MarksView view) {
    column.removeAll();
    var p = theme.palette();
    column.add(Lettering.label(view.total(), theme.second(), p.ink()), "wrap");
    view.truth().forEach(t -> column.add(Lettering.paragraph(t, theme.lesson(), p.ink()), wide()));
    heading("practice.marks");
    for (MarksView.Line line : view.marks()) {
      column.add(
          new ProbabilityBar(
              theme, new EvidenceView.Bar(line.name(), line.share(), line.share(), line.text())),
          "gaptop 6, " + wide());
      reasons(line);
    }
    if (!view.moves().isEmpty()) {
      heading("practice.moves");
    }
    for (MarksView.Line line : view.moves()) {
      column.add(
          Lettering.paragraph(
              words.text("visit.at", line.name(), line.text()), theme.body(), p.ink()),
          "gaptop 3, " + wide());
      reasons(line);
    }
    column.revalidate();
    column.repaint();
  }

  private void reasons(MarksView.Line line) {
    for (String reason : line.reasons()) {
      column.add(
          Lettering.indented(reason, theme.body(), theme.palette().softInk(), theme.px(12)),
          wide());
    }
  }

  private void heading(String key) {
    column.add(
        Lettering.label(words.text(key), theme.heading(), theme.palette().ink()),
        "gaptop 12, wrap");
  }

  private static String wide() {
    return "growx, wmin 0, wrap";
  }
}
