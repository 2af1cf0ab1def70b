package halfwave.diagnosis;

import java.util.List;

/**
 * One way in which a cause can show: on one bench, at one severity.
 *
 * @param cause what is wrong
 * @param draw which bench and how severe; the same number means the same bench for every cause
 * @param outcomes what each check of the table would find, in their order
 */
public record Case(Cause cause, int draw, List<Outcome> outcomes) {

  /** Takes a copy. */
  public Case {
    outcomes = List.copyOf(outcomes);
  }
}
