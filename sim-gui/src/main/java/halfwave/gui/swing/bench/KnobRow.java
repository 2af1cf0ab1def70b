package halfwave.gui.swing.bench;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.Knob;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.QuietField;
import halfwave.gui.swing.widget.Says;
import halfwave.gui.swing.widget.Theme;
import halfwave.sequence.Deed;
import java.awt.Insets;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** One number of the bench: its name, its way with the healthy mark, its value as a field. */
final class KnobRow extends JPanel {

  private static final long serialVersionUID = 1L;

  private final transient Theme theme;
  private final transient Wording words;
  private final transient Workbench workbench;
  private final JLabel name;
  private final KnobSlider slider;
  private final JTextField field;
  private final JButton healthy;
  private @Nullable transient Knob knob;

  KnobRow(Theme theme, Wording words, Workbench workbench) {
    super(
        new MigLayout(
            "insets 0, gap 6 0, fillx, novisualpadding", "[grow,fill][" + theme.px(84) + "px!][]"));
    this.theme = theme;
    this.words = words;
    this.workbench = workbench;
    setOpaque(false);
    name = Lettering.label(" ", theme.body(), theme.palette().ink());
    slider = new KnobSlider(theme, this::turn);
    field = new QuietField();
    field.addActionListener(e -> type());
    field.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent e) {
            if (knob != null && !field.getText().equals(knob.value())) {
              type();
            }
            restore();
          }
        });
    healthy = new JButton("↺");
    healthy.setMargin(new Insets(1, 4, 1, 4));
    healthy.addActionListener(e -> heal());
    add(name, "span, wmin 0, wrap");
    add(slider, "hmin " + theme.px(24) + "px");
    add(field, "growx");
    add(healthy, "hmin " + theme.px(24) + "px");
  }

  private void turn(double place, long gesture) {
    if (knob != null) {
      workbench.want(new Intent.Act(List.of(knob.to(place)), gesture));
    }
  }

  private void heal() {
    if (knob != null) {
      once(knob.healed());
    }
  }

  private void once(Deed deed) {
    workbench.want(new Intent.Act(List.of(deed), 0));
  }

  private void type() {
    if (knob == null) {
      return;
    }
    Optional<Deed> deed = knob.typed(field.getText(), words);
    field.putClientProperty("JComponent.outline", deed.isPresent() ? null : "error");
    if (deed.isPresent()) {
      once(deed.get());
    } else {
      field.setToolTipText(words.text("knob.refused", knob.name(), knob.range()));
      Says.beside(field, theme, words.text("knob.refused", knob.name(), knob.range()));
      field.selectAll();
    }
  }

  private void restore() {
    field.putClientProperty("JComponent.outline", null);
    if (knob != null) {
      field.setText(knob.value());
    }
  }

  void show(Knob newKnob) {
    if (newKnob.equals(knob)) {
      return;
    }
    knob = newKnob;
    String tip =
        words.text("knob.tip", newKnob.name(), newKnob.value(), newKnob.range(), newKnob.healthy());
    name.setText(newKnob.name());
    name.setToolTipText(tip);
    slider.show(newKnob.place(), newKnob.healthyPlace());
    slider.setToolTipText(tip);
    slider.getAccessibleContext().setAccessibleName(words.text("knob.slider", newKnob.name()));
    slider.getAccessibleContext().setAccessibleDescription(tip);
    slider.setName("knob." + newKnob.parameter().id());
    if (!field.isFocusOwner()) {
      field.setText(newKnob.value());
      field.setToolTipText(tip);
    } else if (!field.getText().equals(newKnob.value())) {
      field.setText(newKnob.value());
      field.selectAll();
    }
    field.getAccessibleContext().setAccessibleName(words.text("knob.field", newKnob.name()));
    field.setName("value." + newKnob.parameter().id());
    healthy.setEnabled(!newKnob.asHealthy());
    healthy.setName("healthy." + newKnob.parameter().id());
    healthy.setToolTipText(words.text("knob.to-healthy", newKnob.healthy()));
    healthy.getAccessibleContext().setAccessibleName(healthy.getToolTipText());
  }
}
