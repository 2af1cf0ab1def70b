package halfwave.gui.swing.bench;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.WorkCard;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.swing.widget.CautionPlate;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** One thing that can be done, with its minutes, what it needs, and its cautions. */
final class WorkRow extends JPanel {

  private static final long serialVersionUID = 1L;

  private final CautionPlate cautions;

  WorkRow(Theme theme, Wording words, Workbench workbench, WorkCard card) {
    super(new MigLayout("insets 4 0 6 0, gap 6 1, fillx, hidemode 3", "[grow][][]"));
    setOpaque(false);
    var p = theme.palette();
    JTextArea name = Lettering.paragraph(card.name(), theme.body(), p.ink());
    add(name, "growx, wmin 0");
    add(Lettering.label(card.minutes(), theme.body(), p.softInk()));
    JButton act = new JButton(words.text(verb(card)));
    act.setName("work." + card.work().id());
    act.getAccessibleContext().setAccessibleName(act.getText() + ": " + card.name());
    act.addActionListener(e -> workbench.want(new Intent.Labor(card.work())));
    add(act, "wrap");
    String details = details(card);
    if (!details.isEmpty()) {
      add(Lettering.paragraph(details, theme.note(), p.softInk()), "span 2, growx, wmin 0");
    }
    cautions = new CautionPlate(theme, words.text("work.first"));
    if (!card.cautions().isEmpty()) {
      JButton sign = new JButton("⚠");
      sign.setForeground(p.danger());
      sign.setToolTipText(words.text("work.first"));
      sign.getAccessibleContext().setAccessibleName(words.text("work.first") + ": " + card.name());
      sign.setName("caution." + card.work().id());
      sign.addActionListener(
          e -> {
            cautions.show(cautions.isVisible() ? List.of() : card.cautions());
            revalidate();
          });
      add(sign, "alignx right, wrap");
    }
    add(cautions, "span, growx, wmin 0");
  }

  private static String details(WorkCard card) {
    return String.join(
        "\n", Stream.of(card.needs(), card.hazards()).filter(s -> !s.isEmpty()).toList());
  }

  private static String verb(WorkCard card) {
    return switch (card.sort()) {
      case LOOK -> card.asks() ? "work.ask" : "work.look-at";
      case REPAIR -> "work.repair-it";
      case MISHAP -> "work.let-happen";
    };
  }
}
