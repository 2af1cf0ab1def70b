package halfwave.gui.presentation.quiz;

import halfwave.gui.presentation.PlainName;
import halfwave.gui.presentation.Wording;
import halfwave.quiz.Quiz;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What stands in the form before a quiz.
 *
 * @param file the quiz, or null
 * @param learner name or code
 * @param extraPercent how much more time by the wall than the others (%)
 * @param sheet where the answer sheet goes, or null
 */
public record QuizStart(
    @Nullable Path file, String learner, int extraPercent, @Nullable Path sheet) {

  /** Nothing yet. */
  public static final QuizStart EMPTY = new QuizStart(null, "", 0, null);

  /** What a sheet is called whose learner is not named yet. */
  private static final String ANSWERS = "answers";

  /** Extra time to choose from (%) [common practice, no source]. */
  public static final List<Integer> EXTRA_PERCENTS = List.of(0, 25, 50, 100);

  QuizStart withQuiz(Path other) {
    return new QuizStart(other, learner, extraPercent, sheet);
  }

  QuizStart withoutLearner() {
    return new QuizStart(file, "", extraPercent, null);
  }

  /** With another name or code. */
  public QuizStart withLearner(String other) {
    return new QuizStart(file, other, extraPercent, sheet);
  }

  /** With more time or less. */
  public QuizStart withExtra(int percent) {
    return new QuizStart(file, learner, percent, sheet);
  }

  /** With the answer sheet elsewhere. */
  public QuizStart withSheet(Path other) {
    return new QuizStart(file, learner, extraPercent, other);
  }

  /** Time by the wall over that of the others (1). */
  public double extraTimeRatio() {
    return 1 + extraPercent / 100.0;
  }

  /** What the answer sheet may be called: no sign of it troubles any file system. */
  public String sheetName(String quiz) {
    // without a name it is not to be called like the quiz itself
    String who = learner.isBlank() ? ANSWERS : learner.strip();
    return PlainName.of(quiz + '-' + who, ANSWERS);
  }

  /** What a quiz is, in a few sentences. */
  public static String about(Quiz quiz, Wording words) {
    String calls = words.text("quiz.count", quiz.calls().size());
    String wall =
        quiz.rules().wallMinutes() > 0
            ? words.text("quiz.wall", Math.round(quiz.rules().wallMinutes()))
            : words.text("quiz.no-wall");
    String hints = words.text(quiz.rules().hints() ? "quiz.hints" : "quiz.no-hints");
    return quiz.title().in(words.locale())
        + "\n"
        + quiz.about().in(words.locale())
        + "\n"
        + String.join(" ", calls, wall, hints);
  }
}
