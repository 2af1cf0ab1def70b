package halfwave.gui.presentation.quiz;

import halfwave.gui.presentation.Saying;
import halfwave.message.Message;
import halfwave.quiz.Move;
import halfwave.quiz.Phase;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where a practised call has come to, with what a coach thinks of it.
 *
 * @param attempt the moves so far
 * @param remarks for each line of the log, what is said about it
 * @param phase the stage
 * @param next what an expert would do; nothing: conclude
 * @param why why
 */
record PracticePoint(
    Attempt attempt,
    List<List<Saying>> remarks,
    Phase phase,
    Optional<Move> next,
    @Nullable Message why) {

  /** Takes a copy. */
  PracticePoint {
    remarks = List.copyOf(remarks);
  }
}
