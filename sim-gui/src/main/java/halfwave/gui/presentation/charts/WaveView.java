package halfwave.gui.presentation.charts;

import halfwave.circuit.Part;
import halfwave.circuit.Point;
import halfwave.circuit.Solved;
import halfwave.display.DisplayUnit;
import halfwave.display.QuantityText;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.State;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One cycle of the mains in the sense circuit: a voltage, and the current of the flame.
 *
 * @param time the axis across (ms)
 * @param volts the upright axis of the voltage
 * @param amps the upright axis of the current (µA)
 * @param voltage the voltage
 * @param current the flame current, its sign positive from rod to burner
 * @param healthyVoltage the same voltage on the healthy bench, or null where it is not known or no
 *     different
 * @param healthyCurrent the flame current there, or null
 * @param mean height of the mean on the axis of the current
 * @param meanWords the mean, and what it is good for
 * @param summary the chart in a sentence
 * @param spoken the same for who hears the screen
 * @param samples what was computed, in display units
 */
public record WaveView(
    ChartAxis time,
    ChartAxis volts,
    ChartAxis amps,
    Trace voltage,
    Trace current,
    @Nullable Trace healthyVoltage,
    @Nullable Trace healthyCurrent,
    double mean,
    String meanWords,
    String summary,
    String spoken,
    Samples samples) {

  /** Which voltage is shown. */
  public enum Tap {
    /** The ideal source inside the board. */
    SOURCE("wave.tap-source", Point.EMF, Point.COMMON),
    /** Where the sense lead joins the board. */
    TERMINAL("wave.tap-terminal", Point.TERMINAL, Point.COMMON),
    /** Across flame and films. */
    ROD_TO_BURNER("wave.tap-rod-to-burner", Point.ROD, Point.CHASSIS);

    private final String key;
    private final Point from;
    private final Point to;

    Tap(String key, Point from, Point to) {
      this.key = key;
      this.from = from;
      this.to = to;
    }

    double[] volts(Solved solved) {
      return closed(solved.voltageVolts(from, to));
    }

    /** Its name. */
    public String name(Wording words) {
      return words.text(key);
    }
  }

  /**
   * What was computed; the last point repeats the first, one cycle on.
   *
   * @param millis times (ms)
   * @param volts the voltage (V)
   * @param microamps the flame current (µA)
   */
  public record Samples(double[] millis, double[] volts, double[] microamps) {}

  /** What is less apart than this share of an axis looks the same. */
  private static final double SAME = 0.015;

  private static final double LEAST_VOLTS = 10;
  private static final double LEAST_MICROAMPS = 1;

  /**
   * The view of a state.
   *
   * @param state the state
   * @param healthy the healthy bench, or null while it is not known
   * @param tap which voltage
   * @param words the words
   * @param columns how many points across can be told apart
   * @return nothing where the circuit has no steady state
   */
  public static @Nullable WaveView of(
      State state, @Nullable Healthy healthy, Tap tap, Wording words, int columns) {
    if (!(state.readout().steady() instanceof Solved solved)) {
      return null;
    }
    Samples now = samples(solved, tap, state.moment().furnace().growthRatio() > 0);
    Solved other = healthy != null && healthy.steady() instanceof Solved h ? h : null;
    Samples ghost = other == null ? null : samples(other, tap, true);
    QuantityText numbers = words.sentences().quantities();
    double cycle = now.millis[now.millis.length - 1];
    ChartAxis time = ChartAxis.linear(words.text("wave.time"), 0, cycle, 6, numbers);
    ChartAxis volts =
        upright(
            words.text("chart.axis", tap.name(words), DisplayUnit.VOLT.symbol()),
            LEAST_VOLTS,
            numbers,
            now.volts,
            ghost == null ? now.volts : ghost.volts);
    ChartAxis amps =
        upright(
            words.text("chart.axis", words.text("wave.current"), DisplayUnit.MICROAMP.symbol()),
            LEAST_MICROAMPS,
            numbers,
            now.microamps,
            ghost == null ? now.microamps : ghost.microamps);
    double mean = solved.currentMeanAmps(Part.CONNECTOR);
    String meanText = numbers.fixed(mean, DisplayUnit.MICROAMP, 1);
    String summary =
        words.text(
            "wave.summary",
            numbers.fixed(state.readout().rodPositivePeakAmps(), DisplayUnit.MICROAMP, 1),
            numbers.fixed(state.readout().rodNegativePeakAmps(), DisplayUnit.MICROAMP, 1));
    return new WaveView(
        time,
        volts,
        amps,
        trace(time, volts, now.millis, now.volts, columns),
        trace(time, amps, now.millis, now.microamps, columns),
        ghost == null ? null : unlessSame(time, volts, ghost, ghost.volts, now.volts, columns),
        ghost == null
            ? null
            : unlessSame(time, amps, ghost, ghost.microamps, now.microamps, columns),
        amps.place(DisplayUnit.MICROAMP.fromSi(mean)),
        words.text("wave.mean", meanText),
        summary,
        words.text("wave.spoken", summary, meanText),
        now);
  }

  private static Samples samples(Solved solved, Tap tap, boolean lit) {
    double[] volts = tap.volts(solved);
    double[] millis = new double[volts.length];
    double[] microamps = new double[volts.length];
    double[] amps = lit ? closed(flameAmps(solved)) : microamps;
    for (int k = 0; k < millis.length; k++) {
      millis[k] = DisplayUnit.MILLISECOND.fromSi(k * solved.stepSeconds());
      microamps[k] = DisplayUnit.MICROAMP.fromSi(amps[k]);
    }
    return new Samples(millis, volts, microamps);
  }

  private static double[] flameAmps(Solved solved) {
    boolean star = solved.circuit().elements().stream().anyMatch(e -> e.part() == Part.ROD_SHEATH);
    return solved.currentAmps(star ? Part.ROD_SHEATH : Part.FLAME);
  }

  /** A cycle ends where the next begins. */
  private static double[] closed(double[] cycle) {
    double[] longer = Arrays.copyOf(cycle, cycle.length + 1);
    longer[cycle.length] = cycle[0];
    return longer;
  }

  private static ChartAxis upright(
      String title, double least, QuantityText numbers, double[] a, double[] b) {
    double low = -least;
    double high = least;
    for (double[] values : List.of(a, b)) {
      low = Math.min(low, Arrays.stream(values).min().orElse(low));
      high = Math.max(high, Arrays.stream(values).max().orElse(high));
    }
    return ChartAxis.rounded(title, low, high, 4, numbers);
  }

  private static Trace trace(ChartAxis across, ChartAxis up, double[] x, double[] y, int columns) {
    return Trace.reduced(across.places(x), up.places(y), columns);
  }

  private static @Nullable Trace unlessSame(
      ChartAxis time, ChartAxis up, Samples ghost, double[] there, double[] here, int columns) {
    double range = up.high() - up.low();
    return there.length == here.length && Trace.apart(there, here) < SAME * range
        ? null
        : trace(time, up, ghost.millis, there, columns);
  }

  /** What the curves say at a place, 0 to 1 of the cycle. */
  public Probe probe(double at, Wording words) {
    int last = samples.millis.length - 1;
    int k = (int) Math.max(0, Math.min(last, Math.round(at * last)));
    QuantityText numbers = words.sentences().quantities();
    return new Probe(
        time.place(samples.millis[k]),
        List.of(volts.place(samples.volts[k]), amps.place(samples.microamps[k])),
        words.text(
            "wave.probe",
            numbers.fixed(1e-3 * samples.millis[k], DisplayUnit.MILLISECOND, 1),
            numbers.fixed(samples.volts[k], DisplayUnit.VOLT, 1),
            numbers.fixed(1e-6 * samples.microamps[k], DisplayUnit.MICROAMP, 2)));
  }

  /** The numbers, for a spreadsheet. */
  public String table() {
    DataTable table = new DataTable(time.title(), volts.title(), amps.title());
    for (int k = 0; k < samples.millis.length; k++) {
      table.row(samples.millis[k], samples.volts[k], samples.microamps[k]);
    }
    return table.toString();
  }
}
