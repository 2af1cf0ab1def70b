package halfwave.lesson;

import java.util.List;

/**
 * One of the predictions to choose from.
 *
 * @param text what it says
 * @param claims the same as claims: all of them hold if it is right, and not all of them if it is
 *     wrong; none: the model cannot say
 */
public record Answer(Words text, List<Claim> claims) {

  /** Takes a copy. */
  public Answer {
    claims = List.copyOf(claims);
  }

  /** Whether it has claims and all of them are true of what was played. */
  public boolean comesTrue(Performance performance) {
    return !claims.isEmpty() && claims.stream().allMatch(c -> c.holds(performance));
  }
}
