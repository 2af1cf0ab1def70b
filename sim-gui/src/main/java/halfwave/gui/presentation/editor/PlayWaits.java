package halfwave.gui.presentation.editor;

import halfwave.display.DisplayUnit;
import halfwave.display.QuantityText;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Knob;
import halfwave.lesson.Play;
import halfwave.quantity.Dimension;
import halfwave.sequence.Act;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * The waiting in a play: before each of its acts, and after the last one. Less waiting brings all
 * that comes later nearer, and the end with it.
 */
public final class PlayWaits {

  /** What a recorder needs to see one act before the next one comes (ms). */
  public static final long SHORT_MILLIS = 2000;

  private PlayWaits() {}

  /** Places of the acts in the order of their times. */
  private static List<Integer> order(Play play) {
    return IntStream.range(0, play.acts().size())
        .boxed()
        .sorted(Comparator.comparingLong(k -> play.acts().get(k).timeMillis()))
        .toList();
  }

  /** How long nothing is done before an act; before the end where there is no such act (ms). */
  public static long waitMillis(Play play, int act) {
    List<Integer> order = order(play);
    int at = act < order.size() ? order.indexOf(act) : order.size();
    long before = at == 0 ? 0 : play.acts().get(order.get(at - 1)).timeMillis();
    return end(play, act) - before;
  }

  private static long end(Play play, int act) {
    return act < play.acts().size() ? play.acts().get(act).timeMillis() : play.lengthMillis();
  }

  /** The same as it is typed, in seconds. */
  public static String typed(Play play, int act, Wording words) {
    QuantityText numbers = words.sentences().quantities();
    long millis = waitMillis(play, act);
    int decimals = millis % 1000 == 0 ? 0 : millis % 100 == 0 ? 1 : 3;
    return numbers.fixed(millis / 1000.0, DisplayUnit.SECOND, decimals);
  }

  /** The play with the waiting that was typed; nothing where that is none. */
  public static Optional<Play> with(Play play, int act, String typed, Wording words) {
    OptionalDouble seconds = Knob.read(typed, Dimension.TIME, words);
    long millis = seconds.isPresent() ? Math.round(seconds.getAsDouble() * 1000) : -1;
    long least = leastMillis(play, act);
    return millis >= least && millis <= mostMillis(play, act)
        ? Optional.of(with(play, act, millis))
        : Optional.empty();
  }

  /** What waiting may be. */
  public static String range(Play play, int act, Wording words) {
    QuantityText numbers = words.sentences().quantities();
    return words.text(
        "knob.range", numbers.time(leastMillis(play, act)), numbers.time(mostMillis(play, act)));
  }

  /** The end comes after the last act. */
  private static long leastMillis(Play play, int act) {
    return act < play.acts().size() || play.acts().isEmpty() ? 0 : 1;
  }

  private static long mostMillis(Play play, int act) {
    return PlayNumbers.LONGEST_MILLIS - play.lengthMillis() + waitMillis(play, act);
  }

  /** The play with other waiting before an act. */
  private static Play with(Play play, int act, long millis) {
    long later = millis - waitMillis(play, act);
    List<Integer> order = order(play);
    int from = act < order.size() ? order.indexOf(act) : order.size();
    List<Act> acts = new ArrayList<>(play.acts());
    for (int at = from; at < order.size(); at++) {
      Act moved = acts.get(order.get(at));
      acts.set(order.get(at), new Act(moved.timeMillis() + later, moved.deed()));
    }
    return new Play(acts, play.lengthMillis() + later, play.speedRatio());
  }

  /** Whether there is waiting before an act that {@link #shortened} would cut. */
  public static boolean canShorten(Play play) {
    return !shortened(play).equals(play);
  }

  /** All waiting before acts cut to {@link #SHORT_MILLIS}; what comes after the last one stays. */
  public static Play shortened(Play play) {
    Play shorter = play;
    for (int act = 0; act < play.acts().size(); act++) {
      if (waitMillis(shorter, act) > SHORT_MILLIS) {
        shorter = with(shorter, act, SHORT_MILLIS);
      }
    }
    return shorter;
  }
}
