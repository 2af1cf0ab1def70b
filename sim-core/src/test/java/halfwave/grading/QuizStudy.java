package halfwave.grading;

import halfwave.io.CachedOutlooks;
import halfwave.io.CaseCache;
import halfwave.io.Engine;
import halfwave.io.QuizText;
import halfwave.io.ShippedQuizzes;
import halfwave.quiz.AnswerSheet;
import halfwave.quiz.Appearances;
import halfwave.quiz.CallSheet;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Variant;
import halfwave.quiz.Visit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Whether the marks mean something: simulated learners of five habits, each with slips from none to
 * one in two, take the whole bank. Not a test: it is run by name, takes long, and writes its
 * numbers into {@code docs/quiz-study.md}.
 */
class QuizStudy {

  private static final int LEARNERS = Integer.getInteger("halfwave.learners", 200);
  private static final double MOST_SLIPS = 0.5;
  private static final Path REPORT = Path.of("..", "docs", "quiz-study.md");

  private final Quiz bank = ShippedQuizzes.bank();
  private final Appearances appearances = new Appearances();
  private final Grader grader =
      new Grader(
          bank,
          QuizText.hash(bank),
          Engine.text(),
          new CachedOutlooks(new CaseCache(Path.of("target", "cases")), (d, a) -> true));

  /** What one learner got. */
  record Taken(Habit habit, double slipRatio, SheetMarks marks) {}

  @Test
  void study() throws IOException {
    List<Taken> all = new ArrayList<>();
    for (Habit habit : Habit.values()) {
      all.addAll(IntStream.range(0, LEARNERS).parallel().mapToObj(k -> taken(habit, k)).toList());
    }
    Files.writeString(REPORT, new QuizStudyReport(bank, all).text());
  }

  private Taken taken(Habit habit, int number) {
    double slips = LEARNERS == 1 ? 0 : MOST_SLIPS * number / (LEARNERS - 1);
    String code = habit + "-" + number;
    List<CallSheet> sheets = new ArrayList<>();
    for (ServiceCall call : bank.calls()) {
      long seed = 1_000_003L * code.hashCode() + call.name().hashCode();
      Visit begun = Visit.begin(Variant.of(call, bank.seed(), code), appearances, false);
      sheets.add(new Learner(habit, slips, seed).take(begun, grader.assessor(call)));
    }
    AnswerSheet sheet =
        new AnswerSheet(Engine.text(), bank.name(), QuizText.hash(bank), code, 1, sheets);
    return new Taken(habit, slips, light(grader.grade(sheet)));
  }

  /** The same without what nobody reports: the thoughts at each move. */
  private static SheetMarks light(SheetMarks marks) {
    return new SheetMarks(
        marks.sheet(),
        marks.calls().stream().map(QuizStudy::light).toList(),
        marks.totalRatio(),
        marks.passed(),
        marks.remarks());
  }

  private static CallMarks light(CallMarks call) {
    return new CallMarks(
        call.call(),
        call.truth(),
        call.said(),
        call.marks().stream()
            .map(m -> new Mark(m.criterion(), m.ratio(), m.points(), List.of()))
            .toList(),
        call.moves().stream()
            .map(
                m ->
                    new MarkedMove(
                        m.done(), m.kind(), m.ratio(), m.gainBits(), null, Map.of(), List.of()))
            .toList(),
        call.remarks(),
        call.totalRatio(),
        call.facts());
  }
}
