package halfwave.cli;

import halfwave.display.Sentences;
import halfwave.grading.ClassReport;
import halfwave.grading.ItemReport;
import halfwave.grading.ObjectiveReport;
import halfwave.grading.SheetMarks;
import halfwave.io.quiz.SheetFolder;
import halfwave.quiz.Quiz;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** What the marks of a class say about its learners and about the calls. */
@Command(name = "report")
final class QuizReportCommand implements Callable<Integer> {

  @Mixin private Standard standard = new Standard();

  @Parameters(index = "0", paramLabel = "QUIZ", descriptionKey = "quiz-file")
  private @Nullable Path file;

  @Parameters(index = "1..*", paramLabel = "SHEETS", arity = "1..*", descriptionKey = "quiz-sheets")
  private List<Path> sheets = new ArrayList<>();

  @Override
  public Integer call() {
    Quiz quiz = QuizArgument.open(Objects.requireNonNull(file));
    SheetFolder folder = SheetFolder.read(sheets, quiz);
    ClassReport report = ClassReport.of(quiz, QuizGradeCommand.graded(standard, quiz, folder));
    standard.out().print(standard.json() ? ReportJson.text(report) : text(report));
    return QuizArgument.refused(folder, standard) ? Failures.BAD_INPUT : 0;
  }

  private String text(ClassReport report) {
    return learners(report) + "\n" + items(report) + "\n" + objectives(report);
  }

  private static String percent(double ratio) {
    return Double.isNaN(ratio) ? "–" : String.format(Locale.ROOT, "%.0f %%", 100 * ratio);
  }

  private static String decimal(double value) {
    return Double.isNaN(value) ? "–" : String.format(Locale.ROOT, "%.2f", value);
  }

  private String learners(ClassReport report) {
    TextTable table =
        new TextTable(QuizArgument.headings(standard, "learner", "total", "passed"), 1);
    for (SheetMarks sheet : report.sheets()) {
      table.add(
          List.of(
              sheet.sheet().learner(),
              percent(sheet.totalRatio()),
              standard.sentences().truth(sheet.passed())));
    }
    return table.toString();
  }

  private String items(ClassReport report) {
    TextTable table =
        new TextTable(
            QuizArgument.headings(
                standard,
                "call",
                "handed-in",
                "mean-mark",
                "discrimination",
                "minutes",
                "wrong-turns"),
            1);
    for (ItemReport item : report.items()) {
      table.add(
          List.of(
              item.call().name(),
              Integer.toString(item.count()),
              percent(item.difficultyRatio()),
              decimal(item.discriminationRatio()),
              Double.isNaN(item.medianMinutes())
                  ? "–"
                  : Long.toString(Math.round(item.medianMinutes())),
              item.wrongTurns().stream()
                  .limit(2)
                  .map(t -> t.what() + " (" + t.count() + ")")
                  .collect(Collectors.joining(", "))));
    }
    return table + "alpha  " + decimal(report.alphaRatio()) + "\n";
  }

  private String objectives(ClassReport report) {
    Sentences sentences = standard.sentences();
    TextTable table =
        new TextTable(
            QuizArgument.headings(standard, "objective", "calls", "mean-mark", "mastered"), 1);
    for (ObjectiveReport o : report.objectives()) {
      table.add(
          List.of(
              sentences.name(o.objective()),
              Integer.toString(o.calls()),
              percent(o.ratio()),
              sentences.truth(o.mastered())));
    }
    return table.toString();
  }
}
