package halfwave.gui.presentation.quiz;

import halfwave.grading.Coach;
import halfwave.message.Message;
import halfwave.quiz.Appearances;
import halfwave.quiz.Done;
import halfwave.quiz.Move;
import halfwave.quiz.Visit;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;

/** What hints said, found again from the moves: an answer sheet does not hold it. */
final class Hints {

  private Hints() {}

  /**
   * The hints of a visit, by the line of its log.
   *
   * @param coach who gives them; only asked where there are some
   */
  static Map<Integer, Message> of(Visit visit, Appearances appearances, Supplier<Coach> coach) {
    Map<Integer, Message> hints = new HashMap<>();
    Visit before = Visit.begin(visit.variant(), appearances, true);
    for (int k = 0; k < visit.log().size(); k++) {
      Done done = visit.log().get(k);
      if (done.move() instanceof Move.Hint hint) {
        hints.put(k, coach.get().hint(before, hint.grade()));
      }
      before = before.after(done.move());
    }
    return hints;
  }
}
