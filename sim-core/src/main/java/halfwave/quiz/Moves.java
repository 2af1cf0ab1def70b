package halfwave.quiz;

import halfwave.diagnosis.Reasons;
import halfwave.fault.FaultGroup;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.util.Collection;

/** Says what a move is. */
public final class Moves {

  private Moves() {}

  /** The move in words. */
  public static Message said(Move move) {
    if (move instanceof Move.Checked checked) {
      return Reasons.name(checked.check());
    } else if (move instanceof Move.Repaired repaired) {
      return Message.of(MessageKey.NAMED, Argument.name(repaired.repair()));
    } else if (move instanceof Move.Power power) {
      return Message.of(power.on() ? MessageKey.MOVE_POWER_ON : MessageKey.MOVE_POWER_OFF);
    } else if (move instanceof Move.Gas gas) {
      return Message.of(gas.on() ? MessageKey.MOVE_GAS_ON : MessageKey.MOVE_GAS_OFF);
    } else if (move instanceof Move.Signal signal) {
      return Message.of(signal.on() ? MessageKey.MOVE_SIGNAL_ON : MessageKey.MOVE_SIGNAL_OFF);
    } else if (move instanceof Move.Tempted tempted) {
      return Message.of(MessageKey.NAMED, Argument.name(tempted.temptation()));
    } else if (move instanceof Move.Suspects suspects) {
      return Message.of(MessageKey.MOVE_SUSPECTS, Argument.nested(groups(suspects.groups())));
    } else if (move instanceof Move.Hint hint) {
      return Message.of(MessageKey.MOVE_HINT, Argument.count(hint.grade()));
    } else if (move instanceof Move.Note note) {
      return Message.of(MessageKey.MOVE_NOTE, Argument.text(note.text()));
    }
    throw new IllegalStateException("no words for " + move);
  }

  /** Which check, repair or temptation it is, by the name of that; empty for any other move. */
  public static String id(Move move) {
    if (move instanceof Move.Checked checked) {
      return checked.check().id();
    } else if (move instanceof Move.Repaired repaired) {
      return repaired.repair().id();
    }
    return move instanceof Move.Tempted tempted ? tempted.temptation().id() : "";
  }

  /** Groups of faults in words; none of them: nothing is wrong. */
  public static Message groups(Collection<FaultGroup> groups) {
    return groups.stream()
        .map(g -> Message.of(MessageKey.NAMED, Argument.name(g)))
        .reduce((a, b) -> Message.of(MessageKey.LISTED, Argument.nested(a), Argument.nested(b)))
        .orElse(Message.of(MessageKey.CAUSE_HEALTHY));
  }
}
