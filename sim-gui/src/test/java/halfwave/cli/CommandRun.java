package halfwave.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Locale;

/**
 * One run of the program with what it wrote.
 *
 * @param status exit status
 * @param out standard output
 * @param err standard error
 */
record CommandRun(int status, String out, String err) {

  static CommandRun of(String... args) {
    return in(Locale.ENGLISH, args);
  }

  static CommandRun in(Locale usual, String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status = HalfwaveCommand.run(new PrintWriter(out), new PrintWriter(err), usual, args);
    return new CommandRun(status, out.toString(), err.toString());
  }

  /** The lines of standard error. */
  List<String> complaints() {
    return err.lines().toList();
  }
}
