package halfwave.gui.presentation.charts;

import halfwave.io.CsvLine;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.stream.Collectors;

/** Lines of numbers with tabs between, as spreadsheets take them from the clipboard. */
public final class DataTable {

  /** What is beyond is noise of binary fractions. */
  private static final MathContext DIGITS = new MathContext(7);

  private final StringBuilder text = new StringBuilder();

  DataTable(String... titles) {
    text.append(String.join("\t", titles)).append('\n');
  }

  /** One line; nothing stands where a number is none. */
  void row(double... numbers) {
    for (int k = 0; k < numbers.length; k++) {
      text.append(k == 0 ? "" : "\t").append(number(numbers[k]));
    }
    text.append('\n');
  }

  /** One line of a name and numbers. */
  void row(String name, double... numbers) {
    text.append(name).append('\t');
    row(numbers);
  }

  static String number(double value) {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      return "";
    }
    BigDecimal rounded = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
    return rounded.scale() > 12 ? "0" : rounded.toPlainString();
  }

  /**
   * The same lines as a file: commas between, quotes around what has one in it (RFC 4180).
   *
   * @param tabbed lines with tabs between
   */
  public static String csv(String tabbed) {
    return tabbed
        .lines()
        .map(
            line ->
                Arrays.stream(line.split("\t", -1))
                    .map(CsvLine::cell)
                    .collect(Collectors.joining(",")))
        .collect(Collectors.joining("\n", "", "\n"));
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
