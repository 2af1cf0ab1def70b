package halfwave.explain;

import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.util.List;

/** The usual cautions of the real work, short, in the order of the work. */
public final class Caution {

  private Caution() {}

  /** All of them. */
  public static List<Message> all() {
    return List.of(
        Message.of(MessageKey.CAUTION_GAS_AND_POWER),
        Message.of(MessageKey.CAUTION_NEVER_BYPASS),
        Message.of(MessageKey.CAUTION_SPARK),
        Message.of(MessageKey.CAUTION_LEAVE),
        Message.of(MessageKey.CAUTION_CODES),
        Message.of(MessageKey.CAUTION_TEACHING));
  }
}
