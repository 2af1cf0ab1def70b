package halfwave.gui.swing;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.quiz.QuizModel;
import halfwave.gui.swing.widget.FileQuestions;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import java.awt.Component;
import java.awt.Container;
import java.awt.GridBagLayout;
import java.awt.Window;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JFrame;
import javax.swing.JMenuBar;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/**
 * While an examination is taken the bench is covered, and every window that could help is put away:
 * whoever is asked what is wrong with a furnace does not try it on another beside.
 */
final class Examination {

  private static final int COLUMNS = 34;

  private final JFrame frame;
  private final QuizModel model;
  private final Runnable back;
  private final List<Window> away = new ArrayList<>();
  private @Nullable Dress dress;
  private boolean covered;

  /** What the frame shows in one language and look, outside of an examination and in one. */
  private record Dress(
      Wording words, Container sheet, JMenuBar bar, JPanel cover, JMenuBar coverBar) {}

  /**
   * Nothing is covered yet.
   *
   * @param back brings the examination to the front
   */
  Examination(JFrame frame, QuizModel model, Runnable back) {
    this.frame = frame;
    this.model = model;
    this.back = back;
  }

  /**
   * Another language or look; the frame has it already.
   *
   * @param bar the menus that are left in an examination
   */
  void dress(Theme theme, Wording words, JMenuBar bar) {
    dress = new Dress(words, frame.getContentPane(), frame.getJMenuBar(), cover(theme, words), bar);
    if (covered) {
      show(true);
    }
  }

  private JPanel cover(Theme theme, Wording words) {
    JPanel cover = new JPanel(new GridBagLayout());
    cover.setBackground(theme.palette().ground());
    JPanel sheet =
        new JPanel(new MigLayout("insets 20, gap 12, novisualpadding, wrap 1", "[center]"));
    sheet.setOpaque(false);
    JTextArea why =
        Lettering.paragraph(
            words.text("examination.covered"), theme.lesson(), theme.palette().ink());
    why.setColumns(COLUMNS);
    why.setName("examination.covered");
    sheet.add(why);
    JButton button = Forms.button(words, "examination.back", "examination.back-tip", back);
    sheet.add(button);
    cover.add(sheet);
    return cover;
  }

  /** Covers, or takes the cover away, as the examination has it. */
  void follow() {
    boolean taken = model.taken();
    if (taken == covered) {
      return;
    }
    covered = taken;
    show(taken);
    if (taken) {
      putAway();
    } else {
      // what was made anew meanwhile has taken the place of the old
      away.stream().filter(Window::isDisplayable).forEach(w -> w.setVisible(true));
      away.clear();
      back.run();
    }
  }

  /** Whether somebody is examined. */
  boolean covers() {
    return covered;
  }

  private void putAway() {
    for (Window window : frame.getOwnedWindows()) {
      boolean stays = "quiz".equals(window.getName()) || window instanceof HelpWindow;
      if (!stays && window.isVisible()) {
        window.setVisible(false);
        away.add(window);
      }
    }
  }

  private void show(boolean cover) {
    Dress d = dress;
    if (d != null) {
      frame.setContentPane(cover ? d.cover() : d.sheet());
      frame.setJMenuBar(cover ? d.coverBar() : d.bar());
      frame.revalidate();
      frame.repaint();
    }
  }

  /** Whether the program may end: nobody is being examined, or nobody minds. */
  boolean mayEnd() {
    return agreed(frame, "examination.sure", "examination.end");
  }

  /** Whether the window of the quiz may be put away: its clock goes on. */
  boolean mayHide(Component asking) {
    return agreed(asking, "examination.hide-sure", "examination.hide");
  }

  private boolean agreed(Component asking, String question, String yes) {
    Dress d = dress;
    return d == null
        || !covered
        || new FileQuestions(d.words())
            .agreed(asking, d.words().text(question), d.words().text("quiz.title"), yes);
  }
}
