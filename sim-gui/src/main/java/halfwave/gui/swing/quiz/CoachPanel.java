package halfwave.gui.swing.quiz;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.quiz.CoachStep;
import halfwave.gui.presentation.quiz.PracticeModel;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Keys;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import java.awt.BorderLayout;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/** The coach: at which stage a call is, what he would do, what he asks; and what goes back. */
final class CoachPanel extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Wording words;
  private final transient PracticeModel model;
  private final PhaseStrip phases;
  private final JTextArea said;
  private final JButton follow;
  private final JButton undo;
  private final JButton end;
  private final AskForm ask;
  private final transient Runnable answered;

  /**
   * A panel.
   *
   * @param answered takes the keyboard when nothing is asked any more
   */
  CoachPanel(Theme theme, Wording words, PracticeModel model, Runnable answered) {
    super(new BorderLayout());
    this.words = words;
    this.model = model;
    this.answered = answered;
    setOpaque(false);
    var p = theme.palette();
    phases = new PhaseStrip(theme, words);
    said = Lettering.paragraph("", theme.lesson(), p.ink());
    said.setName("practice.said");
    follow = Forms.button(words, "practice.follow", "practice.follow-tip", model::follow);
    undo = Forms.button(words, "practice.undo", "practice.undo-tip", model::undo);
    end = Forms.button(words, "practice.end", "practice.end-tip", model::giveUp);
    JButton leave = Forms.button(words, "practice.leave", "practice.leave-tip", model::leave);
    ask = new AskForm(theme, words, model);
    Column column = new Column(theme);
    JPanel top = row("[grow][]");
    top.add(phases, "growx 0, wmin 0");
    top.add(Forms.row(undo, end, leave), "growx 0");
    column.add(top, "growx, wmin 0, wrap");
    JPanel middle = row("[grow,fill][]");
    middle.add(said, "growx, wmin 0");
    middle.add(follow, "top");
    column.add(middle, "growx, wmin 0, wrap");
    column.add(ask, "growx, wmin 0, wrap");
    add(column, BorderLayout.CENTER);
    Keys.bind(
        this,
        WHEN_IN_FOCUSED_WINDOW,
        KeyStroke.getKeyStroke(KeyEvent.VK_Z, InputEvent.CTRL_DOWN_MASK),
        model::undo);
  }

  private static JPanel row(String columns) {
    JPanel row =
        new JPanel(new MigLayout("insets 0, gap 8, fillx, hidemode 3, novisualpadding", columns));
    row.setOpaque(false);
    return row;
  }

  void refresh() {
    phases.show(model.phase());
    undo.setEnabled(model.undoable());
    end.setEnabled(!model.busy());
    CoachStep step = model.step();
    follow.setVisible(step != null);
    follow.setEnabled(!model.busy());
    boolean asking = ask.isVisible();
    ask.refresh();
    if (asking && !ask.isVisible()) {
      answered.run();
    }
    said.setText(step == null ? words.text(key()) : step.text(words));
    said.setVisible(!ask.isVisible());
    revalidate();
  }

  private String key() {
    return switch (model.help()) {
      case COMPLETING -> "practice.completing";
      case ASKING -> "practice.asking";
      default -> "practice.alone";
    };
  }
}
