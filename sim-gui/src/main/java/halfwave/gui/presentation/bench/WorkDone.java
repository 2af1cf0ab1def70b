package halfwave.gui.presentation.bench;

import halfwave.bench.Disorder;
import halfwave.gui.presentation.Wording;
import halfwave.sequence.Moment;
import halfwave.work.Caution;
import halfwave.work.Handling;
import halfwave.work.Work;
import org.jspecify.annotations.Nullable;

/**
 * Something that was done at the furnace.
 *
 * @param timeMillis when, on the clock of the bench (ms)
 * @param work what
 * @param found what was found, or null where nothing was looked for
 * @param danger what should have been minded, or null: it was safe
 */
public record WorkDone(
    long timeMillis, Work work, @Nullable Enum<?> found, @Nullable Caution danger) {

  /** What should have been minded before work on a bench as it stands; a mishap minds nothing. */
  static @Nullable Caution danger(Work work, Moment now) {
    boolean gas = !now.bench().condition().appliance().has(Disorder.GAS_SHUT);
    boolean live = !(work instanceof Handling) && work.stillOn(now.supply(), gas).isPresent();
    return live ? Caution.OFF_BEFORE_OPENING : null;
  }

  /** What was done and found; where it was not safe, that too. */
  String said(Wording words) {
    return said(words.heading((Enum<?>) work), words);
  }

  /** The same, where nothing was looked for in those words. */
  String said(String bare, Wording words) {
    Enum<?> seen = found;
    String text =
        seen == null
            ? bare
            : words.text("work.found", words.heading((Enum<?>) work), words.sentences().name(seen));
    Caution minded = danger;
    return minded == null ? text : words.text("work.unsafe", text, words.heading(minded));
  }
}
