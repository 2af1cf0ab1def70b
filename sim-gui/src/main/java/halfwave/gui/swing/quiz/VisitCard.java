package halfwave.gui.swing.quiz;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.evidence.EvidenceView;
import halfwave.gui.presentation.quiz.VisitView;
import halfwave.gui.presentation.quiz.Visiting;
import halfwave.gui.swing.evidence.ProbabilityBar;
import halfwave.gui.swing.widget.CautionPlate;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Switch;
import halfwave.gui.swing.widget.Theme;
import halfwave.quiz.Move;
import halfwave.quiz.Visit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The switches of the furnace, what the customer says, and what it has cost so far. */
final class VisitCard extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient Visiting visiting;
  private final JTextArea title;
  private final JTextArea complaint;
  private final CautionPlate danger;
  private final JTextArea stopped;
  private final JPanel spent;
  private final transient List<Turned> switches = new ArrayList<>();
  private final List<JButton> hints = new ArrayList<>();
  private final JPanel asking;
  private transient @Nullable VisitView shown;

  /** A switch, and how it stands. */
  private record Turned(JCheckBox box, Predicate<Visit> on) {}

  VisitCard(Theme theme, Wording words, Visiting visiting) {
    super(new MigLayout("insets 0, gap 6 4, fillx, hidemode 3, novisualpadding", "[grow,fill]"));
    this.theme = theme;
    this.words = words;
    this.visiting = visiting;
    setOpaque(false);
    var p = theme.palette();
    title = Lettering.paragraph("", theme.heading(), p.ink());
    complaint = Lettering.paragraph("", theme.lesson(), p.ink());
    complaint.setName("visit.complaint");
    stopped = Lettering.paragraph("", theme.heading(), p.danger());
    stopped.setName("visit.stopped");
    danger = new CautionPlate(theme, words.text("visit.danger"));
    danger.setName("visit.cautions");
    spent = bare("[grow,fill]");
    // above all that has another length at each call: a hand finds them where they were
    add(Lettering.label(words.text("visit.switches"), theme.heading(), p.ink()), "wrap");
    turned("visit.power", Visit::power, Move.Power::new);
    turned("visit.gas", Visit::gas, Move.Gas::new);
    turned("visit.signal", Visit::signal, Move.Signal::new);
    add(title, "growx, wmin 0, gaptop 6, wrap");
    add(new Card(theme, complaint), "growx, wmin 0, wrap");
    add(stopped, "growx, wmin 0, wrap");
    add(danger, "growx, wmin 0, wrap");
    add(spent, "growx, wmin 0, gaptop 4, wrap");
    asking = bare("[grow,fill]");
    asking.add(Lettering.label(words.text("visit.hints"), theme.heading(), p.ink()), "wrap");
    for (int grade = 1; grade <= Move.Hint.GRADES; grade++) {
      int asked = grade;
      JButton button =
          Forms.button(words, "visit.hint-" + grade, () -> visiting.want(new Move.Hint(asked)));
      button.setToolTipText(words.text("visit.hint-tip"));
      hints.add(button);
      asking.add(button, "growx 0, wrap");
    }
    add(asking, "growx, wmin 0, gaptop 6, wrap");
  }

  private static JPanel bare(String columns) {
    JPanel panel =
        new JPanel(new MigLayout("insets 0, gap 6 4, fillx, hidemode 3, novisualpadding", columns));
    panel.setOpaque(false);
    return panel;
  }

  private void turned(String key, Predicate<Visit> on, Function<Boolean, Move> move) {
    Switch box = new Switch(theme, words.text(key));
    box.setName(key);
    box.setToolTipText(words.text(key + "-tip"));
    box.addActionListener(
        e -> {
          visiting.want(move.apply(box.isSelected()));
          // the furnace says how it stands, not the hand
          refresh();
        });
    switches.add(new Turned(box, on));
    add(box, "growx 0, hmin " + theme.px(24) + "px, wrap");
  }

  void refresh() {
    Visit visit = visiting.visit();
    setVisible(visit != null);
    if (visit == null) {
      return;
    }
    boolean free = !visiting.busy() && !visiting.closed();
    switches.forEach(
        s -> {
          s.box().setSelected(s.on().test(visit));
          s.box().setEnabled(free);
        });
    hints.forEach(b -> b.setEnabled(free));
    asking.setVisible(visiting.hints());
    VisitView view = VisitView.of(visiting, visit, words);
    if (!view.equals(shown)) {
      shown = view;
      show(view);
    }
  }

  private void show(VisitView view) {
    title.setText(view.title());
    complaint.setText(view.complaint());
    stopped.setText(view.stopped());
    stopped.setVisible(!view.stopped().isEmpty());
    danger.show(view.cautions());
    spent.removeAll();
    bar("visit.time", view.minutesShare(), view.minutes());
    bar("visit.parts", view.partsShare(), view.parts());
    revalidate();
    repaint();
  }

  private void bar(String key, double share, String text) {
    spent.add(
        new ProbabilityBar(theme, new EvidenceView.Bar(words.text(key), share, share, text)),
        "wmin 0, wrap");
  }
}
