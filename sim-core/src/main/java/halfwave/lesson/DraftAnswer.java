package halfwave.lesson;

import java.util.List;

/**
 * An answer on its way.
 *
 * @param text what it says
 * @param claims the same as claims
 */
public record DraftAnswer(DraftText text, List<Claim> claims) {

  /** Nothing yet. */
  public static final DraftAnswer EMPTY = new DraftAnswer(DraftText.EMPTY, List.of());

  /** Takes a copy. */
  public DraftAnswer {
    claims = List.copyOf(claims);
  }

  static DraftAnswer of(Answer answer) {
    List<Claim> claims =
        answer.claims().stream().filter(c -> !c.equals(DraftQuestion.UNPROVED)).toList();
    return new DraftAnswer(DraftText.of(answer.text()), claims);
  }

  /** With another text. */
  public DraftAnswer with(DraftText other) {
    return new DraftAnswer(other, claims);
  }

  /** With other claims. */
  public DraftAnswer with(List<Claim> other) {
    return new DraftAnswer(text, other);
  }

  Answer answer(boolean right) {
    boolean unproved = right && claims.isEmpty();
    return new Answer(text.orStandIn(), unproved ? List.of(DraftQuestion.UNPROVED) : claims);
  }
}
