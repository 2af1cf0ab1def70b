package halfwave.grading;

import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.message.Message;
import halfwave.quiz.Done;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A move as the marks see it.
 *
 * @param done the move and what came of it, as replayed
 * @param kind what kind of move it was when it was chosen
 * @param ratio information for each minute over that of the best check then (1); NaN where it is
 *     not marked so
 * @param gainBits information that was to be expected (bits); zero where it is no check
 * @param best the best check then; null where none was worth its time
 * @param before how probable each cause was before it, falling
 * @param ruledOut what its result told, in words
 */
public record MarkedMove(
    Done done,
    MoveClass kind,
    double ratio,
    double gainBits,
    @Nullable Check best,
    Map<Cause, Double> before,
    List<Message> ruledOut) {

  /** Takes copies. */
  public MarkedMove {
    ruledOut = List.copyOf(ruledOut);
  }
}
