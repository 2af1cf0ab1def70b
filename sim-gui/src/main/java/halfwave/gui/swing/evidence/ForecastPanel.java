package halfwave.gui.swing.evidence;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.presentation.evidence.ForecastAnswer;
import halfwave.gui.presentation.evidence.ForecastModel;
import halfwave.gui.presentation.evidence.ForecastView;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Plate;
import halfwave.gui.swing.widget.Theme;
import java.awt.Color;
import java.awt.Font;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** What a forecast is asked with on the left, the forecast on the right. */
public final class ForecastPanel extends JPanel {

  private static final long serialVersionUID = 1L;

  private static final List<String> HEADINGS =
      List.of(
          "forecast.plan",
          "forecast.then",
          "forecast.minutes",
          "forecast.cost",
          "forecast.service");

  /** Shares of the width, whatever stands in them. */
  private static final String COLUMNS =
      "[0:0,grow 30,fill][0:0,grow 16,fill][0:0,grow 14,fill][0:0,grow 14,fill][0:0,grow 26,fill]";

  private final transient Theme theme;
  private final transient Wording words;
  private final transient ForecastModel model;
  private final transient Workbench workbench;
  private final ForecastFields fields;
  private final ForecastLog log;
  private final BusyRow busy;
  private final ForecastCanvas canvas;
  private final JPanel said;
  private final JButton save;
  private transient @Nullable ForecastAnswer shown;

  /**
   * A panel.
   *
   * @param keep writes a forecast to a file
   */
  public ForecastPanel(
      Theme theme,
      Wording words,
      ForecastModel model,
      Workbench workbench,
      Consumer<ForecastCanvas> keep) {
    super(
        new MigLayout(
            "insets 12, gap 12, fill, novisualpadding",
            "[" + theme.px(340) + "px!,fill][grow,fill]",
            "[grow,fill]"));
    this.theme = theme;
    this.words = words;
    this.model = model;
    this.workbench = workbench;
    setBackground(theme.palette().ground());
    fields = new ForecastFields(theme, words, model, workbench, this::ask);
    log = new ForecastLog(theme, words, model, fields::form);
    busy = new BusyRow(theme, words, "forecast.making", "forecast.cancel", model::cancel);
    canvas = new ForecastCanvas(theme, words);
    canvas.setVisible(false);
    said = new JPanel(new MigLayout("insets 0, gap 4, fillx, novisualpadding", "[grow,fill]"));
    said.setOpaque(false);
    said.setName("forecast.said");
    save = Forms.button(words, "forecast.save", "forecast.save-tip", () -> keep.accept(canvas));
    save.setVisible(false);
    add(Plate.around(theme, words.text("forecast.title"), left().scrolled()), "hmin 0");
    Column right = new Column(theme);
    right.add(canvas, "growx, wmin 0, wrap");
    right.add(said, "growx, wmin 0, wrap");
    right.add(Forms.row(save), "gaptop 6, wrap");
    add(Plate.around(theme, words.text("forecast.chart"), right.scrolled()), "wmin 0, hmin 0");
    text(words.text("forecast.none-yet"), false);
  }

  private Column left() {
    Column column = new Column(theme);
    column.add(
        Lettering.paragraph(words.text("forecast.hint"), theme.note(), theme.palette().softInk()),
        "growx, wmin 0, wrap");
    column.add(fields, "growx, wmin 0, wrap");
    column.add(
        Lettering.label(words.text("forecast.log"), theme.heading(), theme.palette().ink()),
        "gaptop 6, wrap");
    column.add(log, "growx, wmin 0, wrap");
    column.add(
        Forms.row(Forms.button(words, "forecast.ask", "forecast.ask-tip", this::ask)),
        "gaptop 6, wrap");
    column.add(busy, "growx, wmin 0, wrap");
    return column;
  }

  /** Fills the form in; a bench is open by now. */
  public void fill() {
    fields.fill();
    log.refresh();
  }

  /** Keeps what is in the form, for another language or look. */
  public void keep() {
    model.keep(fields.form());
  }

  private void ask() {
    if (fields.right()) {
      boolean fits = model.forecast(workbench.shown(), fields.form());
      log.tell(fits ? "" : words.text("forecast.too-long"));
    }
  }

  /** Shows what the model has. */
  public void refresh() {
    log.refresh();
    if (busy.isVisible() != model.busy()) {
      busy.setVisible(model.busy());
      revalidate();
    }
    ForecastAnswer answer = model.answer();
    if (answer != null && answer != shown) {
      shown = answer;
      show(ForecastView.of(answer, words));
    }
  }

  private void show(ForecastView view) {
    said.removeAll();
    canvas.show(view);
    canvas.setVisible(view.forecast() != null);
    save.setVisible(view.forecast() != null);
    view.said().forEach(s -> text(s, view.doubtful()));
    if (!view.rows().isEmpty()) {
      said.add(
          Lettering.label(words.text("forecast.plans"), theme.heading(), theme.palette().ink()),
          "gaptop 8, wrap");
      said.add(table(view.rows()), "growx, wmin 0, wrap");
    }
    revalidate();
    repaint();
  }

  private void text(String text, boolean doubtful) {
    var p = theme.palette();
    said.add(
        Lettering.paragraph(
            doubtful ? "⚠ " + text : text, theme.body(), doubtful ? p.danger() : p.ink()),
        "growx, wmin 0, wrap");
  }

  private JPanel table(List<List<String>> rows) {
    JPanel table =
        new JPanel(new MigLayout("insets 0, gap 12 3, fillx, novisualpadding, wrap 5", COLUMNS));
    table.setOpaque(false);
    table.setName("forecast.table");
    var p = theme.palette();
    for (String heading : HEADINGS) {
      cell(table, words.text(heading), theme.note(), p.softInk());
    }
    for (List<String> row : rows) {
      row.forEach(text -> cell(table, text, theme.body(), p.ink()));
    }
    return table;
  }

  /** Its lines break where its column ends: in large type dates and headings are long. */
  private static void cell(JPanel table, String text, Font font, Color ink) {
    table.add(Lettering.paragraph(text, font, ink), "growx, wmin 0, top");
  }
}
