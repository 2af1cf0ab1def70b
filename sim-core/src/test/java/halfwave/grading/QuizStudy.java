package halfwave.grading;

import halfwave.io.evidence.CachedOutlooks;
import halfwave.io.evidence.CaseCache;
import halfwave.io.quiz.Engine;
import halfwave.io.quiz.QuizText;
import halfwave.io.quiz.ShippedQuizzes;
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
import java.util.Arrays;
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
  private final Outlooks outlooks =
      new CachedOutlooks(new CaseCache(Path.of("target", "cases")), (d, a) -> true);

  /** What one learner got. */
  record Taken(Habit habit, double slipRatio, SheetMarks marks) {}

  /** One learner of the study, and the marks so far. */
  private record Sitting(Habit habit, double slipRatio, String code, List<CallMarks> marks) {

    static Sitting of(Habit habit, int number) {
      double slips = LEARNERS == 1 ? 0 : MOST_SLIPS * number / (LEARNERS - 1);
      return new Sitting(habit, slips, habit + "-" + number, new ArrayList<>());
    }
  }

  /** Call after call, not learner after learner: all begin a call alike, and thoughts are kept. */
  @Test
  void study() throws IOException {
    List<Sitting> sittings =
        Arrays.stream(Habit.values())
            .flatMap(h -> IntStream.range(0, LEARNERS).mapToObj(k -> Sitting.of(h, k)))
            .toList();
    for (ServiceCall call : bank.calls()) {
      Grader grader = grader();
      sittings.parallelStream().forEach(s -> s.marks().add(marks(s, call, grader)));
      System.out.println(call.name() + " taken and marked " + sittings.size() + " times");
    }
    List<Taken> all = sittings.stream().map(this::taken).toList();
    Files.writeString(REPORT, new QuizStudyReport(bank, all).text());
  }

  /** A new one for each call, so that no thought of another call is kept. */
  private Grader grader() {
    return new Grader(bank, QuizText.hash(bank), Engine.text(), outlooks, appearances);
  }

  private CallMarks marks(Sitting sitting, ServiceCall call, Grader grader) {
    long seed = 1_000_003L * sitting.code().hashCode() + call.name().hashCode();
    Visit begun = Visit.begin(Variant.of(call, bank.seed(), sitting.code()), appearances, false);
    CallSheet handed =
        new Learner(sitting.habit(), sitting.slipRatio(), seed).take(begun, grader.assessor(call));
    return light(grader.grade(call, sheet(sitting, List.of(handed))));
  }

  private AnswerSheet sheet(Sitting sitting, List<CallSheet> calls) {
    return new AnswerSheet(
        Engine.text(), bank.name(), QuizText.hash(bank), sitting.code(), 1, calls);
  }

  private Taken taken(Sitting sitting) {
    double total = SheetMarks.mean(bank, sitting.marks(), CallMarks::totalRatio);
    return new Taken(
        sitting.habit(),
        sitting.slipRatio(),
        new SheetMarks(
            sheet(sitting, List.of()),
            sitting.marks(),
            total,
            total >= bank.passRatio(),
            List.of()));
  }

  /** The same without what nobody reports: the thoughts at each move. */
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
