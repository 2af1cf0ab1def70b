package halfwave.gui.swing.desk;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.desk.DeskModel;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import java.awt.BorderLayout;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** The instructor's desk: the quiz, the class, and what became of one call. */
public final class DeskPanel extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Wording words;
  private final transient DeskModel model;
  private final DeskQuizTab quiz;
  private final DeskClassTab marked;
  private final DeskMarksTab marks;
  private final JTextArea said;
  private final JButton cancel;

  /** A panel. */
  public DeskPanel(Theme theme, Wording words, DeskModel model, DeskFiles files) {
    super(new BorderLayout(0, theme.px(8)));
    this.words = words;
    this.model = model;
    var p = theme.palette();
    setBackground(p.ground());
    setBorder(BorderFactory.createEmptyBorder(12, 12, 12, 12));
    marks = new DeskMarksTab(theme, words, model, files);
    quiz = new DeskQuizTab(theme, words, model, files);
    marked = new DeskClassTab(theme, words, model, files, marks::learner);
    JTabbedPane tabs = new JTabbedPane();
    tabs.setName("desk.tabs");
    tabs.getAccessibleContext().setAccessibleName(words.text("desk.title"));
    tabs.addTab(words.text("desk.quiz"), quiz);
    tabs.addTab(words.text("desk.class"), marked);
    tabs.addTab(words.text("desk.marks"), marks);
    add(tabs, BorderLayout.CENTER);
    JPanel foot =
        new JPanel(
            new MigLayout(
                "insets 0 10 0 10, gap 8, fillx, hidemode 3, novisualpadding", "[grow][]"));
    foot.setOpaque(false);
    said = Lettering.paragraph(" ", theme.body(), p.ink());
    said.setName("desk.said");
    foot.add(said, "growx, wmin 0");
    cancel = Forms.button(words, "desk.cancel", "desk.cancel-tip", model::giveUp);
    foot.add(cancel);
    add(foot, BorderLayout.SOUTH);
  }

  /** Shows what the model has. */
  public void refresh() {
    boolean busy = model.busy();
    String text = busy ? model.progress(words) : model.said(words);
    said.setText(text.isEmpty() ? " " : text);
    cancel.setVisible(busy);
    quiz.refresh();
    marked.refresh();
    marks.refresh();
  }
}
