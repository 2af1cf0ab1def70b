package halfwave.io.sequence;

import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.bench.Change;
import halfwave.instrument.ShippedMeters;
import halfwave.io.JsonValue;
import halfwave.io.bench.BenchText;
import halfwave.sequence.Act;
import halfwave.sequence.Deed;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;

/** Writes an act as {@link ScriptFile} reads it. */
public final class ActText {

  private ActText() {}

  /**
   * Puts the act into an empty object.
   *
   * @throws IllegalArgumentException where no word says it
   */
  public static void put(ObjectNode node, Act act) {
    node.put("seconds", seconds(act.timeMillis()));
    Deed deed = act.deed();
    Optional<ActWord> plain =
        Stream.of(ActWord.values())
            .filter(w -> w.plain().filter(deed::equals).isPresent())
            .findFirst();
    if (plain.isPresent()) {
      put(node, plain.get());
    } else if (deed instanceof Deed.Alter alter) {
      putChange(node, alter.change());
    } else if (deed instanceof Deed.Lurk lurk) {
      put(node, ActWord.LURK).put("trigger", JsonValue.spelling(lurk.intermittent().trigger()));
      BenchText.putChange(node.putObject("change"), lurk.intermittent().change());
    } else if (deed instanceof Deed.HookOn hook) {
      putMeter(node, hook);
    } else if (deed instanceof Deed.PutRight work) {
      put(node, ActWord.REPAIR).put("repair", JsonValue.spelling(work.repair()));
    } else if (deed instanceof Deed.Mishandle work) {
      put(node, ActWord.MISHANDLE).put("handling", JsonValue.spelling(work.handling()));
    } else {
      throw new IllegalArgumentException("deed = " + deed + ": no word for it");
    }
  }

  /** So many milliseconds in seconds, exactly, without zeros at the end. */
  public static BigDecimal seconds(long millis) {
    BigDecimal seconds = BigDecimal.valueOf(millis, 3).stripTrailingZeros();
    return seconds.scale() < 0 ? seconds.setScale(0) : seconds;
  }

  private static ObjectNode put(ObjectNode node, ActWord word) {
    return node.put("act", JsonValue.spelling(word));
  }

  private static void putChange(ObjectNode node, Change change) {
    if (change instanceof Change.Turned) {
      put(node, ActWord.SET);
      BenchText.putChange(node, change);
    } else if (change instanceof Change.Upset upset) {
      put(node, upset.present() ? ActWord.BREAK : ActWord.MEND)
          .put("disorder", JsonValue.spelling(upset.disorder()));
    } else if (change instanceof Change.CarriedOver) {
      put(node, ActWord.CARRY_OVER);
      BenchText.putChange(node, change);
    } else {
      throw new IllegalArgumentException("change = " + change + ": no word for it");
    }
  }

  private static void putMeter(ObjectNode node, Deed.HookOn hook) {
    if (!hook.meter().fuseIntact()
        || !hook.meter().alive()
        || !ShippedMeters.all().contains(hook.meter().model())) {
      throw new IllegalArgumentException("meter = " + hook.meter() + ": a whole, shipped one");
    }
    put(node, ActWord.METER_ON)
        .put("function", JsonValue.spelling(hook.function()))
        .put("leads", LeadWords.word(hook.hookUp()));
    if (!hook.meter().model().equals(ShippedMeters.service())) {
      node.put("meter", hook.meter().model().name());
    }
  }
}
