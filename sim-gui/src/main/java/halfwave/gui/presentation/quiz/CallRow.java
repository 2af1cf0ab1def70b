package halfwave.gui.presentation.quiz;

import halfwave.gui.presentation.Wording;
import halfwave.quiz.ServiceCall;
import java.util.List;
import java.util.OptionalLong;

/**
 * A call in the list of a quiz.
 *
 * @param call which
 * @param title its title
 * @param standing how far it has come, in words
 * @param open whether it is the one that is open
 * @param free whether one may go there now
 */
public record CallRow(ServiceCall call, String title, String standing, boolean open, boolean free) {

  /** All calls of the quiz that is being taken. */
  public static List<CallRow> all(QuizModel model, Wording words) {
    Attempt attempt = model.attempt();
    if (attempt == null) {
      return List.of();
    }
    return attempt.quiz().calls().stream()
        .map(
            c -> {
              boolean open = c.equals(model.call());
              return new CallRow(
                  c,
                  c.title().in(words.locale()),
                  standing(attempt.standing(c), words),
                  open,
                  !open
                      && !model.busy()
                      && (!model.over() || attempt.visits().containsKey(c.name())));
            })
        .toList();
  }

  private static String standing(Attempt.Standing standing, Wording words) {
    return words.text(
        switch (standing) {
          case NEW -> "quiz.new";
          case BEGUN -> "quiz.begun";
          case HANDED_IN -> "quiz.call-handed-in";
          case STOPPED -> "quiz.stopped";
        });
  }

  /** What is left by the clock on the wall; empty where there is no limit. */
  public static String clock(QuizModel model, Wording words) {
    OptionalLong left = model.secondsLeft();
    return left.isEmpty()
        ? ""
        : words.text(
            "quiz.clock",
            left.getAsLong() / 60,
            String.format(words.locale(), "%02d", left.getAsLong() % 60));
  }

  /** What is said at the end. */
  public static String ending(QuizModel model, Wording words) {
    String where = String.valueOf(model.start().sheet());
    String text = words.text(model.timeUp() ? "quiz.done-time" : "quiz.done", where);
    String trouble = model.said(words);
    return trouble.isEmpty() ? text : text + "\n" + trouble;
  }
}
