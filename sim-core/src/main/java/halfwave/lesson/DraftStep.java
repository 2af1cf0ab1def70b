package halfwave.lesson;

import halfwave.circuit.Part;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A step on its way.
 *
 * @param heading a few words
 * @param say what there is to say, before the question
 * @param question the question, or null: nothing is asked
 * @param play what is shown on the reveal
 * @param explanation what there is to say after it; may stay empty
 * @param claims what is true at the end of the play
 * @param lit parts of the circuit to light up in the drawing
 */
public record DraftStep(
    DraftText heading,
    DraftText say,
    @Nullable DraftQuestion question,
    Play play,
    DraftText explanation,
    List<Claim> claims,
    Set<Part> lit) {

  /** Nothing yet. */
  public static final DraftStep EMPTY =
      new DraftStep(
          DraftText.EMPTY,
          DraftText.EMPTY,
          null,
          Play.NOTHING,
          DraftText.EMPTY,
          List.of(),
          Set.of());

  /** Takes copies. */
  public DraftStep {
    claims = List.copyOf(claims);
    EnumSet<Part> ordered = EnumSet.noneOf(Part.class);
    ordered.addAll(lit);
    lit = Collections.unmodifiableSet(ordered);
  }

  static DraftStep of(Step step) {
    return new DraftStep(
        DraftText.of(step.heading()),
        DraftText.of(step.say()),
        step.question() == null ? null : DraftQuestion.of(step.question()),
        step.play(),
        step.explanation() == null ? DraftText.EMPTY : DraftText.of(step.explanation()),
        step.claims(),
        step.lit());
  }

  DraftStep withHeading(DraftText other) {
    return new DraftStep(other, say, question, play, explanation, claims, lit);
  }

  DraftStep withSay(DraftText other) {
    return new DraftStep(heading, other, question, play, explanation, claims, lit);
  }

  DraftStep withExplanation(DraftText other) {
    return new DraftStep(heading, say, question, play, other, claims, lit);
  }

  /** With another question, or none. */
  public DraftStep with(@Nullable DraftQuestion other) {
    return new DraftStep(heading, say, other, play, explanation, claims, lit);
  }

  /** With something else to show. */
  public DraftStep with(Play other) {
    return new DraftStep(heading, say, question, other, explanation, claims, lit);
  }

  /** With other claims at the end of its play. */
  public DraftStep with(List<Claim> other) {
    return new DraftStep(heading, say, question, play, explanation, other, lit);
  }

  /** With other parts lit up. */
  public DraftStep with(Set<Part> other) {
    return new DraftStep(heading, say, question, play, explanation, claims, other);
  }

  DraftStep wordless() {
    DraftQuestion bare = question == null ? null : question.wordless();
    return new DraftStep(
        DraftText.EMPTY, DraftText.EMPTY, bare, play, DraftText.EMPTY, claims, lit);
  }

  Step step() {
    return new Step(
        heading.orStandIn(),
        say.orStandIn(),
        question == null ? null : question.question(),
        play,
        explanation.words().orElse(null),
        claims,
        lit);
  }
}
