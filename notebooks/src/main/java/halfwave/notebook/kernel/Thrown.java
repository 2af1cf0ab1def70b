package halfwave.notebook.kernel;

import java.util.Arrays;
import java.util.OptionalInt;
import jdk.jshell.EvalException;
import jdk.jshell.Snippet;

/** What a cell has thrown, for its writer. */
final class Thrown {

  private Thrown() {}

  /**
   * Kind, message and causes, and the line of the cell.
   *
   * @param thrown what was thrown
   * @param snippet the statement that threw it
   * @param begin the line of the cell on which that statement begins
   */
  static String text(EvalException thrown, Snippet snippet, int begin) {
    StringBuilder text = new StringBuilder(one(thrown));
    Throwable cause = thrown.getCause();
    while (cause != null) {
      text.append('\n').append(Words.of("cell.cause", one(cause)));
      cause = cause.getCause();
    }
    String file = "#" + snippet.id();
    OptionalInt line =
        Arrays.stream(thrown.getStackTrace())
            .filter(frame -> file.equals(frame.getFileName()))
            .mapToInt(StackTraceElement::getLineNumber)
            .findFirst();
    int at = begin + Math.max(1, line.orElse(1)) - 1;
    return Words.of("cell.thrown", at, text);
  }

  private static String one(Throwable thrown) {
    String type =
        thrown instanceof EvalException named
            ? named.getExceptionClassName()
            : thrown.getClass().getName();
    String name = type.substring(Math.max(type.lastIndexOf('.'), type.lastIndexOf('$')) + 1);
    String said = thrown.getMessage();
    return said == null ? name : name + ": " + said;
  }
}
