package halfwave.cli;

import halfwave.bench.ShippedBenches;
import halfwave.display.BenchReport;
import halfwave.explain.BenchAnswer;
import halfwave.io.bench.BenchAnswerJson;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.io.PrintWriter;
import java.util.Locale;
import java.util.ResourceBundle;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** The root of all commands. */
@Command(
    name = HalfwaveCommand.NAME,
    subcommands = {
      SolveCommand.class,
      CircuitCommand.class,
      SpiceCommand.class,
      SweepCommand.class,
      SequenceCommand.class,
      ReportCommand.class,
      MeasureCommand.class,
      SymptomsCommand.class,
      DiagnoseCommand.class,
      MatchCommand.class,
      ForecastCommand.class,
      BenchesCommand.class,
      BoardsCommand.class,
      FaultsCommand.class,
      WorkCommand.class,
      DemonstrationsCommand.class,
      QuizCommand.class
    })
public final class HalfwaveCommand implements Runnable {

  /** What a person types. */
  public static final String NAME = "halfwave";

  private static final String BUNDLE = "halfwave.cli.commands";

  private final Language language;

  @Mixin private Standard standard = new Standard();

  private HalfwaveCommand(Language language) {
    this.language = language;
  }

  /** The language of whoever names none on the command line. */
  Language language() {
    return language;
  }

  /** Without a subcommand: the standard bench, and how to go on. */
  @Override
  public void run() {
    BenchAnswer answer = BenchAnswer.of(ShippedBenches.standard());
    if (standard.json()) {
      standard.out().print(BenchAnswerJson.text(answer, standard.sentences()));
    } else {
      standard.out().print(BenchReport.text(answer, standard.sentences()));
      standard.out().println();
      standard.out().println(standard.sentences().text(Message.of(MessageKey.REPORT_GO_ON)));
    }
  }

  /**
   * Runs a command line. Never throws, never ends the process.
   *
   * @param out where answers go
   * @param err where the one line about a failure goes
   * @param usual the language of whoever names none
   * @param args the command line
   * @return exit status: 0 done, 2 bad usage or bad input, 1 internal failure
   */
  public static int run(PrintWriter out, PrintWriter err, Locale usual, String... args) {
    Language language = Language.of(args, usual);
    Failures failures = new Failures(language.sentences());
    try {
      return commandLine(language, failures).setOut(out).setErr(err).execute(args);
    } catch (RuntimeException | Error e) {
      return failures.internal(err, e);
    } finally {
      out.flush();
      err.flush();
    }
  }

  /** All commands with their help in that language. */
  static CommandLine commandLine(Language language, Failures failures) {
    CommandLine line = new CommandLine(new HalfwaveCommand(language));
    line.registerConverter(Language.class, code -> Language.of(code).orElseThrow());
    line.setResourceBundle(
        ResourceBundle.getBundle(
            BUNDLE,
            language.locale(),
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES)));
    // an abbreviation that works today would break with the next option
    line.setAbbreviatedOptionsAllowed(false);
    line.setParameterExceptionHandler(failures::badUsage);
    line.setExecutionExceptionHandler(failures::duringExecution);
    return line;
  }
}
