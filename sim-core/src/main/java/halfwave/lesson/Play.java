package halfwave.lesson;

import halfwave.sequence.Act;
import halfwave.sequence.Moment;
import java.util.List;

/**
 * A stretch of time to be played, wherever it begins.
 *
 * @param acts what is done meanwhile, at times from its beginning, all before its end
 * @param lengthMillis how long it lasts in the furnace's time (ms); zero: nothing is played
 * @param speedRatio seconds of the furnace in a second of the audience (1); from {@value
 *     #SLOWEST_RATIO} to {@value #FASTEST_RATIO}
 */
public record Play(List<Act> acts, long lengthMillis, double speedRatio) {

  /** A ten-second trial lasts longer than anyone listens. */
  public static final double SLOWEST_RATIO = 0.05;

  /** A week in ten minutes. */
  public static final double FASTEST_RATIO = 1000;

  /** No time passes. */
  public static final Play NOTHING = new Play(List.of(), 0, 1);

  /** Checks times and speed and takes a copy. */
  public Play {
    acts = List.copyOf(acts);
    if (!(lengthMillis >= 0)) {
      throw new IllegalArgumentException("lengthMillis = " + lengthMillis + ": zero or above");
    }
    if (!(speedRatio >= SLOWEST_RATIO && speedRatio <= FASTEST_RATIO)) {
      throw new IllegalArgumentException(
          "speedRatio = " + speedRatio + ": " + SLOWEST_RATIO + " to " + FASTEST_RATIO);
    }
    for (Act act : acts) {
      if (!(act.timeMillis() < lengthMillis)) {
        throw new IllegalArgumentException("acts: " + act + " is not before " + lengthMillis);
      }
    }
  }

  /** Whether time passes. */
  public boolean lasts() {
    return lengthMillis > 0;
  }

  /** The same where it begins at that moment. */
  public Stretch from(Moment start) {
    long begin = start.timeMillis();
    return new Stretch(
        start,
        begin + lengthMillis,
        acts.stream().map(a -> new Act(begin + a.timeMillis(), a.deed())).toList(),
        speedRatio);
  }
}
