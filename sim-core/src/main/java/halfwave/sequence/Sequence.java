package halfwave.sequence;

import java.util.Comparator;
import java.util.List;

/**
 * Plays time. An instance remembers the currents it has computed and belongs to one thread; a fresh
 * one gives the same answers.
 *
 * <pre>{@code
 * Moment cold = Moment.cold(ShippedBenches.standard(), ShippedBoards.all().get(0), 1);
 * Segment start = new Sequence().advance(cold, 60_000, List.of(new Act(0, new Deed.Supply(true))));
 * }</pre>
 */
public final class Sequence {

  /** Time between two looks at what is physical (ms). */
  public static final long PACE_MILLIS = 20;

  private final SenseCurrents currents = new SenseCurrents();

  /**
   * Lets time pass.
   *
   * @param from where to begin
   * @param untilMillis where to end (ms); not before the beginning
   * @param acts what is done meanwhile; those at one instant are done in their order
   * @return what happened from the first instant up to, not including, the last
   * @throws IllegalArgumentException if an act lies outside the stretch
   */
  public Segment advance(Moment from, long untilMillis, List<Act> acts) {
    if (!(untilMillis >= from.timeMillis())) {
      throw new IllegalArgumentException(
          "untilMillis = " + untilMillis + ": at least " + from.timeMillis());
    }
    for (Act act : acts) {
      if (!(act.timeMillis() >= from.timeMillis() && act.timeMillis() < untilMillis)) {
        throw new IllegalArgumentException(
            "acts: " + act + " is not from " + from.timeMillis() + " to " + untilMillis);
      }
    }
    List<Act> ordered = acts.stream().sorted(Comparator.comparingLong(Act::timeMillis)).toList();
    return new Run(currents, from).until(untilMillis, ordered);
  }
}
