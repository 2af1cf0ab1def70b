package halfwave.work;

import halfwave.bench.Bench;
import halfwave.bench.Trigger;
import halfwave.board.BoardOutputs;
import halfwave.board.StatusCode;
import halfwave.flame.FlameState;
import halfwave.quantity.Guard;
import java.util.EnumSet;
import java.util.Set;

/**
 * A furnace at an instant, as whoever stands before it finds it.
 *
 * @param bench with what comes and goes
 * @param triggers what is bringing out faults now
 * @param supply whether the furnace switch is on
 * @param litCount burners that burn, counted from the igniter
 * @param code what the status light says
 * @param outputs what the board switches on
 * @param flame what the flame of the bench looks like where it burns
 * @param draftProved whether the draft holds a working pressure switch closed
 * @param overheated whether heat holds a working limit open
 */
public record Scene(
    Bench bench,
    Set<Trigger> triggers,
    boolean supply,
    int litCount,
    StatusCode code,
    BoardOutputs outputs,
    FlameState flame,
    boolean draftProved,
    boolean overheated) {

  /** Checks the domain and takes a copy. */
  public Scene {
    Guard.inRange("litCount", litCount, 0, bench.design().burnerCount());
    triggers = Set.copyOf(triggers);
  }

  /** The bench as it is under the present triggers. */
  Bench now() {
    return bench.under(triggers);
  }

  /** The bench as it is when one more thing brings faults out. */
  Bench nowWith(Trigger trigger) {
    Set<Trigger> more = EnumSet.of(trigger);
    more.addAll(triggers);
    return bench.under(more);
  }

  /** The bench as it is when one thing less does. */
  Bench nowWithout(Trigger trigger) {
    Set<Trigger> less = EnumSet.noneOf(Trigger.class);
    less.addAll(triggers);
    less.remove(trigger);
    return bench.under(less);
  }

  /** Whether something burns. */
  boolean burning() {
    return litCount > 0 && flame.burning();
  }
}
