package halfwave.gui.swing;

import halfwave.gui.presentation.DeskNumber;
import halfwave.gui.presentation.Wording;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.function.DoubleConsumer;

/** A field for a number: what is not allowed is marked, and goes when the field is left. */
final class NumberField extends QuietField {

  private static final long serialVersionUID = 1L;
  private static final int COLUMNS = 6;

  private final transient Theme theme;
  private final transient DeskNumber number;
  private final transient DoubleConsumer kept;
  private double last;
  private boolean showing;

  NumberField(Theme theme, Wording words, String key, DeskNumber number, DoubleConsumer kept) {
    this.theme = theme;
    this.number = number;
    this.kept = kept;
    setName(key);
    setColumns(COLUMNS);
    setToolTipText(number.range(words));
    getAccessibleContext().setAccessibleName(words.text(key));
    getAccessibleContext().setAccessibleDescription(number.range(words));
    Typing.on(this, this::typed);
    addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent e) {
            put(last);
          }
        });
  }

  /** What stands there, or stood there when it was allowed. */
  double number() {
    return last;
  }

  /** Shows a number, unless it is what was typed. */
  void put(double value) {
    last = value;
    if (number.read(getText()).orElse(Double.NaN) != value) {
      showing = true;
      setText(number.text(value));
      showing = false;
    }
    setForeground(theme.palette().ink());
  }

  private void typed() {
    if (showing) {
      return;
    }
    var read = number.read(getText());
    setForeground(read.isPresent() ? theme.palette().ink() : theme.palette().danger());
    if (read.isPresent()) {
      last = read.getAsDouble();
      kept.accept(last);
    }
  }
}
