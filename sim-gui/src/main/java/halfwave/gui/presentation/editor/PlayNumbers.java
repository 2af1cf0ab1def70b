package halfwave.gui.presentation.editor;

import halfwave.display.DisplayUnit;
import halfwave.display.QuantityText;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Knob;
import halfwave.lesson.Play;
import halfwave.quantity.Dimension;
import halfwave.sequence.Act;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Length and speed of a play as a person types them, and its acts. */
public final class PlayNumbers {

  /** Nobody plays more than a week (ms); files go no further. */
  static final long LONGEST_MILLIS = 604_800_000;

  private PlayNumbers() {}

  /** The length, in seconds. */
  public static String length(Play play, Wording words) {
    QuantityText numbers = words.sentences().quantities();
    int decimals = play.lengthMillis() % 1000 == 0 ? 0 : play.lengthMillis() % 100 == 0 ? 1 : 3;
    return numbers.fixed(play.lengthMillis() / 1000.0, DisplayUnit.SECOND, decimals);
  }

  /** The speed, as a multiple of real time. */
  public static String speed(Play play, Wording words) {
    return words.sentences().quantities().significant(play.speedRatio(), speedDigits(play));
  }

  private static int speedDigits(Play play) {
    double speed = play.speedRatio();
    return speed == Math.rint(speed) ? Math.max(1, Long.toString(Math.round(speed)).length()) : 3;
  }

  /**
   * The play with the length that was typed; nothing where that is none or too short for its acts.
   */
  public static Optional<Play> withLength(Play play, String typed, Wording words) {
    OptionalDouble seconds = Knob.read(typed, Dimension.TIME, words);
    long millis = seconds.isPresent() ? Math.round(seconds.getAsDouble() * 1000) : -1;
    return millis >= least(play) && millis <= LONGEST_MILLIS
        ? Optional.of(new Play(play.acts(), millis, play.speedRatio()))
        : Optional.empty();
  }

  /** What a length may be. */
  public static String lengths(Play play, Wording words) {
    QuantityText numbers = words.sentences().quantities();
    return words.text("knob.range", numbers.time(least(play)), numbers.time(LONGEST_MILLIS));
  }

  private static long least(Play play) {
    return play.acts().stream().mapToLong(a -> a.timeMillis() + 1).max().orElse(0);
  }

  /** The play at the speed that was typed; nothing where that is none. */
  public static Optional<Play> withSpeed(Play play, String typed, Wording words) {
    OptionalDouble read = Knob.read(typed.replace("×", "").strip(), Dimension.NUMBER, words);
    double speed = read.orElse(Double.NaN);
    return speed >= Play.SLOWEST_RATIO && speed <= Play.FASTEST_RATIO
        ? Optional.of(new Play(play.acts(), play.lengthMillis(), speed))
        : Optional.empty();
  }

  /** What a speed may be. */
  public static String speeds(Wording words) {
    QuantityText numbers = words.sentences().quantities();
    return words.text(
        "knob.range",
        numbers.significant(Play.SLOWEST_RATIO, 1),
        numbers.fixed(Play.FASTEST_RATIO, 0));
  }

  /** Without one of its acts. */
  public static Play without(Play play, int act) {
    List<Act> acts = new ArrayList<>(play.acts());
    acts.remove(act);
    return new Play(acts, play.lengthMillis(), play.speedRatio());
  }
}
