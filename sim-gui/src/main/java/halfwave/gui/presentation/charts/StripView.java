package halfwave.gui.presentation.charts;

import halfwave.board.Ignition;
import halfwave.board.Stage;
import halfwave.display.DisplayUnit;
import halfwave.display.QuantityText;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.State;
import halfwave.sequence.Event;
import halfwave.sequence.Sample;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The timeline of the last while, up to the present.
 *
 * @param stages what the board did, with names
 * @param lanes what was on, from top to bottom
 * @param signal the board's flame signal
 * @param flags what people did
 * @param ticks marks of time
 * @param now the present, 0 to 1 of the strip
 * @param spoken in words, for who hears the screen
 */
public record StripView(
    List<Bar> stages,
    List<Lane> lanes,
    Signal signal,
    List<Flag> flags,
    List<Tick> ticks,
    double now,
    String spoken) {

  /**
   * A stretch.
   *
   * @param from its beginning, 0 to 1 of the strip
   * @param until its end
   * @param name its name, or empty
   * @param brief the same where there is little room
   * @param level how much, 0 to 1
   * @param kind how it is drawn
   */
  public record Bar(
      double from, double until, String name, String brief, double level, Kind kind) {}

  /** How a stage is drawn. */
  public enum Kind {
    /** Nothing goes on. */
    IDLE,
    /** On the way to heat, or after it. */
    WAITING,
    /** Gas flows. */
    BURNING,
    /** Given up. */
    LOCKOUT
  }

  /**
   * Something that is on or off.
   *
   * @param name its name
   * @param flame whether it is drawn as flame
   * @param bars when it was on
   */
  public record Lane(String name, boolean flame, List<Bar> bars) {}

  /**
   * A curve.
   *
   * @param times places of its points, 0 to 1 of the strip
   * @param levels heights of its points, 0 to 1 of the scale
   * @param dropOut height of the drop-out limit
   * @param pickUp height of the pick-up limit
   * @param name its name with the unit
   * @param full what stands at the top of the scale
   * @param pickUpWords the pick-up limit in words
   * @param now the value now
   */
  public record Signal(
      double[] times,
      double[] levels,
      double dropOut,
      double pickUp,
      String name,
      String full,
      String pickUpWords,
      String now) {

    /** Whether the curve may run through a box: between two times, between two levels (0 to 1). */
    public boolean crosses(double from, double until, double low, double high) {
      boolean crosses = false;
      for (int k = 1; k < times.length; k++) {
        crosses |=
            times[k] >= from
                && times[k - 1] <= until
                && Math.max(levels[k - 1], levels[k]) >= low
                && Math.min(levels[k - 1], levels[k]) <= high;
      }
      return crosses;
    }
  }

  /**
   * Something that someone did.
   *
   * @param at when, 0 to 1 of the strip
   * @param words what
   */
  public record Flag(double at, String words) {}

  /**
   * A mark of time.
   *
   * @param at where, 0 to 1 of the strip
   * @param words what stands there
   */
  public record Tick(double at, String words) {}

  private static final double LEAST_FULL_AMPS = 4e-6;

  /**
   * The view of a state.
   *
   * @param state the state
   * @param words the words
   * @param spanMillis how much of the past is shown (ms)
   * @param columns how many points across make sense
   */
  public static StripView of(State state, Wording words, long spanMillis, int columns) {
    long end = Math.max(state.moment().timeMillis(), spanMillis);
    return new Maker(state, words, end - spanMillis, end, Math.max(2, columns)).make();
  }

  /** Makes a view of one stretch. */
  private static final class Maker {
    private final State state;
    private final Wording words;
    private final long from;
    private final long until;
    private final int columns;
    private final List<Sample> samples;

    Maker(State state, Wording words, long from, long until, int columns) {
      this.state = state;
      this.words = words;
      this.from = from;
      this.until = until;
      this.columns = columns;
      List<Sample> all = state.recording().samples();
      int first = all.size();
      while (first > 0 && all.get(first - 1).timeMillis() >= from) {
        first--;
      }
      // the sample before the stretch says how things stood at its beginning
      samples = all.subList(Math.max(0, first - 1), all.size());
    }

    StripView make() {
      boolean hot = state.moment().settings().ignition().hotSurface();
      boolean pilot = state.moment().settings().ignition() == Ignition.INTERMITTENT_PILOT;
      double count = state.moment().bench().design().burnerCount();
      List<Lane> lanes = new ArrayList<>();
      lanes.add(lane("strip.inducer", s -> s.outputs().inducer() ? 1 : 0));
      lanes.add(
          hot
              ? lane("strip.igniter", s -> s.outputs().igniter() ? 1 : 0)
              : lane("strip.spark", s -> s.outputs().spark() ? 1 : 0));
      if (pilot) {
        lanes.add(lane("strip.pilot-valve", s -> s.outputs().pilotValve() ? 1 : 0));
      }
      lanes.add(lane("strip.gas-valve", s -> s.outputs().mainValve() ? 1 : 0));
      lanes.add(new Lane(words.text("strip.flame"), true, bars(s -> s.litCount() / count)));
      lanes.add(lane("strip.blower", s -> s.outputs().blower() ? 1 : 0));
      return new StripView(
          stages(), lanes, signal(), flags(), ticks(), at(state.moment().timeMillis()), spoken());
    }

    private double at(long millis) {
      return Math.max(0, Math.min(1, (millis - from) / (double) (until - from)));
    }

    private long endOf(int sample) {
      return sample + 1 < samples.size()
          ? samples.get(sample + 1).timeMillis()
          : state.moment().timeMillis();
    }

    private Lane lane(String key, ToDoubleFunction<Sample> level) {
      return new Lane(words.text(key), false, bars(level));
    }

    private List<Bar> bars(ToDoubleFunction<Sample> level) {
      List<Bar> bars = new ArrayList<>();
      int k = 0;
      while (k < samples.size()) {
        double here = level.applyAsDouble(samples.get(k));
        int last = k;
        while (last + 1 < samples.size() && level.applyAsDouble(samples.get(last + 1)) == here) {
          last++;
        }
        if (here > 0) {
          bars.add(
              new Bar(
                  at(samples.get(k).timeMillis()), at(endOf(last)), "", "", here, Kind.BURNING));
        }
        k = last + 1;
      }
      return bars;
    }

    private List<Bar> stages() {
      List<Bar> bars = new ArrayList<>();
      int k = 0;
      while (k < samples.size()) {
        Stage stage = samples.get(k).stage();
        int last = k;
        while (last + 1 < samples.size() && samples.get(last + 1).stage() == stage) {
          last++;
        }
        bars.add(
            new Bar(
                at(samples.get(k).timeMillis()),
                at(endOf(last)),
                words.sentences().name(stage),
                words.sentences().brief(stage),
                1,
                kind(stage)));
        k = last + 1;
      }
      return bars;
    }

    private static Kind kind(Stage stage) {
      if (stage.lockout()) {
        return Kind.LOCKOUT;
      }
      if (stage == Stage.OFF || stage == Stage.STANDBY) {
        return Kind.IDLE;
      }
      return stage.gas() ? Kind.BURNING : Kind.WAITING;
    }

    /** At most one low and one high point per column. */
    private Signal signal() {
      double most = LEAST_FULL_AMPS;
      for (Sample s : samples) {
        most = Math.max(most, s.filteredAmps());
      }
      double full = most <= LEAST_FULL_AMPS ? LEAST_FULL_AMPS : Math.ceil(most * 1e6 / 2) * 2e-6;
      List<double[]> points = new ArrayList<>();
      int column = -1;
      int start = 0;
      for (int k = 0; k <= samples.size(); k++) {
        int here =
            k == samples.size() ? columns + 1 : (int) (at(samples.get(k).timeMillis()) * columns);
        if (here != column) {
          reduced(points, start, k, full);
          column = here;
          start = k;
        }
      }
      if (!samples.isEmpty()) {
        points.add(
            new double[] {
              at(state.moment().timeMillis()), level(state.moment().filter().meanAmps(), full)
            });
      }
      QuantityText numbers = words.sentences().quantities();
      var sensing = state.moment().settings().sensing();
      return new Signal(
          points.stream().mapToDouble(p -> p[0]).toArray(),
          points.stream().mapToDouble(p -> p[1]).toArray(),
          sensing.dropOutAmps() / full,
          sensing.pickUpAmps() / full,
          words.text("strip.signal"),
          numbers.text(full, DisplayUnit.MICROAMP, 2),
          words.text("strip.pick-up", numbers.text(sensing.pickUpAmps(), DisplayUnit.MICROAMP, 2)),
          numbers.fixed(state.moment().filter().meanAmps(), DisplayUnit.MICROAMP, 1));
    }

    private void reduced(List<double[]> points, int start, int end, double full) {
      int low = start;
      int high = start;
      for (int k = start; k < end; k++) {
        low = samples.get(k).filteredAmps() < samples.get(low).filteredAmps() ? k : low;
        high = samples.get(k).filteredAmps() > samples.get(high).filteredAmps() ? k : high;
      }
      for (int k = start; k < end; k++) {
        if (k == low || k == high || k == end - 1) {
          Sample s = samples.get(k);
          points.add(new double[] {at(s.timeMillis()), level(s.filteredAmps(), full)});
        }
      }
    }

    private static double level(double amps, double full) {
      return Math.max(-0.1, Math.min(1, amps / full));
    }

    private List<Flag> flags() {
      List<Flag> flags = new ArrayList<>();
      for (Event e : state.recording().events()) {
        if (e.subject() == Event.Subject.ACT && e.timeMillis() >= from) {
          flags.add(new Flag(at(e.timeMillis()), words.sentences().sentence(e.message())));
        }
      }
      return flags;
    }

    private List<Tick> ticks() {
      long[] steps = {1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600};
      long step = steps[steps.length - 1];
      for (int k = steps.length - 1; k >= 0; k--) {
        step = (until - from) / 1000 / steps[k] <= 7 ? steps[k] : step;
      }
      List<Tick> ticks = new ArrayList<>();
      long first = (from / 1000 + step - 1) / step * step;
      for (long t = first; t * 1000 <= until; t += step) {
        ticks.add(new Tick(at(t * 1000), clock(t)));
      }
      return ticks;
    }

    private String clock(long seconds) {
      QuantityText numbers = words.sentences().quantities();
      if (until < 600_000) {
        return numbers.fixed(seconds, DisplayUnit.SECOND, 0);
      }
      return seconds % 60 == 0
          ? numbers.fixed(seconds, DisplayUnit.MINUTE, 0)
          : numbers.fixed(seconds, DisplayUnit.MINUTE, 1);
    }

    private String spoken() {
      return words.text(
          "strip.spoken",
          words.sentences().quantities().time(state.moment().timeMillis() / 1000 * 1000),
          words.sentences().name(state.moment().board().stage()));
    }
  }
}
