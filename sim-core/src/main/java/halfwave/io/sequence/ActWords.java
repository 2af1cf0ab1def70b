package halfwave.io.sequence;

import halfwave.bench.Change;
import halfwave.bench.Disorder;
import halfwave.bench.Intermittent;
import halfwave.bench.Trigger;
import halfwave.instrument.HookUp;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.ShippedMeters;
import halfwave.io.BadInputException;
import halfwave.io.Typed;
import halfwave.io.bench.ChangeWords;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.sequence.Act;
import halfwave.sequence.Deed;
import halfwave.work.Handling;
import halfwave.work.Repair;

/**
 * An act in words, {@code TIME WORD}, such as {@code 45s lead-off}.
 *
 * <pre>
 * WORD = call-on | call-off | power-on | power-off | damp-on | damp-off | touch
 *      | meter-on FUNCTION LEADS | meter-off
 *      | lead-off | lead-on | gas-shut | gas-open | door-open | door-close
 *      | set PARAMETER=VALUE | break DISORDER | mend DISORDER
 *      | carry-over TIME | carry-over never | lurk TRIGGER CHANGE
 *      | repair REPAIR | mishandle HANDLING
 * </pre>
 */
public final class ActWords {

  private static final String EXAMPLE = "45s lead-off";

  private ActWords() {}

  /**
   * The act that was typed.
   *
   * @throws BadInputException naming the place, the word and what is allowed there
   */
  public static Act act(Typed where, String text) {
    String[] words = text.strip().split("\\s+", 3);
    if (words.length < 2) {
      throw where.refused(text.strip(), Message.of(MessageKey.ALLOWED_ACT, Argument.text(EXAMPLE)));
    }
    long millis = TimeWords.millis(where, words[0], 0, TimeWords.LONGEST_MILLIS - 1);
    return new Act(millis, deed(where.then(words[0]), words[1], words.length == 3 ? words[2] : ""));
  }

  private static Deed deed(Typed where, String first, String rest) {
    ActWord word = ChangeWords.oneOf(where, ActWord.class, first);
    Typed after = where.then(first);
    if (word.plain().isPresent()) {
      if (!rest.isEmpty()) {
        throw after.refused(rest, Message.of(MessageKey.ALLOWED_NO_WORD));
      }
      return word.plain().get();
    }
    return switch (word) {
      case METER_ON -> meterOn(after, rest);
      case SET -> new Deed.Alter(ChangeWords.turned(after, rest));
      case BREAK -> upset(after, rest, true);
      case MEND -> upset(after, rest, false);
      case CARRY_OVER -> new Deed.Alter(ChangeWords.carriedOver(after, rest));
      case LURK -> lurk(after, rest);
      case REPAIR -> new Deed.PutRight(ChangeWords.oneOf(after, Repair.class, rest));
      case MISHANDLE -> new Deed.Mishandle(ChangeWords.oneOf(after, Handling.class, rest));
      default -> throw new IllegalStateException("no deed for " + word);
    };
  }

  private static Deed meterOn(Typed where, String rest) {
    String[] words = rest.split("\\s+", 2);
    MeterFunction function = ChangeWords.oneOf(where, MeterFunction.class, words[0]);
    String leads = words.length == 2 ? words[1] : "";
    HookUp hookUp =
        LeadWords.hookUp(leads)
            .orElseThrow(() -> where.then(words[0]).refused(leads, LeadWords.allowedHere()));
    return new Deed.HookOn(Meter.fresh(ShippedMeters.service()), function, hookUp);
  }

  private static Deed upset(Typed where, String rest, boolean present) {
    return new Deed.Alter(
        new Change.Upset(ChangeWords.oneOf(where, Disorder.class, rest), present));
  }

  private static Deed lurk(Typed where, String rest) {
    String[] words = rest.split("\\s+", 2);
    Trigger trigger = ChangeWords.oneOf(where, Trigger.class, words[0]);
    String change = words.length == 2 ? words[1] : "";
    return new Deed.Lurk(
        new Intermittent(trigger, ChangeWords.change(where.then(words[0]), change)));
  }
}
