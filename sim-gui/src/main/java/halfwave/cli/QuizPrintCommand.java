package halfwave.cli;

import halfwave.grading.ClassReport;
import halfwave.grading.Grader;
import halfwave.grading.SheetMarks;
import halfwave.io.AtomicFile;
import halfwave.io.JsonValue;
import halfwave.io.Typed;
import halfwave.io.quiz.QuizFile;
import halfwave.io.quiz.SheetFolder;
import halfwave.paper.Document;
import halfwave.paper.QuizPages;
import halfwave.paper.SlideFiles;
import halfwave.quiz.Appearances;
import halfwave.quiz.Quiz;
import halfwave.quiz.Variant;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A quiz on paper. */
@Command(name = "print")
final class QuizPrintCommand implements Callable<Integer> {

  private static final String FURNACE = "--furnace";
  private static final String PDF = ".pdf";

  @Mixin private Standard standard = new Standard();
  @Mixin private PaperOption paper = new PaperOption();

  @Parameters(index = "0", paramLabel = "QUIZ", descriptionKey = "quiz-any-file")
  private @Nullable Path file;

  @Parameters(index = "1..*", paramLabel = "SHEETS", arity = "0..*", descriptionKey = "quiz-sheets")
  private List<Path> sheets = new ArrayList<>();

  @Option(names = "--blank", paramLabel = "FILE", descriptionKey = "quiz-blank")
  private @Nullable Path blank;

  @Option(names = "--worksheet", paramLabel = "FILE", descriptionKey = "quiz-worksheet")
  private @Nullable Path worksheet;

  @Option(names = "--key", paramLabel = "FILE", descriptionKey = "quiz-key")
  private @Nullable Path key;

  @Option(names = "--marks", paramLabel = "FOLDER", descriptionKey = "quiz-records")
  private @Nullable Path marks;

  @Option(names = "--report", paramLabel = "FILE", descriptionKey = "quiz-report")
  private @Nullable Path report;

  @Option(names = FURNACE, paramLabel = "NUMBER", descriptionKey = "quiz-furnace")
  private int furnace = 1;

  @Override
  public Integer call() {
    String command = standard.spec().qualifiedName();
    QuizPages pages =
        new QuizPages(paper.size(command), standard.sentences(), standard.language().locale());
    check(command);
    Path from = Objects.requireNonNull(file);
    Appearances appearances = new Appearances();
    if (blank != null) {
      write(blank, pages.blank(QuizFile.read(from).quiz()));
    }
    if (worksheet == null && key == null && marks == null && report == null) {
      return 0;
    }
    // whoever holds no more than what was handed out gets no readings and no key
    Quiz quiz = QuizArgument.open(from);
    Grader grader = QuizArgument.grader(quiz, new Progress(standard));
    if (worksheet != null) {
      write(worksheet, pages.worksheet(quiz, furnace - 1, appearances));
    }
    if (key != null) {
      write(key, pages.key(grader, furnace - 1, appearances));
    }
    return marks == null && report == null ? 0 : graded(pages, quiz);
  }

  private int graded(QuizPages pages, Quiz quiz) {
    SheetFolder folder = SheetFolder.read(sheets, quiz);
    List<SheetMarks> all = QuizGradeCommand.graded(standard, quiz, folder);
    if (report != null) {
      write(report, pages.report(ClassReport.of(quiz, all)));
    }
    if (marks != null) {
      SlideFiles.prepare(marks);
      int number = 0;
      for (SheetMarks one : all) {
        number++;
        String safe = one.sheet().learner().replaceAll("[^\\p{L}\\p{N}-]+", "_");
        write(marks.resolve(number + "-" + safe + PDF), pages.marks(quiz, one));
      }
    }
    return QuizArgument.refused(folder, standard) ? Failures.BAD_INPUT : 0;
  }

  private void check(String command) {
    if (furnace < 1 || furnace > Variant.COUNT) {
      throw new Typed(command, FURNACE)
          .refused(Integer.toString(furnace), JsonValue.between(1, Variant.COUNT));
    }
    Ending.check(command, "--blank", blank, PDF);
    Ending.check(command, "--worksheet", worksheet, PDF);
    Ending.check(command, "--key", key, PDF);
    Ending.check(command, "--report", report, PDF);
    boolean nothing =
        blank == null && worksheet == null && key == null && report == null && marks == null;
    if (nothing) {
      throw standard.missing("--blank, --worksheet, --key, --marks, --report");
    } else if (sheets.isEmpty() && (marks != null || report != null)) {
      throw standard.missing("SHEETS");
    }
  }

  private static void write(Path target, Document document) {
    AtomicFile.write(target, document.pdf());
  }
}
