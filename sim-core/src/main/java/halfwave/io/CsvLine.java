package halfwave.io;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A line of comma-separated values (RFC 4180). What numbers look like is for the table to say: dots
 * as decimal signs and every digit, the same in every language.
 */
public final class CsvLine {

  private static final String END = "\r\n";

  private CsvLine() {}

  /** The line with its end, of cells as they are to be read. */
  public static String of(List<String> cells) {
    return cells.stream().map(CsvLine::cell).collect(Collectors.joining(",", "", END));
  }

  /** One cell; one that holds a comma, a quote or a line end is quoted. */
  public static String cell(String text) {
    boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
    return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
  }
}
