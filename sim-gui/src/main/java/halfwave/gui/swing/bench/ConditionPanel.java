package halfwave.gui.swing.bench;

import halfwave.bench.Condition;
import halfwave.bench.Parameter;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.ConditionView;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.Knob;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import halfwave.sequence.Deed;
import java.awt.BorderLayout;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** Every number of the bench as a control. */
public final class ConditionPanel extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient Workbench workbench;
  private final JTextArea summary;
  private final Column column;
  private @Nullable transient State shown;
  private final Map<Parameter, KnobRow> rows = new EnumMap<>(Parameter.class);

  /** A panel. */
  public ConditionPanel(Theme theme, Wording words, Workbench workbench) {
    super(new BorderLayout());
    this.theme = theme;
    this.words = words;
    this.workbench = workbench;
    setOpaque(false);
    JPanel head = new JPanel(new MigLayout("insets 8 4 8 4, fillx", "[grow][]"));
    head.setOpaque(false);
    summary = Lettering.paragraph(" ", theme.body(), theme.palette().ink());
    JButton heal = new JButton(words.text("condition.all-healthy"));
    heal.setName("condition.all-healthy");
    heal.addActionListener(
        e -> workbench.want(new Intent.Act(List.of(new Deed.Become(Condition.HEALTHY)), 0)));
    head.add(summary, "growx, wmin 0");
    head.add(heal, "top");
    add(head, BorderLayout.NORTH);
    column = new Column(theme);
    add(column.scrolled(), BorderLayout.CENTER);
  }

  /** Shows the condition of a state. */
  public void show(State state) {
    if (shown != null
        && shown.moment().bench().equals(state.moment().bench())
        && shown.paper().equals(state.paper())) {
      return;
    }
    shown = state;
    ConditionView view = ConditionView.of(state, words);
    if (!summary.getText().equals(view.summary())) {
      summary.setText(view.summary());
    }
    if (rows.isEmpty()) {
      for (ConditionView.Group group : view.groups()) {
        column.add(
            Lettering.label(group.name(), theme.heading(), theme.palette().ink()),
            "gaptop 8, wrap");
        for (Knob knob : group.knobs()) {
          KnobRow row = new KnobRow(theme, words, workbench);
          rows.put(knob.parameter(), row);
          column.add(row, "growx, wmin 0, wrap");
        }
      }
    }
    rows.forEach((parameter, row) -> row.show(view.knob(parameter)));
  }
}
