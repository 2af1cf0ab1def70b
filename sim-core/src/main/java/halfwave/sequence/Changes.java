package halfwave.sequence;

import halfwave.bench.Change;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;

/** Says what a change of a bench is. */
public final class Changes {

  private Changes() {}

  /** The change as a sentence. */
  public static Message said(Change change) {
    if (change instanceof Change.Turned turned) {
      return Message.of(
          MessageKey.CHANGE_TURNED, Argument.name(turned.parameter()), turned.value());
    } else if (change instanceof Change.Joined joined) {
      return Message.of(
          MessageKey.CHANGE_JOINED, Argument.name(joined.parameter()), joined.value());
    } else if (change instanceof Change.Upset upset) {
      return Message.of(
          upset.present() ? MessageKey.CHANGE_UPSET : MessageKey.CHANGE_RIGHTED,
          Argument.name(upset.disorder()));
    } else if (change instanceof Change.CarriedOver carried) {
      return carried(carried.seconds());
    } else if (change instanceof Change.HeldUp held) {
      return carried(held.seconds());
    }
    throw new IllegalStateException("no words for " + change);
  }

  /** The same as a thing: for what waits, comes and goes. */
  static Message named(Change change) {
    if (change instanceof Change.Turned turned) {
      return Message.of(
          MessageKey.CHANGE_NUMBER, Argument.name(turned.parameter()), turned.value());
    } else if (change instanceof Change.Joined joined) {
      return Message.of(
          MessageKey.CHANGE_NUMBER, Argument.name(joined.parameter()), joined.value());
    } else if (change instanceof Change.Upset upset) {
      return Message.of(
          upset.present() ? MessageKey.CHANGE_PART : MessageKey.CHANGE_PART_RIGHT,
          Argument.name(upset.disorder()));
    }
    return Message.of(MessageKey.CHANGE_CARRY_OVER);
  }

  private static Message carried(double seconds) {
    return seconds == Double.POSITIVE_INFINITY
        ? Message.of(MessageKey.CHANGE_NOT_CARRIED)
        : Message.of(MessageKey.CHANGE_CARRIED, Argument.quantity(seconds, Dimension.TIME));
  }
}
