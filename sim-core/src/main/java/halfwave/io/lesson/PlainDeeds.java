package halfwave.io.lesson;

import halfwave.bench.Bench;
import halfwave.bench.Change;
import halfwave.bench.Disorder;
import halfwave.bench.Parameter;
import halfwave.instrument.Meter;
import halfwave.quantity.RejectedValueException;
import halfwave.sequence.Deed;
import halfwave.sequence.Playback;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Deeds of a hand at the bench as files have words for them: what joins others becomes the number
 * that comes of it, a whole condition becomes its numbers, a used meter becomes a fresh one.
 */
public final class PlainDeeds {

  private PlainDeeds() {}

  /**
   * The same in words.
   *
   * @param before the bench on which it is done
   * @param deed what is done
   * @return deeds that do the same to that bench; nothing where files have no words for it
   */
  public static Optional<List<Deed>> of(Bench before, Deed deed) {
    if (DemonstrationText.says(deed)) {
      return Optional.of(List.of(deed));
    } else if (deed instanceof Deed.HookOn hook) {
      Deed fresh =
          new Deed.HookOn(Meter.fresh(hook.meter().model()), hook.function(), hook.hookUp());
      return DemonstrationText.says(fresh) ? Optional.of(List.of(fresh)) : Optional.empty();
    } else if (deed instanceof Deed.Alter || deed instanceof Deed.Become) {
      try {
        return byNumbers(before, Playback.done(before, deed));
      } catch (RejectedValueException e) {
        // one number after the other leads through a bench that cannot be
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  private static Optional<List<Deed>> byNumbers(Bench before, Bench after) {
    List<Deed> deeds = new ArrayList<>();
    Bench now = before;
    for (Parameter parameter : Parameter.values()) {
      double to = parameter.of(after);
      // asked of the bench on its way: one number may have moved another
      if (parameter.of(now) != to && parameter.accepts(to)) {
        now = add(deeds, now, Change.Turned.to(parameter, to));
      }
    }
    for (Disorder disorder : Disorder.values()) {
      boolean there = after.condition().appliance().has(disorder);
      if (now.condition().appliance().has(disorder) != there) {
        now = add(deeds, now, new Change.Upset(disorder, there));
      }
    }
    double carryOver = after.condition().appliance().carryOverSeconds();
    if (now.condition().appliance().carryOverSeconds() != carryOver) {
      now = add(deeds, now, new Change.CarriedOver(carryOver));
    }
    return now.equals(after) ? Optional.of(deeds) : Optional.empty();
  }

  private static Bench add(List<Deed> deeds, Bench now, Change change) {
    deeds.add(new Deed.Alter(change));
    return change.on(now);
  }
}
