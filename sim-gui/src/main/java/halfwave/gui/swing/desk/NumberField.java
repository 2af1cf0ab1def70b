package halfwave.gui.swing.desk;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.desk.DeskNumber;
import halfwave.gui.swing.widget.QuietField;
import halfwave.gui.swing.widget.Says;
import halfwave.gui.swing.widget.Theme;
import halfwave.gui.swing.widget.Typing;
import java.util.function.DoubleConsumer;

/** A field for a number: what is not allowed stays, and is marked, till it is put right. */
final class NumberField extends QuietField {

  private static final long serialVersionUID = 1L;
  private static final int COLUMNS = 6;
  private static final String OUTLINE = "JComponent.outline";

  private final transient Theme theme;
  private final transient DeskNumber number;
  private final transient DoubleConsumer kept;
  private final String range;
  private final String allowed;
  private double last = Double.NaN;
  private boolean showing;
  private boolean typing;

  NumberField(Theme theme, Wording words, String key, DeskNumber number, DoubleConsumer kept) {
    this(theme, words, key, words.text(key), number, kept);
  }

  /** The same with a label that is no word of the window. */
  NumberField(
      Theme theme,
      Wording words,
      String name,
      String label,
      DeskNumber number,
      DoubleConsumer kept) {
    this.theme = theme;
    this.number = number;
    this.kept = kept;
    range = number.range(words);
    allowed = number.allowed(label, words);
    setName(name);
    setColumns(COLUMNS);
    setToolTipText(range);
    getAccessibleContext().setAccessibleName(label);
    getAccessibleContext().setAccessibleDescription(range);
    Typing.on(this, this::typed);
    addActionListener(e -> right());
  }

  /** What stands there, or stood there when it was allowed. */
  double number() {
    return last;
  }

  /** Shows a number, unless it is what was typed or what is wrong there was typed in its place. */
  void put(double value) {
    if (!typing && (value != last || !wrong())) {
      anew(value);
    }
  }

  /** Shows a number, whatever was typed. */
  void anew(double value) {
    last = value;
    if (number.read(getText()).orElse(Double.NaN) != value) {
      showing = true;
      setText(number.text(value));
      showing = false;
    }
    mark(true);
  }

  /** Forgets what is wrong there. */
  void forget() {
    anew(last);
  }

  /** Whether what stands there is not allowed. */
  boolean wrong() {
    return number.read(getText()).isEmpty();
  }

  /** Whether what stands there is allowed; where it is not, that is said beside it. */
  boolean right() {
    if (wrong()) {
      requestFocusInWindow();
      Says.beside(this, theme, allowed);
    }
    return !wrong();
  }

  private void typed() {
    if (showing) {
      return;
    }
    var read = number.read(getText());
    boolean wasRight = getClientProperty(OUTLINE) == null;
    mark(read.isPresent());
    if (read.isPresent()) {
      last = read.getAsDouble();
      // what is kept of it comes back at once: whoever types is not disturbed
      typing = true;
      kept.accept(last);
      typing = false;
    } else if (wasRight && !getText().isEmpty()) {
      Says.beside(this, theme, allowed);
    }
  }

  private void mark(boolean right) {
    putClientProperty(OUTLINE, right ? null : "error");
    setForeground(right ? theme.palette().ink() : theme.palette().danger());
    setToolTipText(right ? range : allowed);
    getAccessibleContext().setAccessibleDescription(right ? range : allowed);
  }
}
