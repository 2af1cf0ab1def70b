package halfwave.explain;

import halfwave.bench.Bench;
import halfwave.bench.Parameter;
import halfwave.bench.Stages;
import halfwave.circuit.Circuit;
import halfwave.circuit.Point;
import halfwave.explain.SweepRow.Failed;
import halfwave.explain.SweepRow.Impossible;
import halfwave.explain.SweepRow.Outcome;
import halfwave.explain.SweepRow.Taken;
import halfwave.instrument.MeterReading;
import halfwave.instrument.Microammeter;
import halfwave.instrument.Voltmeter;
import halfwave.quantity.Guard;
import halfwave.quantity.RejectedValueException;
import halfwave.quantity.RejectedValueException.Allowed;
import java.util.List;
import java.util.Optional;

/**
 * A bench with one or two of its parameters taken through a range, and what the meters show each
 * time.
 *
 * <pre>{@code
 * Sweep sweep = Sweep.of(bench, List.of(Axis.linear(Parameter.ROD_UP, -0.01, 0.01, 41)));
 * }</pre>
 *
 * @param bench the bench, with the values that do not change
 * @param axes one or two
 * @param rows one per combination; the last axis changes fastest
 */
public record Sweep(Bench bench, List<Axis> axes, List<SweepRow> rows) {

  /** Most rows of a sweep: about two minutes of work. */
  public static final int MOST_ROWS = 100_000;

  /** Takes copies. */
  public Sweep {
    axes = List.copyOf(axes);
    rows = List.copyOf(rows);
  }

  /** Is told how far a sweep is, and may end it. */
  @FunctionalInterface
  public interface Watch {

    /**
     * Called after each row, on the thread that sweeps.
     *
     * @param done rows that are done
     * @param all rows there will be
     * @return false to give the sweep up
     */
    boolean goOn(int done, int all);
  }

  /** The whole sweep. */
  public static Sweep of(Bench bench, List<Axis> axes) {
    return of(bench, axes, (done, all) -> true).orElseThrow();
  }

  /**
   * The sweep, unless the watch ends it.
   *
   * @param bench the bench, with the values that do not change
   * @param axes one or two, of different parameters, with at most {@link #MOST_ROWS} combinations
   * @param watch is told after each row
   * @return nothing if it was given up
   * @throws RejectedValueException naming {@code axes} or {@code count}
   */
  public static Optional<Sweep> of(Bench bench, List<Axis> axes, Watch watch) {
    check(axes);
    Axis first = axes.get(0);
    List<Double> outer = first.values();
    List<Double> inner = axes.size() == 2 ? axes.get(1).values() : List.of(Double.NaN);
    int all = outer.size() * inner.size();
    // what makes most stages anew changes least often; the order of the rows stays the same
    boolean swapped = axes.size() == 2 && stages(axes.get(1)) > stages(first);
    SweepRow[] rows = new SweepRow[all];
    Stages stages = new Stages();
    for (int n = 0; n < all; n++) {
      int o = swapped ? n % outer.size() : n / inner.size();
      int i = swapped ? n / outer.size() : n % inner.size();
      List<Double> values =
          axes.size() == 2 ? List.of(outer.get(o), inner.get(i)) : List.of(outer.get(o));
      rows[o * inner.size() + i] = new SweepRow(values, outcome(stages, bench, axes, values));
      if (!watch.goOn(n + 1, all)) {
        return Optional.empty();
      }
    }
    return Optional.of(new Sweep(bench, axes, List.of(rows)));
  }

  private static void check(List<Axis> axes) {
    Guard.inRange("axes", axes.size(), 1, 2);
    if (axes.size() == 2) {
      Parameter second = axes.get(1).parameter();
      if (axes.get(0).parameter() == second) {
        throw new RejectedValueException(
            "axes", second.id(), Allowed.CONSISTENT, Double.NaN, Double.NaN);
      }
      int most = MOST_ROWS / axes.get(0).count();
      Guard.inRange("count", axes.get(1).count(), Axis.LEAST_COUNT, most);
    }
  }

  /**
   * How many stages a change of that parameter makes anew, as an order: field, electrode, circuit.
   */
  private static int stages(Axis axis) {
    return switch (axis.parameter()) {
      case GAS_PRESSURE, PRIMARY_AIR, ION_STRENGTH, ORIFICE -> 2;
      case BURNER_ATTACHMENT,
          ROD_ACROSS,
          ROD_UP,
          ROD_ALONG,
          ROD_TURN,
          ROD_TILT,
          ROD_BEND,
          ROD_RADIUS,
          ROD_TEMPERATURE ->
          1;
      case SOURCE_VOLTS,
          SOURCE_OHMS,
          ROD_FILM,
          ROD_CRACKS,
          BURNER_SCALE,
          CONNECTOR,
          LEAD,
          INPUT_OFFSET,
          LEAKAGE,
          JUMPER,
          DEPOSIT,
          SENSE_SUPPLY,
          CABLE,
          GROUND,
          SILICON ->
          0;
    };
  }

  private static Outcome outcome(Stages stages, Bench bench, List<Axis> axes, List<Double> values) {
    Circuit circuit;
    try {
      Bench changed = bench;
      for (int k = 0; k < axes.size(); k++) {
        changed = axes.get(k).parameter().with(changed, values.get(k));
      }
      circuit = stages.circuit(changed);
    } catch (RejectedValueException impossible) {
      return new Impossible(impossible);
    }
    MeterReading series = Microammeter.SERVICE.read(circuit);
    MeterReading terminal = Voltmeter.HIGH_IMPEDANCE.read(circuit, Point.TERMINAL, Point.COMMON);
    if (series instanceof MeterReading.Amps amps && terminal instanceof MeterReading.Volts volts) {
      return new Taken(amps.meanAmps(), amps.alternatingRmsAmps(), volts.alternatingRmsVolts());
    }
    MeterReading.None none =
        (MeterReading.None) (series instanceof MeterReading.None ? series : terminal);
    return new Failed(none.reason());
  }
}
