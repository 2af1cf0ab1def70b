package halfwave.gui.swing.evidence;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.presentation.evidence.ForecastForm;
import halfwave.gui.presentation.evidence.ForecastForm.Field;
import halfwave.gui.presentation.evidence.ForecastModel;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** What a forecast is asked with. */
final class ForecastFields extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient ForecastModel model;
  private final transient Workbench workbench;
  private final Map<Field, JTextField> fields = new EnumMap<>(Field.class);
  private final Map<Field, JLabel> refusals = new EnumMap<>(Field.class);
  private final JCheckBox touched;
  private final JCheckBox scratches;

  ForecastFields(
      Theme theme, Wording words, ForecastModel model, Workbench workbench, Runnable entered) {
    super(
        new MigLayout("insets 0, gap 6 3, fillx, hidemode 3, novisualpadding", "[grow,fill][][]"));
    this.theme = theme;
    this.words = words;
    this.model = model;
    this.workbench = workbench;
    setOpaque(false);
    touched = box("forecast.touched", "forecast.touched-tip");
    scratches = box("forecast.scratches", "forecast.scratches-tip");
    field(Field.HOURS, "forecast.hours", "forecast.hours-tip", "h", entered);
    field(Field.SILICON, "forecast.silicon", "forecast.silicon-tip", "µg/m³", entered);
    field(Field.LIMIT, "forecast.limit", "forecast.limit-tip", "µA", entered);
    field(Field.YEARS, "forecast.years", "forecast.years-tip", "", entered);
    String high = ", hmin " + theme.px(24) + "px";
    add(touched, "span, wrap" + high);
    add(scratches, "span, wrap" + high);
  }

  private JCheckBox box(String key, String tip) {
    JCheckBox box = new JCheckBox(words.text(key));
    box.setName(key);
    box.setToolTipText(words.text(tip));
    box.setOpaque(false);
    return box;
  }

  private void field(Field field, String key, String tip, String unit, Runnable entered) {
    JTextField made = new JTextField(7);
    made.setName(key);
    made.setToolTipText(words.text(tip, field.range(words)));
    made.getAccessibleContext().setAccessibleName(words.text(key));
    made.addActionListener(e -> entered.run());
    JLabel label = Lettering.label(words.text(key), theme.body(), theme.palette().ink());
    label.setLabelFor(made);
    JLabel wrong = Lettering.label(" ", theme.note(), theme.palette().danger());
    wrong.setName("forecast.wrong." + field.name().toLowerCase(Locale.ROOT));
    wrong.setVisible(false);
    fields.put(field, made);
    refusals.put(field, wrong);
    add(label, "wmin 0");
    add(made);
    add(Lettering.label(unit, theme.body(), theme.palette().ink()), "wrap");
    add(wrong, "span, wmin 0, wrap");
  }

  /** Shows what the model keeps, or what is usual on the bench that is open. */
  void fill() {
    ForecastForm kept = model.form();
    ForecastForm form = kept == null ? ForecastForm.usual(workbench.shown(), words) : kept;
    fields.forEach((field, text) -> text.setText(form.texts().getOrDefault(field, "")));
    touched.setSelected(form.touched());
    scratches.setSelected(form.scratches());
  }

  /** What stands in it. */
  ForecastForm form() {
    Map<Field, String> texts = new EnumMap<>(Field.class);
    fields.forEach((field, text) -> texts.put(field, text.getText()));
    ForecastForm kept = model.form();
    return new ForecastForm(
        texts,
        touched.isSelected(),
        scratches.isSelected(),
        kept == null ? java.util.List.of() : kept.log());
  }

  /** Whether all fields are right; beside each that is not stands what may be typed. */
  boolean right() {
    Map<Field, String> wrong = form().refusals(words);
    fields.forEach(
        (field, text) ->
            text.putClientProperty(
                "JComponent.outline", wrong.containsKey(field) ? "error" : null));
    refusals.forEach(
        (field, label) -> {
          String range = wrong.get(field);
          label.setText(range == null ? " " : words.text("forecast.refused", range));
          label.setVisible(range != null);
        });
    revalidate();
    wrong.keySet().stream()
        .findFirst()
        .map(fields::get)
        .ifPresent(JTextField::requestFocusInWindow);
    return wrong.isEmpty();
  }
}
