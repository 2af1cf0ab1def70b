package halfwave.grading;

import halfwave.diagnosis.Check;
import halfwave.diagnosis.Reasons;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quiz.Moves;

/** Says of a move how good it was, and what would have been better. */
public final class Better {

  /** As good as the best [judgement]. */
  private static final double BEST_RATIO = 0.95;

  private Better() {}

  /**
   * The sentence.
   *
   * @param move a marked move
   * @param hint grade of the hint before it, zero for none
   */
  static Message than(MarkedMove move, int hint) {
    Message said = said(move);
    return hint == 0
        ? said
        : Message.of(MessageKey.GRADE_HINTED, Argument.nested(said), Argument.count(hint));
  }

  /** The sentence for a move that is marked. */
  public static Message said(MarkedMove move) {
    Argument what = Argument.nested(Moves.said(move.done().move()));
    Check first = move.best();
    boolean better = first != null;
    Argument best = first == null ? Argument.text("") : Argument.nested(Reasons.name(first));
    return switch (move.kind()) {
      case ON_SUSPICION -> Message.of(MessageKey.GRADE_ON_SUSPICION, what, best);
      case DESTROYS_EVIDENCE -> Message.of(MessageKey.GRADE_EVIDENCE, what, best);
      case REDUNDANT ->
          better
              ? Message.of(MessageKey.GRADE_REDUNDANT_BETTER, what, best)
              : Message.of(MessageKey.GRADE_REDUNDANT, what);
      case IRRELEVANT ->
          better
              ? Message.of(MessageKey.GRADE_IRRELEVANT_BETTER, what, best)
              : Message.of(MessageKey.GRADE_IRRELEVANT, what);
      default ->
          !better || move.ratio() >= BEST_RATIO
              ? Message.of(MessageKey.GRADE_BEST, what)
              : Message.of(MessageKey.GRADE_STEP, what, Reasons.percent(move.ratio()), best);
    };
  }
}
