package halfwave.sequence;

import halfwave.bench.Bench;
import halfwave.bench.Intermittent;
import halfwave.bench.Trigger;
import halfwave.quantity.RejectedValueException;
import halfwave.quantity.RejectedValueException.Allowed;
import halfwave.work.Work;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Plays long stretches of time in slices, so that nobody has to hold a week of samples at once, and
 * somebody can see how far it is or end it. The slices put together are the whole.
 */
public final class Playback {

  /** Length of a slice (ms): a fraction of a second of work. */
  public static final long SLICE_MILLIS = 300_000;

  private Playback() {}

  /** Is handed each slice. */
  @FunctionalInterface
  public interface Watch {

    /**
     * Called after each slice, on the thread that plays.
     *
     * @param slice what happened in it
     * @return false to give up
     */
    boolean goOn(Segment slice);
  }

  /**
   * An act that cannot be done.
   *
   * @param act which; null where already the bench cannot be
   * @param reason why
   */
  public record Impossible(@Nullable Act act, RejectedValueException reason) {}

  /**
   * Lets time pass.
   *
   * @param from where to begin
   * @param untilMillis where to end (ms)
   * @param acts what is done meanwhile
   * @param watch is handed each slice
   * @return the last moment; nothing if it was given up
   */
  public static Optional<Moment> play(Moment from, long untilMillis, List<Act> acts, Watch watch) {
    Sequence sequence = new Sequence();
    Moment now = from;
    while (now.timeMillis() < untilMillis) {
      long start = now.timeMillis();
      long end = Math.min(untilMillis, start + SLICE_MILLIS);
      List<Act> due =
          acts.stream().filter(a -> a.timeMillis() >= start && a.timeMillis() < end).toList();
      Segment slice = sequence.advance(now, end, due);
      now = slice.end();
      if (!watch.goOn(slice)) {
        return Optional.empty();
      }
    }
    return Optional.of(now);
  }

  /**
   * Does all acts in thought, to find out before time passes whether each of them can be done,
   * whatever fault comes or goes meanwhile.
   *
   * @return the first that cannot, or nothing
   */
  public static Optional<Impossible> impossible(Bench bench, List<Act> acts) {
    List<Act> ordered = acts.stream().sorted(Comparator.comparingLong(Act::timeMillis)).toList();
    Bench now = bench;
    try {
      everyState(now);
    } catch (RejectedValueException e) {
      return Optional.of(new Impossible(null, e));
    }
    for (Act act : ordered) {
      try {
        now = done(now, act.deed());
        everyState(now);
      } catch (RejectedValueException e) {
        return Optional.of(new Impossible(act, e));
      }
    }
    return Optional.empty();
  }

  /**
   * The bench after a deed.
   *
   * @throws RejectedValueException where the deed makes an impossible bench, or is work on a part
   *     that the bench lacks
   */
  public static Bench done(Bench bench, Deed deed) {
    if (deed instanceof Deed.Alter alter) {
      return alter.change().on(bench);
    } else if (deed instanceof Deed.Lurk lurk) {
      return bench.with(
          bench.condition().withAppliance(bench.condition().appliance().with(lurk.intermittent())));
    }
    return deed instanceof Deed.Become become
        ? bench.with(become.condition())
        : worked(bench, deed);
  }

  private static Bench worked(Bench bench, Deed deed) {
    if (deed instanceof Deed.PutRight right) {
      checkPossible("repair", right.repair(), bench);
      return right.repair().on(bench);
    } else if (deed instanceof Deed.Mishandle wrong) {
      checkPossible("handling", wrong.handling(), bench);
      return wrong.handling().on(bench);
    }
    return bench;
  }

  private static void checkPossible(String field, Work work, Bench bench) {
    if (!work.possibleAt(bench.design().ignition())) {
      throw new RejectedValueException(
          field, work.id(), Allowed.CONSISTENT, Double.NaN, Double.NaN);
    }
  }

  /** Is refused where the bench cannot be in some state of what comes and goes. */
  static void everyState(Bench bench) {
    List<Trigger> triggers =
        bench.condition().appliance().intermittents().stream()
            .map(Intermittent::trigger)
            .distinct()
            .toList();
    List<Set<Trigger>> subsets = new ArrayList<>(List.of(EnumSet.noneOf(Trigger.class)));
    for (Trigger trigger : triggers) {
      for (Set<Trigger> without : List.copyOf(subsets)) {
        Set<Trigger> with = EnumSet.copyOf(without);
        with.add(trigger);
        subsets.add(with);
      }
    }
    subsets.forEach(bench::under);
  }
}
