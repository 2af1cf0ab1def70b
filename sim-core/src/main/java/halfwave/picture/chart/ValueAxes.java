package halfwave.picture.chart;

import halfwave.display.DisplayUnit;
import halfwave.display.QuantityText;
import halfwave.display.Sentences;
import halfwave.explain.Axis;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.picture.PaperLook;
import java.math.BigDecimal;
import java.math.MathContext;
import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.util.Locale;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;
import org.jspecify.annotations.Nullable;

/** Axes of charts: titles with units, numbers as the language has them. */
final class ValueAxes {

  private ValueAxes() {}

  /**
   * The unit that an axis of a sweep is drawn in: the one that suits its larger end or its middle.
   */
  static DisplayUnit unit(Axis axis, Sentences sentences) {
    double size =
        axis.isLogarithmic()
            ? Math.sqrt(axis.from() * axis.to())
            : Math.max(Math.abs(axis.from()), Math.abs(axis.to()));
    return sentences.quantities().unit(size, axis.parameter().dimension());
  }

  /** The axis of a parameter, its ends a share of a step beyond the outermost values. */
  static ValueAxis of(Axis axis, Sentences sentences, double beyondSteps) {
    DisplayUnit unit = unit(axis, sentences);
    double low = unit.fromSi(Math.min(axis.from(), axis.to()));
    double high = unit.fromSi(Math.max(axis.from(), axis.to()));
    String title = title(sentences.name(axis.parameter()), unit, sentences);
    NumberFormat numbers = new Numbers(sentences.quantities());
    double steps = axis.count() - 1;
    ValueAxis made;
    if (axis.isLogarithmic()) {
      made = new DecadeAxis(title, numbers);
      double beyond = Math.pow(high / low, beyondSteps / steps);
      made.setRange(low / beyond, high * beyond);
    } else {
      made = linear(title, sentences);
      double beyond = (high - low) * beyondSteps / steps;
      made.setRange(low - beyond, high + beyond);
    }
    dress(made);
    return made;
  }

  /** An axis of equal distances that shows numbers of that unit. */
  static NumberAxis linear(String title, Sentences sentences) {
    NumberAxis axis = new NumberAxis(title);
    axis.setStandardTickUnits(NumberAxis.createStandardTickUnits(Locale.ROOT));
    axis.setNumberFormatOverride(new Numbers(sentences.quantities()));
    axis.setAutoRangeIncludesZero(true);
    dress(axis);
    return axis;
  }

  /** A name with its unit; a bare number has none. */
  static String title(String name, DisplayUnit unit, Sentences sentences) {
    String capital = capital(name);
    return unit.symbol().isEmpty()
        ? capital
        : sentences.text(
            Message.of(
                MessageKey.CHART_AXIS, Argument.text(capital), Argument.text(unit.symbol())));
  }

  /** A value as the axis would number it, with its unit. */
  static String value(Axis axis, double si, Sentences sentences) {
    DisplayUnit unit = unit(axis, sentences);
    String number = new Numbers(sentences.quantities()).format(unit.fromSi(si));
    return unit.symbol().isEmpty() ? number : number + '\u202f' + unit.symbol();
  }

  /** Fewer numbers beside an upright axis, so that each can be read from afar. */
  static void loosen(ValueAxis upright) {
    upright.setTickLabelInsets(new RectangleInsets(9, 4, 9, 4));
  }

  static String capital(String name) {
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }

  static String uncapital(String name) {
    return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
  }

  /** Ground, frame and grid of a plot. */
  static void dress(XYPlot plot) {
    plot.setBackgroundPaint(PaperLook.SHEET);
    plot.setOutlinePaint(PaperLook.HAIRLINE);
    plot.setDomainGridlinePaint(PaperLook.HAIRLINE);
    plot.setRangeGridlinePaint(PaperLook.HAIRLINE);
    plot.setDomainGridlineStroke(PaperLook.solid(0.7f));
    plot.setRangeGridlineStroke(PaperLook.solid(0.7f));
    plot.setAxisOffset(new RectangleInsets(0, 0, 0, 0));
  }

  static void dress(ValueAxis axis) {
    axis.setLabelFont(PaperLook.BODY);
    axis.setLabelPaint(PaperLook.INK);
    axis.setTickLabelFont(PaperLook.NOTE);
    axis.setTickLabelPaint(PaperLook.INK);
    axis.setAxisLinePaint(PaperLook.SOFT_INK);
    axis.setTickMarkPaint(PaperLook.SOFT_INK);
  }

  /** Numbers of ticks: no digits but those that tell neighbours apart. */
  private static final class Numbers extends NumberFormat {

    private static final long serialVersionUID = 1L;
    private static final MathContext TICK = new MathContext(6);

    private final transient QuantityText text;

    Numbers(QuantityText text) {
      this.text = text;
    }

    @Override
    public StringBuffer format(double number, StringBuffer to, FieldPosition where) {
      int decimals = new BigDecimal(number).round(TICK).stripTrailingZeros().scale();
      boolean nothing = Math.abs(number) < 1e-9;
      return to.append(text.fixed(nothing ? 0 : number, nothing ? 0 : Math.max(0, decimals)));
    }

    @Override
    public StringBuffer format(long number, StringBuffer to, FieldPosition where) {
      return format((double) number, to, where);
    }

    @Override
    public @Nullable Number parse(String source, ParsePosition where) {
      return null;
    }
  }
}
