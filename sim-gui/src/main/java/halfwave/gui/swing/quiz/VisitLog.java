package halfwave.gui.swing.quiz;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.quiz.VisitView;
import halfwave.gui.presentation.quiz.Visiting;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.TextCell;
import halfwave.gui.swing.widget.Theme;
import halfwave.quiz.Move;
import halfwave.quiz.Visit;
import java.awt.BorderLayout;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** What was done and found so far, and a field to write something down. */
final class VisitLog extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient Visiting visiting;
  private final Column lines;
  private final JScrollPane scroll;
  private final TextCell note;
  private final JButton write;
  private transient List<VisitView.Line> shown = List.of();
  private boolean filled;

  VisitLog(Theme theme, Wording words, Visiting visiting) {
    super(new BorderLayout(0, theme.px(6)));
    this.theme = theme;
    this.words = words;
    this.visiting = visiting;
    setOpaque(false);
    lines = new Column(theme);
    lines.setName("visit.log");
    scroll = lines.scrolled();
    add(scroll, BorderLayout.CENTER);
    note =
        new TextCell(
            theme,
            "visit.note",
            words.text("visit.note"),
            "",
            2,
            text -> visiting.keep(visiting.draft().withNote(text)));
    write = Forms.button(words, "visit.write", this::write);
    add(foot(), BorderLayout.SOUTH);
  }

  private JComponent foot() {
    JPanel foot =
        new JPanel(new MigLayout("insets 0 4 0 4, gap 4, fillx, novisualpadding", "[grow,fill]"));
    foot.setOpaque(false);
    foot.add(
        Lettering.label(words.text("visit.note"), theme.body(), theme.palette().ink()), "wrap");
    foot.add(note, "growx, wmin 0, wrap");
    foot.add(write, "growx 0");
    return foot;
  }

  private void write() {
    String text = note.getText().strip().replaceAll("\\s+", " ");
    if (!text.isEmpty()) {
      visiting.keep(visiting.draft().withNote(""));
      visiting.want(new Move.Note(text));
    }
  }

  void refresh() {
    Visit visit = visiting.visit();
    if (visit == null) {
      return;
    }
    note.show(visiting.draft().note());
    write.setEnabled(!visiting.busy() && !visiting.closed());
    List<VisitView.Line> now = VisitView.of(visiting, visit, words).log();
    if (!now.equals(shown) || !filled) {
      shown = now;
      filled = true;
      fill();
    }
  }

  private void fill() {
    var p = theme.palette();
    lines.removeAll();
    if (shown.isEmpty()) {
      lines.add(
          Lettering.paragraph(words.text("visit.log-empty"), theme.body(), p.softInk()),
          "growx, wmin 0, wrap");
    }
    for (VisitView.Line line : shown) {
      lines.add(Lettering.label(line.minute(), theme.note(), p.softInk()), "gaptop 3, wrap");
      lines.add(Lettering.paragraph(line.text(), theme.body(), p.ink()), "growx, wmin 0, wrap");
      for (String more : line.more()) {
        lines.add(
            Lettering.indented(more, theme.body(), p.softInk(), theme.px(12)),
            "growx, wmin 0, wrap");
      }
    }
    lines.revalidate();
    lines.repaint();
    // the height is known when it is laid out
    SwingUtilities.invokeLater(
        () ->
            SwingUtilities.invokeLater(
                () -> {
                  JScrollBar bar = scroll.getVerticalScrollBar();
                  bar.setValue(bar.getMaximum());
                }));
  }
}
