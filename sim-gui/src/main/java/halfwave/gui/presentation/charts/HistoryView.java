package halfwave.gui.presentation.charts;

import halfwave.circuit.Part;
import halfwave.circuit.Solved;
import halfwave.display.DisplayUnit;
import halfwave.display.QuantityText;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.History;
import halfwave.gui.presentation.bench.MeterView;
import halfwave.gui.presentation.bench.Standing;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.bench.WorkDone;
import halfwave.message.MessageKey;
import halfwave.sequence.Hooked;
import halfwave.sequence.Sample;
import halfwave.work.Look;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was done on this bench, and the board's flame signal over all of it.
 *
 * @param lines what was done, the latest first
 * @param unit the unit of time
 * @param time the axis across
 * @param amps the upright axis (µA)
 * @param signal the signal behind the board's filter
 * @param healthy height of the healthy signal; NaN where that is not known
 * @param pickUp height of the pick-up limit
 * @param dropOut height of the drop-out limit
 * @param pickUpWords the pick-up limit in words
 * @param dropOutWords the drop-out limit in words
 * @param summary the chart in a sentence
 * @param spoken the same for who hears the screen
 */
public record HistoryView(
    List<Line> lines,
    DisplayUnit unit,
    ChartAxis time,
    ChartAxis amps,
    Trace signal,
    double healthy,
    double pickUp,
    double dropOut,
    String pickUpWords,
    String dropOutWords,
    String summary,
    String spoken) {

  /**
   * Something that was done.
   *
   * @param at when, 0 to 1 of the axis; below zero where that is no longer recorded
   * @param clock the time
   * @param words what
   */
  public record Line(double at, String clock, String words) {}

  /** An act, before it has a place in a chart. */
  private record Done(long millis, String words) {}

  private static final double LEAST_MICROAMPS = 1;
  private static final long LEAST_MILLIS = 30_000;

  /**
   * The view of a state.
   *
   * @param state the state
   * @param healthy the healthy bench, or null while it is not known
   * @param words the words
   * @param columns how many points across can be told apart
   */
  public static HistoryView of(State state, @Nullable Healthy healthy, Wording words, int columns) {
    QuantityText numbers = words.sentences().quantities();
    List<Sample> samples = state.recording().samples();
    long until = Math.max(state.moment().timeMillis(), LEAST_MILLIS);
    long from = samples.isEmpty() ? 0 : Math.min(samples.get(0).timeMillis(), until - LEAST_MILLIS);
    DisplayUnit unit = until - from < 600_000 ? DisplayUnit.SECOND : DisplayUnit.MINUTE;
    ChartAxis time =
        ChartAxis.linear(
            ChartAxis.title(words.text("history.time"), unit, words),
            unit.fromSi(1e-3 * from),
            unit.fromSi(1e-3 * until),
            8,
            numbers);
    double[] at = new double[samples.size()];
    double[] microamps = new double[samples.size()];
    double low = 0;
    double steady = healthyMicroamps(healthy);
    var sensing = state.moment().settings().sensing();
    double high =
        Math.max(LEAST_MICROAMPS, 1.2 * DisplayUnit.MICROAMP.fromSi(sensing.pickUpAmps()));
    high = steady > high ? steady : high;
    for (int k = 0; k < at.length; k++) {
      at[k] = time.place(unit.fromSi(1e-3 * samples.get(k).timeMillis()));
      microamps[k] = DisplayUnit.MICROAMP.fromSi(samples.get(k).filteredAmps());
      low = Math.min(low, microamps[k]);
      high = Math.max(high, microamps[k]);
    }
    ChartAxis amps =
        ChartAxis.rounded(
            words.text("chart.axis", words.text("history.signal"), "µA"), low, high, 4, numbers);
    List<Line> lines =
        done(state, words).stream()
            .map(
                d ->
                    new Line(
                        time.place(unit.fromSi(1e-3 * d.millis)),
                        numbers.time(d.millis / 100 * 100),
                        d.words))
            .toList();
    String now = numbers.fixed(state.moment().filter().meanAmps(), DisplayUnit.MICROAMP, 1);
    String summary =
        lines.isEmpty()
            ? words.text("history.none", now)
            : words.text("history.summary", lines.size(), now);
    return new HistoryView(
        lines,
        unit,
        time,
        amps,
        Trace.reduced(at, amps.places(microamps), columns),
        amps.place(steady),
        amps.place(DisplayUnit.MICROAMP.fromSi(sensing.pickUpAmps())),
        amps.place(DisplayUnit.MICROAMP.fromSi(sensing.dropOutAmps())),
        words.text("board.pick-up", numbers.text(sensing.pickUpAmps(), DisplayUnit.MICROAMP, 2)),
        words.text("board.drop-out", numbers.text(sensing.dropOutAmps(), DisplayUnit.MICROAMP, 2)),
        summary,
        words.text("history.spoken", summary));
  }

  private static double healthyMicroamps(@Nullable Healthy healthy) {
    return healthy != null && healthy.steady() instanceof Solved solved
        ? DisplayUnit.MICROAMP.fromSi(solved.currentMeanAmps(Part.CONNECTOR))
        : Double.NaN;
  }

  /** Of a meter the function and the place matter, and both have to fit in the line. */
  private static String said(History.Entry entry, Standing after, Wording words) {
    Hooked hooked = after.moment().hooked();
    return entry.said().key() == MessageKey.ACT_HOOKS_ON && hooked != null
        ? words.text(
            "history.meter",
            words.text(MeterView.key(hooked.function())),
            MeterView.place(hooked.hookUp(), words))
        : words.sentences().sentence(entry.said());
  }

  /** Acts that can be undone, and looks, which change nothing; the latest first. */
  private static List<Done> done(State state, Wording words) {
    List<Done> all = new ArrayList<>();
    List<History.Entry> acts = state.history().done();
    for (int k = 0; k < acts.size(); k++) {
      History.Entry entry = acts.get(k);
      Standing after = state.history().outcome(k, state.standing());
      all.add(new Done(entry.standing().moment().timeMillis(), said(entry, after, words)));
    }
    for (WorkDone work : state.standing().work()) {
      // repairs and mishaps are acts as well
      if (work.work() instanceof Look) {
        String name = words.heading((Enum<?>) work.work());
        all.add(
            new Done(
                work.timeMillis(),
                work.found() == null
                    ? name
                    : words.text("work.found", name, words.sentences().name(work.found()))));
      }
    }
    all.sort(Comparator.comparingLong(Done::millis));
    List<Done> latestFirst = new ArrayList<>();
    for (Done done : all) {
      latestFirst.add(0, done);
    }
    return latestFirst;
  }

  /** The time and the signal at a place, 0 to 1 of the axis. */
  public Probe probe(double at, Wording words) {
    int nearest = -1;
    for (int k = 0; k < signal.at().length; k++) {
      boolean nearer =
          nearest < 0 || Math.abs(signal.at()[k] - at) < Math.abs(signal.at()[nearest] - at);
      nearest = nearer ? k : nearest;
    }
    if (nearest < 0) {
      return new Probe(at, List.of(amps.place(0)), "");
    }
    QuantityText numbers = words.sentences().quantities();
    double there = time.value(signal.at()[nearest]);
    double level = signal.levels()[nearest];
    return new Probe(
        signal.at()[nearest],
        List.of(level),
        words.text(
            "history.tip",
            numbers.fixed(unit.toSi(there), unit, 1),
            numbers.fixed(1e-6 * amps.value(level), DisplayUnit.MICROAMP, 2)));
  }

  /** Everything recorded since a time, for a spreadsheet. */
  public static String table(State state, Wording words, long fromMillis) {
    DataTable table =
        new DataTable(
            words.text("chart.axis", words.text("history.time"), "s"),
            words.text("chart.axis", words.text("history.signal"), "µA"),
            words.text("strip.inducer"),
            words.text("strip.gas-valve"),
            words.text("history.lit"),
            words.text("strip.blower"));
    for (Sample s : state.recording().samples()) {
      if (s.timeMillis() >= fromMillis) {
        table.row(
            1e-3 * s.timeMillis(),
            DisplayUnit.MICROAMP.fromSi(s.filteredAmps()),
            s.outputs().inducer() ? 1 : 0,
            s.outputs().mainValve() ? 1 : 0,
            s.litCount(),
            s.outputs().blower() ? 1 : 0);
      }
    }
    return table.toString();
  }
}
