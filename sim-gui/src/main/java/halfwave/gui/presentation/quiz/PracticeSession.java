package halfwave.gui.presentation.quiz;

import halfwave.grading.CallMarks;
import halfwave.grading.Coach;
import halfwave.grading.Grader;
import halfwave.grading.Outlooks;
import halfwave.io.quiz.Engine;
import halfwave.io.quiz.QuizText;
import halfwave.picture.scene.DrawnBench;
import halfwave.quiz.Conclusion;
import halfwave.quiz.Help;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import org.jspecify.annotations.Nullable;

/**
 * What stays the same as long as one call is practised.
 *
 * @param call which
 * @param help how much the coach does
 * @param grader marks it
 * @param coach helps
 * @param moves plays it
 * @param first where it begins
 * @param furnace the furnace as it should be
 */
record PracticeSession(
    ServiceCall call,
    Help help,
    Grader grader,
    Coach coach,
    CoachedMoves moves,
    PracticePoint first,
    DrawnBench furnace) {

  /**
   * Somebody begins a call.
   *
   * @param bank where it comes from
   * @param time how often anything was practised before
   */
  static PracticeSession begin(
      Quiz bank, ServiceCall call, Help help, Outlooks outlooks, int time) {
    Quiz alone = PracticeQuiz.of(bank, call);
    Grader grader = new Grader(alone, QuizText.hash(alone), Engine.text(), outlooks);
    Coach coach = new Coach(grader.assessor(call));
    CoachedMoves moves = new CoachedMoves(call, coach, help);
    PracticePoint first = moves.first(PracticeQuiz.begin(alone, time));
    return new PracticeSession(call, help, grader, coach, moves, first, HealthyFurnace.of(call));
  }

  /** The marks of what was done, with a conclusion or without. */
  CallMarks marks(Attempt attempt, @Nullable Conclusion conclusion) {
    Attempt ended = conclusion == null ? attempt : attempt.concluded(call, conclusion);
    return grader.grade(ended.sheet()).calls().get(0);
  }
}
