package halfwave.gui.swing.quiz;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.quiz.Attempt;
import halfwave.gui.presentation.quiz.CallRow;
import halfwave.gui.presentation.quiz.QuizModel;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.FileChoices;
import halfwave.gui.swing.widget.FileQuestions;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Plate;
import halfwave.gui.swing.widget.Theme;
import java.awt.BorderLayout;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** An examination: what is asked at its start, its calls, and what is said at its end. */
public final class QuizPanel extends JPanel {

  private static final long serialVersionUID = 1L;
  private static final int TICK_MILLIS = 500;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient QuizModel model;
  private final QuizStartForm start;
  private final VisitPanel visit;
  private final JPanel calls;
  private final JPanel head;
  private final JLabel who;
  private final JLabel clock;
  private final JButton save;
  private final JButton handIn;
  private final JButton back;
  private final JPanel sheet = new JPanel(new BorderLayout());
  private final JTextArea done;
  private final Column starting;
  private final Column ending;
  private final Timer timer;
  private transient List<CallRow> listed = List.of();
  private transient @Nullable JComponent front;
  private boolean looking;

  /** A panel. */
  public QuizPanel(Theme theme, Wording words, QuizModel model, FileChoices choices) {
    super(new BorderLayout(0, theme.px(10)));
    this.theme = theme;
    this.words = words;
    this.model = model;
    var p = theme.palette();
    setBackground(p.ground());
    setBorder(BorderFactory.createEmptyBorder(12, 12, 12, 12));
    who = Lettering.label("", theme.heading(), p.ink());
    who.setName("quiz.who");
    clock = Lettering.label("", theme.heading(), p.ink());
    clock.setName("quiz.clock");
    save = Forms.button(words, "quiz.save", "quiz.save-tip", model::save);
    handIn = Forms.button(words, "quiz.hand-in", "quiz.hand-in-tip", this::handIn);
    back = Forms.button(words, "quiz.back", "quiz.back-tip", () -> look(false));
    head =
        new JPanel(
            new MigLayout(
                "insets 0, gap 12, fillx, hidemode 3, novisualpadding", "[grow][][][][]"));
    head.setOpaque(false);
    head.add(who, "wmin 0");
    head.add(clock);
    head.add(save);
    head.add(handIn);
    head.add(back);
    add(head, BorderLayout.NORTH);
    sheet.setOpaque(false);
    add(sheet, BorderLayout.CENTER);
    calls = new JPanel(new MigLayout("insets 0, gap 6 2, fillx, novisualpadding", "[grow,fill][]"));
    calls.setOpaque(false);
    calls.setName("quiz.calls");
    start = new QuizStartForm(theme, words, model, choices);
    visit = new VisitPanel(theme, words, model, calls);
    starting = new Column(theme);
    starting.add(start, "growx, wmin 0, wrap");
    ending = new Column(theme);
    done = Lettering.paragraph("", theme.lesson(), p.ink());
    done.setName("quiz.done");
    ending.add(Lettering.label(words.text("quiz.handed-in"), theme.second(), p.ink()), "wrap");
    ending.add(done, "growx, wmin 0, wrap");
    ending.add(
        Forms.row(
            Forms.button(words, "quiz.look", "quiz.look-tip", () -> look(true)),
            Forms.button(words, "quiz.another", "quiz.another-tip", model::leave)),
        "gaptop 10, wrap");
    timer = new Timer(TICK_MILLIS, e -> model.tick());
  }

  @Override
  public void addNotify() {
    super.addNotify();
    timer.start();
  }

  @Override
  public void removeNotify() {
    timer.stop();
    super.removeNotify();
  }

  private void handIn() {
    if (new FileQuestions(words)
        .agreed(
            this,
            words.text("quiz.hand-in-sure"),
            words.text("quiz.hand-in"),
            "quiz.hand-in-now")) {
      model.handIn();
    }
  }

  /** What was handed in instead of the end, or the other way round. */
  private void look(boolean begin) {
    looking = begin;
    if (begin && model.call() == null) {
      CallRow.all(model, words).stream()
          .filter(CallRow::free)
          .findFirst()
          .ifPresent(row -> model.choose(row.call()));
    }
    refresh();
  }

  /** Shows what the model has. */
  public void refresh() {
    Attempt attempt = model.attempt();
    boolean taking = attempt != null && !model.over();
    looking = looking && attempt != null && model.over();
    head.setVisible(taking || looking);
    if (attempt == null) {
      start.refresh();
      front(starting);
    } else if (model.over() && !looking) {
      done.setText(CallRow.ending(model, words));
      front(ending);
    } else {
      who.setText(
          words.text(
              "quiz.who", attempt.quiz().title().in(words.locale()), attempt.sheet().learner()));
      clock.setText(taking ? CallRow.clock(model, words) : "");
      handIn.setVisible(taking);
      back.setVisible(looking);
      save.setVisible(model.unsaved());
      list(CallRow.all(model, words));
      visit.refresh();
      front(visit);
    }
  }

  private void front(JComponent wanted) {
    if (front == wanted) {
      return;
    }
    front = wanted;
    sheet.removeAll();
    JComponent shown = wanted;
    if (wanted instanceof Column column) {
      shown = Plate.around(theme, words.text("quiz.title"), column.scrolled());
    }
    sheet.add(shown, BorderLayout.CENTER);
    sheet.revalidate();
    sheet.repaint();
    if (wanted == visit) {
      // not the first button: that would end the quiz
      SwingUtilities.invokeLater(visit::toOffers);
    }
  }

  private void list(List<CallRow> rows) {
    if (rows.equals(listed)) {
      return;
    }
    listed = rows;
    calls.removeAll();
    var p = theme.palette();
    calls.add(Lettering.label(words.text("quiz.calls"), theme.heading(), p.ink()), "span, wrap");
    for (CallRow row : rows) {
      calls.add(
          Lettering.paragraph(
              row.open() ? "→ " + row.title() : row.title(),
              theme.body(),
              row.open() ? p.accent() : p.ink()),
          "growx, wmin 0, gaptop 3");
      JButton go = new JButton(words.text("quiz.go"));
      go.setName("quiz.go." + row.call().name());
      go.getAccessibleContext().setAccessibleName(words.text("quiz.go") + ": " + row.title());
      go.setEnabled(row.free());
      go.addActionListener(e -> model.choose(row.call()));
      calls.add(go, "spany 2, top, wrap");
      calls.add(
          Lettering.paragraph(row.standing(), theme.note(), p.softInk()), "growx, wmin 0, wrap");
    }
    calls.revalidate();
    calls.repaint();
  }
}
