package halfwave.gui.presentation.desk;

import halfwave.grading.Grader;
import halfwave.grading.Habit;
import halfwave.grading.Learner;
import halfwave.gui.presentation.quiz.SmallQuiz;
import halfwave.io.AtomicFile;
import halfwave.io.quiz.Engine;
import halfwave.io.quiz.QuizText;
import halfwave.io.quiz.SheetFile;
import halfwave.quiz.AnswerSheet;
import halfwave.quiz.Appearances;
import halfwave.quiz.CallSheet;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Variant;
import halfwave.quiz.Visit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Three simulated learners who take a quiz, and a letter that is no answer sheet. */
public final class SmallClass {

  /** What they are called, and the name of the odd file. */
  public static final List<String> LEARNERS = List.of("A-1", "B-2", "C-3");

  public static final String ODD = "letter.json";

  private SmallClass() {}

  /** Writes their sheets into a folder, and the letter. */
  public static void handIn(Path folder, Quiz quiz) {
    handIn(folder, quiz, LEARNERS);
    AtomicFile.write(folder.resolve(ODD), "{\"dear\": \"teacher\"}");
  }

  /** Writes the sheets of so many learners into a folder. */
  public static void handIn(Path folder, Quiz quiz, List<String> names) {
    Grader grader = new Grader(quiz, QuizText.hash(quiz), Engine.text(), SmallQuiz.OUTLOOKS);
    Appearances appearances = new Appearances();
    for (int k = 0; k < names.size(); k++) {
      List<CallSheet> calls = new ArrayList<>();
      for (ServiceCall call : quiz.calls()) {
        Variant variant = Variant.of(call, quiz.seed(), names.get(k));
        Learner learner =
            new Learner(Habit.values()[k % Habit.values().length], 0.2 * (k % 3), k + 1);
        calls.add(
            learner.take(
                Visit.begin(variant, appearances, quiz.rules().hints()), grader.assessor(call)));
      }
      AnswerSheet sheet =
          new AnswerSheet(Engine.text(), quiz.name(), QuizText.hash(quiz), names.get(k), 1, calls);
      AtomicFile.write(folder.resolve(names.get(k) + ".json"), SheetFile.text(sheet));
    }
  }
}
