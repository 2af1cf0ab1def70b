package halfwave.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Everything about service calls to examine with. */
@Command(
    name = "quiz",
    subcommands = {
      QuizNewCommand.class,
      QuizCheckCommand.class,
      QuizTakeCommand.class,
      QuizGradeCommand.class,
      QuizReportCommand.class,
      QuizPrintCommand.class,
      QuizExportCommand.class
    })
final class QuizCommand implements Runnable {

  @Mixin private Standard standard = new Standard();

  /** Without a subcommand: what there is. */
  @Override
  public void run() {
    standard.spec().commandLine().usage(standard.out());
  }
}
