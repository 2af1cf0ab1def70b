package halfwave.cli;

import halfwave.exchange.GradebookCsv;
import halfwave.exchange.QtiPackage;
import halfwave.exchange.XapiStatements;
import halfwave.grading.ClassReport;
import halfwave.grading.SheetMarks;
import halfwave.io.AtomicFile;
import halfwave.io.Typed;
import halfwave.io.quiz.SheetFolder;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quiz.Appearances;
import halfwave.quiz.Quiz;
import java.net.URI;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A quiz and its marks for other systems. */
@Command(name = "export")
final class QuizExportCommand implements Callable<Integer> {

  private static final String HOME = "--home";

  @Mixin private Standard standard = new Standard();

  @Parameters(index = "0", paramLabel = "QUIZ", descriptionKey = "quiz-file")
  private @Nullable Path file;

  @Parameters(index = "1..*", paramLabel = "SHEETS", arity = "0..*", descriptionKey = "quiz-sheets")
  private List<Path> sheets = new ArrayList<>();

  @Option(names = "--gradebook", paramLabel = "FILE", descriptionKey = "quiz-gradebook")
  private @Nullable Path gradebook;

  @Option(names = "--items", paramLabel = "FILE", descriptionKey = "quiz-items")
  private @Nullable Path items;

  @Option(names = "--qti", paramLabel = "FILE", descriptionKey = "quiz-qti")
  private @Nullable Path qti;

  @Option(names = "--xapi", paramLabel = "FILE", descriptionKey = "quiz-xapi")
  private @Nullable Path xapi;

  @Option(names = HOME, paramLabel = "ADDRESS", descriptionKey = "quiz-home")
  private String home = "https://halfwave.example/class";

  @Override
  public Integer call() {
    String command = standard.spec().qualifiedName();
    check(command);
    Quiz quiz = QuizArgument.open(Objects.requireNonNull(file));
    if (qti != null) {
      AtomicFile.write(
          qti,
          QtiPackage.of(
              QuizArgument.grader(quiz, new Progress(standard)),
              0,
              new Appearances(),
              standard.sentences(),
              standard.language().locale()));
    }
    if (gradebook == null && items == null && xapi == null) {
      return 0;
    }
    SheetFolder folder = SheetFolder.read(sheets, quiz);
    List<SheetMarks> marks = QuizGradeCommand.graded(standard, quiz, folder);
    ClassReport report = ClassReport.of(quiz, marks);
    if (gradebook != null) {
      AtomicFile.write(gradebook, GradebookCsv.learners(report));
    }
    if (items != null) {
      AtomicFile.write(items, GradebookCsv.items(report));
    }
    if (xapi != null) {
      AtomicFile.write(xapi, new XapiStatements(quiz, address(command), Instant.now()).of(marks));
    }
    return QuizArgument.refused(folder, standard) ? Failures.BAD_INPUT : 0;
  }

  private void check(String command) {
    Ending.check(command, "--gradebook", gradebook, ".csv");
    Ending.check(command, "--items", items, ".csv");
    Ending.check(command, "--qti", qti, ".zip");
    boolean graded = gradebook != null || items != null || xapi != null;
    if (xapi != null) {
      AtomicFile.check(xapi);
      address(command);
    }
    if (!graded && qti == null) {
      throw standard.missing("--gradebook, --items, --qti, --xapi");
    } else if (graded && sheets.isEmpty()) {
      throw standard.missing("SHEETS");
    }
  }

  private URI address(String command) {
    try {
      URI address = URI.create(home);
      if (address.isAbsolute() && !address.isOpaque()) {
        return address;
      }
    } catch (IllegalArgumentException e) {
      // said below
    }
    throw new Typed(command, HOME).refused(home, Message.of(MessageKey.ALLOWED_ADDRESS));
  }
}
