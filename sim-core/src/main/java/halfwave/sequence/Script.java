package halfwave.sequence;

import java.util.ArrayList;
import java.util.List;
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
   * The same acts, and before them a plain start where none of them switches the power on or calls
   * for heat: power at once, the call five seconds later.
   */
  public static List<Act> withStart(List<Act> acts) {
    boolean starts = acts.stream().map(Act::deed).anyMatch(Script::starts);
    List<Act> all = new ArrayList<>(starts ? List.of() : List.of(POWER, CALL));
    all.addAll(acts);
    return List.copyOf(all);
  }

  private static boolean starts(Deed deed) {
    return (deed instanceof Deed.Supply supply && supply.on())
        || (deed instanceof Deed.Call call && call.on());
  }
}
