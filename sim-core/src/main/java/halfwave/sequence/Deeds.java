package halfwave.sequence;

import halfwave.bench.Intermittent;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;

/** Says what a deed is. */
public final class Deeds {

  private Deeds() {}

  /** The deed as a sentence. */
  public static Message said(Deed deed) {
    if (deed instanceof Deed.Call call) {
      return Message.of(call.on() ? MessageKey.ACT_CALL : MessageKey.ACT_CALL_ENDS);
    } else if (deed instanceof Deed.Supply supply) {
      return Message.of(supply.on() ? MessageKey.ACT_SUPPLY_ON : MessageKey.ACT_SUPPLY_OFF);
    } else if (deed instanceof Deed.Damp damp) {
      return Message.of(damp.on() ? MessageKey.ACT_DAMP : MessageKey.ACT_DRY);
    } else if (deed instanceof Deed.Touch) {
      return Message.of(MessageKey.ACT_TOUCH);
    } else if (deed instanceof Deed.Alter alter) {
      return Changes.said(alter.change());
    } else if (deed instanceof Deed.Lurk lurk) {
      return lurks(lurk.intermittent());
    } else if (deed instanceof Deed.HookOn hook) {
      return Message.of(MessageKey.ACT_HOOKS_ON, Argument.name(hook.function()));
    } else if (deed instanceof Deed.TakeOff) {
      return Message.of(MessageKey.ACT_TAKES_OFF);
    } else if (deed instanceof Deed.Become) {
      return Message.of(MessageKey.ACT_BECOMES);
    } else if (deed instanceof Deed.PutRight right) {
      return Message.of(
          MessageKey.ACT_REPAIRS,
          Argument.name(right.repair()),
          Argument.count(right.repair().minutes()));
    } else if (deed instanceof Deed.Mishandle wrong) {
      return Message.of(MessageKey.ACT_MISHANDLES, Argument.name(wrong.handling()));
    }
    throw new IllegalStateException("no words for " + deed);
  }

  private static Message lurks(Intermittent intermittent) {
    return Message.of(
        MessageKey.ACT_LURKS,
        Argument.name(intermittent.trigger()),
        Argument.nested(Changes.named(intermittent.change())));
  }
}
