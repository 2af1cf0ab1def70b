package halfwave.gui.presentation.quiz;

import halfwave.gui.presentation.Saying;
import halfwave.io.AtomicFile;
import halfwave.io.quiz.QuizText;
import halfwave.io.quiz.SheetFile;
import halfwave.io.quiz.SheetLock;
import halfwave.quiz.AnswerSheet;
import halfwave.quiz.Appearances;
import halfwave.quiz.Quiz;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * Where a learner begins with a quiz, or why that is not possible.
 *
 * @param attempt where, or null
 * @param why why not
 * @param lock keeps the sheet to this window; null where nothing is begun
 */
record Begun(@Nullable Attempt attempt, Saying why, @Nullable SheetLock lock) {

  private Begun(@Nullable Attempt attempt, Saying why) {
    this(attempt, why, null);
  }

  /**
   * Begins, or goes on where the sheet that is there had come to; the sheet is written at once, so
   * that a place where it cannot be is told before any work is spent.
   *
   * @param nowSeconds the computer's clock (s since 1970 UTC)
   * @throws halfwave.io.BadInputException if the file there is no sheet, cannot be written, or is
   *     open elsewhere
   */
  static Begun of(Quiz quiz, Path sheet, String learner, double extraTimeRatio, long nowSeconds) {
    SheetLock lock = SheetLock.of(sheet);
    boolean kept = false;
    try {
      Begun begun =
          Files.exists(sheet)
              ? resumed(quiz, sheet, learner, nowSeconds)
              : new Begun(
                  Attempt.begin(
                          quiz, QuizText.hash(quiz), learner, extraTimeRatio, new Appearances())
                      .begunAt(nowSeconds),
                  Saying.NOTHING);
      if (begun.attempt() != null) {
        AtomicFile.write(sheet, SheetFile.text(begun.attempt().sheet()));
        kept = true;
        return new Begun(begun.attempt(), begun.why(), lock);
      }
      return begun;
    } finally {
      if (!kept) {
        lock.close();
      }
    }
  }

  /** Nobody writes over the work of another. */
  private static Begun resumed(Quiz quiz, Path file, String learner, long nowSeconds) {
    AnswerSheet sheet = SheetFile.read(file, quiz);
    if (!sheet.learner().equals(learner)) {
      return new Begun(null, w -> w.text("quiz.other-learner", file, sheet.learner()));
    } else if (!sheet.quizHash().equals(QuizText.hash(quiz))) {
      return new Begun(null, w -> w.text("quiz.other-quiz", file));
    } else if (sheet.sitting().handedIn()) {
      return new Begun(null, w -> w.text("quiz.was-handed-in", file));
    }
    return Attempt.resumed(quiz, sheet, new Appearances())
        .map(a -> new Begun(a.goneOnAt(nowSeconds), Saying.NOTHING))
        .orElse(new Begun(null, w -> w.text("quiz.cannot-go-on", file)));
  }
}
