package halfwave.exchange;

import halfwave.io.CsvLine;
import java.util.List;

/**
 * A table as comma-separated values (RFC 4180: header line, CRLF line ends). What somebody typed
 * never becomes a formula in a spreadsheet.
 */
final class CsvTable {

  /** What a spreadsheet takes for the beginning of a formula, and white space before one. */
  private static final String FORMULA = "=+-@\t\r\n";

  private final StringBuilder text = new StringBuilder();

  CsvTable(List<String> columns) {
    row(columns.stream().map(CsvTable::text).toList());
  }

  /** A row of cells from {@link #text} and {@link #number}. */
  void row(List<String> cells) {
    text.append(CsvLine.of(cells));
  }

  /** A cell with a text; an apostrophe stands before one that could be taken for a formula. */
  static String text(String typed) {
    boolean formula = !typed.isEmpty() && FORMULA.indexOf(typed.charAt(0)) >= 0;
    return formula ? "'" + typed : typed;
  }

  /** A cell with a number, every digit; empty where it is none. */
  static String number(double number) {
    return Double.isNaN(number) ? "" : Double.toString(number);
  }

  /** A cell with a whole number. */
  static String number(long number) {
    return Long.toString(number);
  }

  /** A cell that says yes or no. */
  static String bit(boolean yes) {
    return yes ? "1" : "0";
  }

  /** The whole text. */
  String text() {
    return text.toString();
  }
}
