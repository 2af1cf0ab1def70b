package halfwave.gui.swing.evidence;

import halfwave.diagnosis.Check;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.evidence.EvidenceAnswer;
import halfwave.gui.presentation.evidence.EvidenceModel;
import halfwave.gui.presentation.evidence.EvidenceView;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.TabSheet;
import halfwave.gui.swing.widget.Theme;
import java.awt.BorderLayout;
import java.awt.Rectangle;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** What was found on a call, what is probable after it, and what to do next. */
public final class EvidencePanel extends TabSheet {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient EvidenceModel model;
  private final EvidenceForm form;
  private final JPanel results;
  private final JPanel noted;
  private final JPanel waiting;
  private final JProgressBar progress = new JProgressBar(0, 100);
  private transient @Nullable EvidenceAnswer shown;
  private transient List<EvidenceView.Line> waitingLines = List.of();
  private int waitingFrom;

  /** A panel. */
  public EvidencePanel(Theme theme, Wording words, EvidenceModel model) {
    super(new BorderLayout());
    this.theme = theme;
    this.words = words;
    this.model = model;
    form = new EvidenceForm(theme, words, model);
    results = panel();
    noted = panel();
    waiting =
        new JPanel(new MigLayout("insets 0, gap 6, fillx, novisualpadding", "[][grow,fill][]"));
    waiting.setOpaque(false);
    JLabel label =
        Lettering.label(words.text("evidence.making"), theme.note(), theme.palette().softInk());
    progress.getAccessibleContext().setAccessibleName(words.text("evidence.making"));
    waiting.add(label);
    waiting.add(progress, "wmin 0");
    waiting.add(Forms.button(words, "evidence.cancel", model::cancel));
    waiting.setVisible(false);
    Column column = new Column(theme);
    column.add(form, "growx, wmin 0, wrap");
    column.add(waiting, "growx, wmin 0, wrap");
    column.add(noted, "growx, wmin 0, wrap");
    column.add(results, "growx, wmin 0, wrap");
    column.add(form.repairing(), "growx, wmin 0, wrap");
    column.add(
        Lettering.paragraph(words.text("evidence.hint"), theme.note(), theme.palette().softInk()),
        "growx, wmin 0, gaptop 8, wrap");
    add(column.scrolled(), BorderLayout.CENTER);
  }

  private static JPanel panel() {
    JPanel panel =
        new JPanel(new MigLayout("insets 0, gap 4, fillx, novisualpadding", "[grow,fill]"));
    panel.setOpaque(false);
    return panel;
  }

  /** Somebody looks at it. */
  public void show(State state) {
    model.want(state);
  }

  /** Shows what the model has. */
  public void refresh() {
    form.refresh();
    progress.setValue((int) Math.round(100 * model.share()));
    boolean slow = model.busy() && model.answer() == null || model.share() > 0 && model.busy();
    if (waiting.isVisible() != slow) {
      waiting.setVisible(slow);
      revalidate();
    }
    EvidenceAnswer answer = model.answer();
    if (answer != null && answer != shown) {
      shown = answer;
      fill(EvidenceView.of(answer, words));
    }
    pending(answer);
  }

  /** What was added stands there at once; what follows from it comes when it is reckoned. */
  private void pending(@Nullable EvidenceAnswer answer) {
    int known = answer == null ? 0 : answer.belief().steps().size();
    List<EvidenceView.Line> lines = EvidenceView.noted(model.log(), words);
    List<EvidenceView.Line> later = lines.subList(Math.min(known, lines.size()), lines.size());
    if (known == waitingFrom && later.equals(waitingLines)) {
      return;
    }
    waitingFrom = known;
    waitingLines = List.copyOf(later);
    noted.removeAll();
    for (int k = known; k < lines.size(); k++) {
      noted.add(line(lines.get(k), k), "wmin 0, wrap");
    }
    noted.revalidate();
    noted.repaint();
  }

  private void fill(EvidenceView view) {
    results.removeAll();
    if (!view.found().isEmpty()) {
      heading("evidence.found");
      for (int k = 0; k < view.found().size(); k++) {
        results.add(line(view.found().get(k), k), "wmin 0, wrap");
      }
      results.add(Forms.button(words, "evidence.clear", model::clear), "growx 0, wrap");
    }
    heading("evidence.causes");
    view.causes().forEach(b -> results.add(new ProbabilityBar(theme, b), "wmin 0, wrap"));
    if (!view.found().isEmpty()) {
      note("evidence.legend");
    }
    heading("evidence.next");
    view.next().forEach(s -> paragraph(s));
    heading("evidence.checks");
    view.checks().forEach(o -> results.add(offer(o), "wmin 0, wrap"));
    if (!view.repairs().isEmpty()) {
      heading("evidence.repairs");
      note("evidence.repairs-note");
      view.repairs().forEach(b -> results.add(new ProbabilityBar(theme, b), "wmin 0, wrap"));
    }
    heading("evidence.customer");
    paragraph(view.customer());
    results.revalidate();
    results.repaint();
  }

  private void heading(String key) {
    results.add(
        Lettering.label(words.text(key), theme.heading(), theme.palette().ink()), "gaptop 8, wrap");
  }

  private void note(String key) {
    results.add(
        Lettering.paragraph(words.text(key), theme.note(), theme.palette().softInk()),
        "growx, wmin 0, wrap");
  }

  private void paragraph(String text) {
    results.add(
        Lettering.paragraph(text, theme.body(), theme.palette().ink()), "growx, wmin 0, wrap");
  }

  private JPanel line(EvidenceView.Line line, int index) {
    JPanel row =
        new JPanel(new MigLayout("insets 0, gap 6 0, fillx, novisualpadding", "[grow,fill][]"));
    row.setOpaque(false);
    var p = theme.palette();
    row.add(Lettering.paragraph(line.text(), theme.body(), p.ink()), "growx, wmin 0");
    JButton remove =
        Forms.remove(theme, words.text("evidence.remove", line.text()), () -> model.remove(index));
    remove.setName("evidence.remove." + index);
    row.add(remove, "top, wrap");
    String reasons = String.join("\n", line.reasons());
    row.add(
        Lettering.paragraph(reasons, theme.note(), line.surprising() ? p.danger() : p.softInk()),
        "growx, wmin 0, gapleft 12");
    return row;
  }

  private void choose(Check check) {
    form.choose(check);
    form.scrollRectToVisible(new Rectangle(0, 0, 1, 1));
  }

  /** A check with what it would tell; a button chooses it above. */
  private JPanel offer(EvidenceView.Offer offer) {
    JPanel row =
        new JPanel(new MigLayout("insets 0, gap 6, fillx, novisualpadding", "[grow,fill][]"));
    row.setOpaque(false);
    row.add(
        new ProbabilityBar(
            theme, new EvidenceView.Bar(offer.name(), offer.share(), offer.share(), offer.text())),
        "growx, wmin 0");
    JButton choose = Forms.button(words, "evidence.choose", () -> choose(offer.check()));
    choose.setName("evidence.choose." + offer.check().id());
    choose
        .getAccessibleContext()
        .setAccessibleName(words.text("evidence.choose") + ": " + offer.name());
    row.add(choose);
    return row;
  }
}
