package halfwave.gui.swing.quiz;

import halfwave.fault.FaultGroup;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.quiz.Visiting;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import halfwave.io.JsonValue;
import halfwave.quiz.Move;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import javax.swing.JButton;
import javax.swing.JCheckBox;

/** What is possible still, to be ticked and stated. */
final class SuspectsForm {

  private final Visiting visiting;
  private final Map<FaultGroup, JCheckBox> boxes = new EnumMap<>(FaultGroup.class);
  private final JButton state;
  private final Column column;

  SuspectsForm(Theme theme, Wording words, Visiting visiting) {
    this.visiting = visiting;
    column = new Column(theme);
    var p = theme.palette();
    column.add(
        Lettering.paragraph(words.text("visit.suspects-hint"), theme.note(), p.softInk()),
        "growx, wmin 0, wrap");
    for (FaultGroup group : FaultGroup.values()) {
      JCheckBox box = new JCheckBox(words.heading(group));
      box.setName("visit.suspect." + JsonValue.spelling(group));
      box.setOpaque(false);
      box.addActionListener(e -> visiting.keep(visiting.draft().withSuspects(ticked())));
      boxes.put(group, box);
      column.add(box, "growx 0, wmin 0, wrap, hmin " + theme.px(24) + "px");
    }
    state =
        Forms.button(
            words,
            "visit.state",
            "visit.state-tip",
            () -> visiting.want(new Move.Suspects(ticked())));
    column.add(Forms.row(state), "gaptop 6, wrap");
  }

  Column column() {
    return column;
  }

  private Set<FaultGroup> ticked() {
    Set<FaultGroup> ticked = EnumSet.noneOf(FaultGroup.class);
    boxes.forEach(
        (group, box) -> {
          if (box.isSelected()) {
            ticked.add(group);
          }
        });
    return ticked;
  }

  void refresh() {
    boolean free = !visiting.busy() && !visiting.closed();
    Set<FaultGroup> ticked = visiting.draft().suspects();
    boxes.forEach((group, box) -> box.setSelected(ticked.contains(group)));
    state.setEnabled(free);
  }
}
