package halfwave.lesson;

import halfwave.circuit.Part;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One step of a demonstration: say, ask for a prediction, show, explain.
 *
 * @param heading a few words
 * @param say what there is to say, before the question
 * @param question the question, or null: nothing is asked
 * @param play what is shown on the reveal
 * @param explanation what there is to say after it, or null
 * @param claims what is true at the end of the play, besides the claims of the right answer
 * @param lit parts of the circuit to light up in the drawing
 */
public record Step(
    Words heading,
    Words say,
    @Nullable Question question,
    Play play,
    @Nullable Words explanation,
    List<Claim> claims,
    Set<Part> lit) {

  /** Takes copies. */
  public Step {
    claims = List.copyOf(claims);
    EnumSet<Part> ordered = EnumSet.noneOf(Part.class);
    ordered.addAll(lit);
    lit = Collections.unmodifiableSet(ordered);
  }

  /** Whether anything is held back until the reveal. */
  public boolean holdsBack() {
    return question != null || play.lasts() || explanation != null;
  }

  /** How many answers there are to vote for. */
  public int answerCount() {
    return question == null ? 0 : question.answers().size();
  }
}
