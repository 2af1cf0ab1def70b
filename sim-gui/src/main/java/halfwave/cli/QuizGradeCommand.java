package halfwave.cli;

import halfwave.display.Sentences;
import halfwave.grading.CallMarks;
import halfwave.grading.Grader;
import halfwave.grading.Mark;
import halfwave.grading.SheetMarks;
import halfwave.io.AtomicFile;
import halfwave.io.quiz.MarksJson;
import halfwave.io.quiz.SheetFolder;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quiz.AnswerSheet;
import halfwave.quiz.Quiz;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Marks answer sheets by playing them again. */
@Command(name = "grade")
final class QuizGradeCommand implements Callable<Integer> {

  @Mixin private Standard standard = new Standard();

  @Parameters(index = "0", paramLabel = "QUIZ", descriptionKey = "quiz-file")
  private @Nullable Path file;

  @Parameters(index = "1..*", paramLabel = "SHEETS", arity = "1..*", descriptionKey = "quiz-sheets")
  private List<Path> sheets = new ArrayList<>();

  @Option(names = "--details", descriptionKey = "quiz-details")
  private boolean details;

  @Option(names = "--write", paramLabel = "FILE", descriptionKey = "quiz-marks")
  private @Nullable Path write;

  @Option(names = "--compare", paramLabel = "FILE", descriptionKey = "quiz-compare")
  private @Nullable Path compare;

  @Option(names = "--replace", descriptionKey = "replace")
  private boolean replace;

  @Override
  public Integer call() {
    Quiz quiz = QuizArgument.open(Objects.requireNonNull(file));
    Map<String, Map<String, Double>> before =
        compare == null ? Map.of() : MarksJson.totals(compare);
    SheetFolder folder = SheetFolder.read(sheets, quiz);
    List<SheetMarks> marks = graded(standard, quiz, folder);
    if (write != null) {
      AtomicFile.write(write, MarksJson.text(marks, standard.sentences()), replace, "--replace");
    }
    if (standard.json()) {
      standard.out().print(MarksJson.text(marks, standard.sentences()));
    } else {
      marks.forEach(m -> standard.out().print(text(m)));
      standard.out().print(changes(marks, before));
    }
    return QuizArgument.refused(folder, standard) ? Failures.BAD_INPUT : 0;
  }

  /** Marks all sheets, and says how far it is. */
  static List<SheetMarks> graded(Standard standard, Quiz quiz, SheetFolder folder) {
    Progress progress = new Progress(standard);
    Grader grader = QuizArgument.grader(quiz, progress);
    List<SheetMarks> marks = new ArrayList<>();
    for (AnswerSheet sheet : folder.sheets()) {
      marks.add(grader.grade(sheet));
      progress.goOn(marks.size(), folder.sheets().size());
    }
    progress.end();
    return marks;
  }

  private String text(SheetMarks marks) {
    Sentences sentences = standard.sentences();
    StringBuilder text = new StringBuilder();
    text.append(
            sentences.text(
                Message.of(
                    marks.passed() ? MessageKey.QUIZ_PASSED : MessageKey.QUIZ_FAILED,
                    Argument.text(marks.sheet().learner()),
                    Argument.count(Math.round(100 * marks.totalRatio())))))
        .append('\n');
    marks.remarks().forEach(r -> text.append("  ! ").append(sentences.text(r)).append('\n'));
    for (CallMarks call : marks.calls()) {
      text.append("  ").append(line(call)).append('\n');
      call.remarks().forEach(r -> text.append("    ! ").append(sentences.text(r)).append('\n'));
      if (details && call.facts().done()) {
        call.marks().forEach(m -> text.append(text(m)));
      }
    }
    return text.toString();
  }

  private String line(CallMarks call) {
    return standard
        .sentences()
        .text(
            Message.of(
                MessageKey.QUIZ_CALL_MARKS,
                Argument.text(call.call().name()),
                Argument.count(Math.round(100 * call.totalRatio())),
                Argument.count(Math.round(100 * call.ratio(true))),
                Argument.count(Math.round(100 * call.ratio(false)))));
  }

  private String text(Mark mark) {
    StringBuilder text = new StringBuilder();
    text.append(
        String.format(
            Locale.ROOT,
            "    %s %.1f / %.0f%n",
            standard.sentences().name(mark.criterion()),
            mark.ratio() * mark.points(),
            mark.points()));
    mark.reasons()
        .forEach(r -> text.append("      ").append(standard.sentences().text(r)).append('\n'));
    return text.toString();
  }

  private String changes(List<SheetMarks> marks, Map<String, Map<String, Double>> before) {
    StringBuilder text = new StringBuilder();
    int changed = 0;
    for (SheetMarks sheet : marks) {
      Map<String, Double> then = before.getOrDefault(sheet.sheet().learner(), Map.of());
      for (CallMarks call : sheet.calls()) {
        Double old = then.get(call.call().name());
        // what is shown is whole per cents
        if (old != null && Math.abs(old - call.totalRatio()) >= 0.005) {
          changed++;
          text.append(
                  standard
                      .sentences()
                      .text(
                          Message.of(
                              MessageKey.QUIZ_CHANGED,
                              Argument.text(sheet.sheet().learner()),
                              Argument.text(call.call().name()),
                              Argument.count(Math.round(100 * old)),
                              Argument.count(Math.round(100 * call.totalRatio())))))
              .append('\n');
        }
      }
    }
    if (compare != null && changed == 0) {
      text.append(standard.sentences().text(Message.of(MessageKey.QUIZ_UNCHANGED))).append('\n');
    }
    return text.toString();
  }
}
