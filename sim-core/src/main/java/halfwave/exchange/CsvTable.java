package halfwave.exchange;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A table as comma-separated values (RFC 4180: header line, CRLF line ends). What somebody typed
 * never becomes a formula in a spreadsheet.
 */
final class CsvTable {

  private static final String LINE_END = "\r\n";

  /** What a spreadsheet takes for the beginning of a formula, and white space before one. */
  private static final String FORMULA = "=+-@\t\r\n";

  private final StringBuilder text = new StringBuilder();

  CsvTable(List<String> columns) {
    row(columns.stream().map(CsvTable::text).toList());
  }

  /** A row of cells from {@link #text} and {@link #number}. */
  void row(List<String> cells) {
    text.append(cells.stream().collect(Collectors.joining(",", "", LINE_END)));
  }

  /** A cell with a text; an apostrophe stands before one that could be taken for a formula. */
  static String text(String typed) {
    boolean formula = !typed.isEmpty() && FORMULA.indexOf(typed.charAt(0)) >= 0;
    String cell = formula ? "'" + typed : typed;
    boolean quoted = cell.chars().anyMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
    return quoted ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell;
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
