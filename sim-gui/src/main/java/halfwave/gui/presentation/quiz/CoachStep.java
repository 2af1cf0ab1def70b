package halfwave.gui.presentation.quiz;

import halfwave.gui.presentation.Wording;
import halfwave.message.Message;
import halfwave.quiz.Move;
import halfwave.quiz.Moves;
import org.jspecify.annotations.Nullable;

/**
 * What a coach would do now.
 *
 * @param move what, or null: conclude
 * @param why why, or null where that says itself
 */
public record CoachStep(@Nullable Move move, @Nullable Message why) {

  /** The same in words. */
  public String text(Wording words) {
    String what =
        move == null
            ? words.text("practice.conclude")
            : words.text(
                "practice.next", Wording.capital(words.sentences().text(Moves.said(move))));
    return why == null ? what : what + ' ' + words.sentences().text(why);
  }
}
