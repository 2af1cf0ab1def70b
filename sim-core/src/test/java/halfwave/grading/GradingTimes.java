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
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Measures how long 300 answer sheets of ten calls take to be marked; asserts nothing. Thirty
 * learners are simulated; each of their sheets is handed in under ten codes, and so played again on
 * other furnaces.
 */
class GradingTimes {

  private static final int CALLS = 10;
  private static final int LEARNERS = 30;
  private static final int CODES = 10;

  @Test
  void sheets() {
    Quiz bank = ShippedQuizzes.bank();
    List<ServiceCall> calls = new ArrayList<>();
    for (int k = 0; k < CALLS; k++) {
      calls.add(bank.calls().get(k * bank.calls().size() / CALLS));
    }
    Quiz quiz =
        new Quiz(
            "ten-calls",
            bank.title(),
            bank.about(),
            bank.seed(),
            bank.passRatio(),
            bank.weights(),
            bank.rules(),
            List.of(),
            calls);
    Grader grader = grader(quiz);
    List<AnswerSheet> sheets = new ArrayList<>();
    for (int k = 0; k < LEARNERS; k++) {
      List<CallSheet> taken = taken(quiz, grader, k);
      for (int code = 0; code < CODES; code++) {
        String learner = "L-" + k + "-" + code;
        String hash = QuizText.hash(quiz);
        sheets.add(new AnswerSheet(Engine.text(), quiz.name(), hash, learner, 1, taken));
      }
    }
    // judgement and appearances are made anew, as by somebody who has just started the program
    long start = System.nanoTime();
    Grader fresh = grader(quiz);
    List<SheetMarks> marks = sheets.stream().map(fresh::grade).toList();
    double seconds = (System.nanoTime() - start) / 1e9;
    int moves =
        sheets.stream().flatMap(s -> s.calls().stream()).mapToInt(c -> c.moves().size()).sum();
    System.out.printf(
        "%d sheets, %d calls, %d moves: %.1f s%n",
        marks.size(), marks.size() * CALLS, moves, seconds);
  }

  private static Grader grader(Quiz quiz) {
    CachedOutlooks outlooks = new CachedOutlooks(new CaseCache(null), (done, all) -> true);
    return new Grader(quiz, QuizText.hash(quiz), Engine.text(), outlooks);
  }

  private static List<CallSheet> taken(Quiz quiz, Grader grader, int number) {
    Appearances appearances = new Appearances();
    Habit habit = Habit.values()[number % Habit.values().length];
    Learner learner = new Learner(habit, 0.3 * (number % 7) / 6, number);
    List<CallSheet> taken = new ArrayList<>();
    for (ServiceCall call : quiz.calls()) {
      Variant variant = Variant.of(call, quiz.seed(), "L-" + number);
      Visit visit = Visit.begin(variant, appearances, quiz.rules().hints());
      taken.add(learner.take(visit, grader.assessor(call)));
    }
    return taken;
  }
}
