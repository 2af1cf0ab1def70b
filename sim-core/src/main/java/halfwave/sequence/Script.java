package halfwave.sequence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * What is done to an appliance, and when.
 *
 * @param lengthMillis how long it lasts (ms); above zero
 * @param board name of the shipped board it is for, or null: the standard one
 * @param seed seed of all chance, or null: anyone's choice
 * @param acts what is done, in any order of time; all before the end
 */
public record Script(
    long lengthMillis, @Nullable String board, @Nullable Long seed, List<Act> acts) {

  private static final Act POWER = new Act(0, new Deed.Supply(true));
  private static final Act CALL = new Act(5000, new Deed.Call(true));

  /** Checks the times and takes a copy. */
  public Script {
    if (!(lengthMillis > 0)) {
      throw new IllegalArgumentException("lengthMillis = " + lengthMillis + ": above zero");
    }
    acts = List.copyOf(acts);
    for (Act act : acts) {
      if (!(act.timeMillis() < lengthMillis)) {
        throw new IllegalArgumentException("acts: " + act + " is not before " + lengthMillis);
      }
    }
  }

  /**
   * The same acts, and before them a plain start where they leave it out: power at once, unless the
   * first thing done to the switch is to turn it on; a call after five seconds, unless the first
   * thing done to the thermostat is to call.
   */
  public static List<Act> withStart(List<Act> acts) {
    List<Act> all = new ArrayList<>();
    if (!beginsOn(acts, Deed.Supply.class, d -> ((Deed.Supply) d).on())) {
      all.add(POWER);
    }
    if (!beginsOn(acts, Deed.Call.class, d -> ((Deed.Call) d).on())) {
      all.add(CALL);
    }
    all.addAll(acts);
    return List.copyOf(all);
  }

  private static boolean beginsOn(
      List<Act> acts, Class<? extends Deed> kind, Predicate<Deed> isOn) {
    return acts.stream()
        .filter(a -> kind.isInstance(a.deed()))
        .min(Comparator.comparingLong(Act::timeMillis))
        .filter(a -> isOn.test(a.deed()))
        .isPresent();
  }
}
