package halfwave.gui.swing.evidence;

import halfwave.forecast.Logged;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.evidence.ForecastForm;
import halfwave.gui.presentation.evidence.ForecastModel;
import halfwave.gui.presentation.evidence.LogEntry;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** Dated readings and work of a furnace. */
final class ForecastLog extends JPanel {

  private static final long serialVersionUID = 1L;

  /** What a line is about, under its name; a reading has no repair. */
  private record What(@Nullable Repair repair, String name) {
    @Override
    public String toString() {
      return name;
    }
  }

  private final transient Theme theme;
  private final transient Wording words;
  private final transient ForecastModel model;
  private final transient Supplier<ForecastForm> form;
  private final JTextField day = new JTextField(8);
  private final JComboBox<What> what = new JComboBox<>();
  private final JTextField value = new JTextField(5);
  private final JLabel wrong;
  private final JPanel lines;

  ForecastLog(Theme theme, Wording words, ForecastModel model, Supplier<ForecastForm> form) {
    super(
        new MigLayout(
            "insets 0, gap 6 3, fillx, hidemode 3, novisualpadding", "[][grow,fill][][]"));
    this.theme = theme;
    this.words = words;
    this.model = model;
    this.form = form;
    setOpaque(false);
    named(day, "forecast.day");
    named(value, "forecast.value");
    what.setName("forecast.what");
    what.setToolTipText(words.text("forecast.what"));
    what.getAccessibleContext().setAccessibleName(words.text("forecast.what"));
    what.addItem(new What(null, words.text("forecast.read")));
    Logged.ROD_REPAIRS.forEach(r -> what.addItem(new What(r, words.heading(r))));
    what.addActionListener(e -> value.setEnabled(chosen() == null));
    wrong = Lettering.label(" ", theme.note(), theme.palette().danger());
    wrong.setName("forecast.wrong.log");
    wrong.setVisible(false);
    lines = new JPanel(new MigLayout("insets 0, gap 6 2, fillx, novisualpadding", "[grow,fill][]"));
    lines.setOpaque(false);
    add(what, "span, growx, wmin 0, wrap");
    add(day, "wmin pref");
    add(value, "wmin 0");
    add(Lettering.label("µA", theme.body(), theme.palette().ink()));
    add(Forms.button(words, "forecast.add", this::take), "wrap");
    add(wrong, "span, wmin 0, wrap");
    add(lines, "span, growx, wmin 0");
  }

  private void named(JTextField field, String key) {
    field.setName(key);
    field.setToolTipText(words.text(key));
    field.getAccessibleContext().setAccessibleName(words.text(key));
    field.addActionListener(e -> take());
  }

  private @Nullable Repair chosen() {
    return what.getItemAt(what.getSelectedIndex()).repair();
  }

  /** Says what is wrong with the log, or nothing. */
  void tell(String refusal) {
    wrong.setText(refusal.isEmpty() ? " " : refusal);
    wrong.setVisible(!refusal.isEmpty());
    revalidate();
  }

  private void take() {
    LogEntry.Typed typed = LogEntry.typed(day.getText(), chosen(), value.getText(), words);
    tell(typed.refusal());
    boolean bad = typed.entry() == null;
    day.putClientProperty("JComponent.outline", bad && typed.badDay() ? "error" : null);
    value.putClientProperty("JComponent.outline", bad && !typed.badDay() ? "error" : null);
    if (typed.entry() != null) {
      List<LogEntry> more = new ArrayList<>(form.get().log());
      more.add(typed.entry());
      more.sort(Comparator.comparing(LogEntry::day));
      model.log(form.get(), more);
      value.setText("");
      day.requestFocusInWindow();
      day.selectAll();
    }
  }

  private void takeAway(int index) {
    List<LogEntry> fewer = new ArrayList<>(form.get().log());
    fewer.remove(index);
    model.log(form.get(), fewer);
  }

  /** Shows what the model has. */
  void refresh() {
    lines.removeAll();
    List<LogEntry> log = form.get().log();
    for (int k = 0; k < log.size(); k++) {
      int index = k;
      String line = log.get(k).said(words);
      lines.add(Lettering.paragraph(line, theme.body(), theme.palette().ink()), "growx, wmin 0");
      JButton remove =
          Forms.remove(theme, words.text("forecast.remove", line), () -> takeAway(index));
      remove.setName("forecast.remove." + k);
      lines.add(remove, "top, wrap");
    }
    lines.revalidate();
    lines.repaint();
  }
}
