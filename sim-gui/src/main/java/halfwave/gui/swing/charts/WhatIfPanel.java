package halfwave.gui.swing.charts;

import halfwave.bench.Parameter;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.charts.WhatIf;
import halfwave.gui.presentation.charts.WhatIfView;
import halfwave.gui.swing.widget.Theme;
import java.awt.BorderLayout;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import org.jspecify.annotations.Nullable;

/** The reading over one number of the bench, with the choice of the number. */
final class WhatIfPanel extends AskingPanel<WhatIf.Question, WhatIf.Answer> {

  private static final long serialVersionUID = 1L;

  private final transient Wording words;
  private final WhatIfCanvas canvas;
  private final JComboBox<Parameter> parameter = new JComboBox<>(Parameter.values());
  private final JCheckBox full;
  private @Nullable transient WhatIfView view;

  WhatIfPanel(Theme theme, Wording words, Executor background, Consumer<Throwable> failed) {
    super(theme, words, words.text("whatif.title"), new WhatIf(), background, failed);
    this.words = words;
    canvas = new WhatIfCanvas(theme, words);
    canvas.setName("whatif.canvas");
    canvas.getAccessibleContext().setAccessibleName(words.text("whatif.title"));
    canvas.onCursor(this::told);
    full = new JCheckBox(words.text("whatif.full"));
    full.setOpaque(false);
    full.setName("whatif.full");
    full.addActionListener(e -> asksOtherwise());
    parameter.setSelectedItem(Parameter.ROD_FILM);
    parameter.setName("whatif.parameter");
    parameter.setMaximumRowCount(18);
    parameter.setToolTipText(words.text("whatif.parameter"));
    parameter.getAccessibleContext().setAccessibleName(words.text("whatif.parameter"));
    parameter.setPrototypeDisplayValue(Parameter.ROD_FILM);
    DefaultListCellRenderer names = new DefaultListCellRenderer();
    parameter.setRenderer(
        (list, value, index, selected, focused) -> {
          names.getListCellRendererComponent(list, value, index, selected, focused);
          names.setText(words.heading(value));
          return names;
        });
    parameter.addActionListener(e -> asksOtherwise());
    waitingControls();
    control(full);
    control(parameter);
    add(canvas, BorderLayout.CENTER);
  }

  @Override
  WhatIf.Question question(State present) {
    return WhatIf.Question.of(
        present, parameter.getItemAt(parameter.getSelectedIndex()), full.isSelected());
  }

  @Override
  void render() {
    WhatIf.Answer answer = inquiry.answer();
    State present = state();
    if (answer != null && present != null) {
      view = WhatIfView.of(answer, present.moment().settings().sensing(), words);
    }
    canvas.show(view);
    told();
  }

  private void told() {
    WhatIfView v = view;
    String said =
        v == null
            ? words.text("chart.waiting")
            : Double.isNaN(canvas.cursor()) ? v.summary() : v.probe(canvas.cursor(), words).words();
    say(said);
    canvas
        .getAccessibleContext()
        .setAccessibleDescription(v == null || !Double.isNaN(canvas.cursor()) ? said : v.spoken());
  }

  @Override
  ChartPicture picture() {
    return canvas::picture;
  }

  @Override
  String data() {
    return view == null ? "" : view.table(words);
  }
}
