package halfwave.gui.swing.quiz;

import halfwave.grading.CallMarks;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.desk.MarksView;
import halfwave.gui.presentation.quiz.PracticeModel;
import halfwave.gui.swing.desk.DeskFiles;
import halfwave.gui.swing.desk.MarksPanel;
import halfwave.gui.swing.desk.RoutinePanel;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Plate;
import halfwave.gui.swing.widget.Theme;
import java.awt.BorderLayout;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;

/** Practice: the choice of a call, the call with its coach, the marks. */
public final class PracticePanel extends JPanel {

  private static final long serialVersionUID = 1L;

  /** Below this height what can be done would lose its button (px). */
  private static final int LEAST_VISIT = 320;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient PracticeModel model;
  private final transient PracticeChoice choice;
  private final CoachPanel coach;
  private final VisitPanel visit;
  private final JComponent working;
  private final transient MarksPanel marks;
  private final JPanel ending;
  private final RoutinePanel routine;
  private final JComponent choosing;
  private final JTextArea trouble;
  private transient @Nullable CallMarks shown;
  private @Nullable JComponent front;

  /** A panel. */
  public PracticePanel(Theme theme, Wording words, PracticeModel model, DeskFiles files) {
    super(new BorderLayout());
    this.theme = theme;
    this.words = words;
    this.model = model;
    setBackground(theme.palette().ground());
    setBorder(BorderFactory.createEmptyBorder(12, 12, 12, 12));
    routine =
        new RoutinePanel(
            theme,
            words,
            model.routine(),
            files,
            () -> model.calls().size(),
            model::compare,
            () -> model.write(false));
    choice = new PracticeChoice(theme, words, model, files, () -> model.write(true));
    choosing = plate("practice.title", choice.column().scrolled());
    visit = new VisitPanel(theme, words, model, null);
    coach = new CoachPanel(theme, words, model, visit::toOffers);
    Column call = Column.filling(theme);
    call.add(plate("practice.title", coach), "growx, wmin 0, wrap");
    // what can be done keeps its button; in large type on a small screen all is scrolled
    call.add(visit, "grow, push, wmin 0, hmin " + theme.px(LEAST_VISIT) + "px");
    working = call.scrolled();
    marks = new MarksPanel(theme, words);
    trouble = Lettering.paragraph("", theme.body(), theme.palette().danger());
    ending = bare();
    ending.add(plate("practice.marks", marks.column().scrolled()), BorderLayout.CENTER);
    JPanel foot = bare();
    foot.add(trouble, BorderLayout.CENTER);
    foot.add(
        Forms.row(Forms.button(words, "practice.leave", "practice.leave-tip", model::leave)),
        BorderLayout.WEST);
    ending.add(foot, BorderLayout.SOUTH);
  }

  private JPanel bare() {
    JPanel panel = new JPanel(new BorderLayout(theme.px(10), theme.px(10)));
    panel.setOpaque(false);
    return panel;
  }

  private JComponent plate(String key, JComponent content) {
    return Plate.around(theme, words.text(key), content);
  }

  /** Shows what the model has. */
  public void refresh() {
    CallMarks given = model.marks();
    if (model.call() == null) {
      if (model.writing()) {
        routine.refresh();
      } else {
        choice.refresh();
      }
      front(model.writing() ? routine : choosing);
    } else if (given != null) {
      if (given != shown) {
        shown = given;
        marks.show(MarksView.of(given, words));
      }
      trouble.setText(model.said(words));
      front(ending);
    } else {
      coach.refresh();
      visit.refresh();
      front(working);
    }
  }

  private void front(JComponent wanted) {
    if (front != wanted) {
      front = wanted;
      removeAll();
      add(wanted, BorderLayout.CENTER);
      revalidate();
      repaint();
    }
  }
}
