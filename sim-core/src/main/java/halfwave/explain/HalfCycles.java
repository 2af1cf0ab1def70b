package halfwave.explain;

import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/** What the flame passes in each half-cycle, what limits it, and what is left of the two. */
final class HalfCycles {

  /** Below this a crest of the flame current is not worth a sentence (A). */
  private static final double SMALLEST_CREST_AMPS = 50e-9;

  private HalfCycles() {}

  /**
   * The sentences, none where hardly anything flows.
   *
   * @param positive where the volts go while the rod is positive
   * @param negative where they go while it is negative
   * @param signal whether there is DC of the right sign
   */
  static List<Message> of(VoltageLadder positive, VoltageLadder negative, boolean signal) {
    double with = Math.abs(positive.flameAmps());
    double against = Math.abs(negative.flameAmps());
    if (Math.max(with, against) < SMALLEST_CREST_AMPS) {
      return List.of();
    }
    List<Message> said = new ArrayList<>();
    said.add(halfCycle(MessageKey.ACCOUNT_ROD_POSITIVE, positive));
    said.add(halfCycle(MessageKey.ACCOUNT_ROD_NEGATIVE, negative));
    // with a film the crests need not tell the sign of the mean: then they are not compared
    if (signal && with > against && against > 0) {
      said.add(ratio(MessageKey.ACCOUNT_RECTIFIES, with / against));
    } else if (!signal && against > with && with > 0) {
      said.add(ratio(MessageKey.ACCOUNT_RECTIFIES_BACKWARDS, against / with));
    }
    return List.copyOf(said);
  }

  private static Message halfCycle(MessageKey key, VoltageLadder ladder) {
    Rung largest = ladder.largest();
    return Message.of(
        key,
        Argument.quantity(Math.abs(ladder.flameAmps()), Dimension.CURRENT),
        Argument.name(largest),
        Argument.quantity(
            Math.abs(ladder.rungVolts().getOrDefault(largest, 0.0)), Dimension.VOLTAGE),
        Argument.quantity(Math.abs(ladder.sourceVolts()), Dimension.VOLTAGE));
  }

  private static Message ratio(MessageKey key, double ratio) {
    return Message.of(key, Argument.quantity(ratio, Dimension.NUMBER));
  }
}
