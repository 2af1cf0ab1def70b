package halfwave.matching;

import halfwave.bench.Bench;
import halfwave.bench.Coat;
import halfwave.bench.RodPosition;
import halfwave.bench.Stages;
import halfwave.circuit.SteadyState;
import halfwave.instrument.Look;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterModel;
import halfwave.instrument.Shown;
import halfwave.quantity.RejectedValueException;
import halfwave.work.MeterTest;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What meters without error show for a set of coordinates; belongs to one thread. */
final class Predictor {

  /** Far above the solver's closure, far below where the laws bend. */
  private static final double STEP = 0.01;

  /** Wear takes longer steps: a film thinner than half of this does not cover the rod. */
  private static final double WEAR_STEP = 0.05;

  private record Hooked(MeterTest test, Setting setting, MeterModel meter) {}

  private final Bench start;
  private final List<Unknown> unknowns;

  /** Slot of everything that has the flame of the coordinates themselves. */
  private static final int SAME_FLAME = -1;

  /** A flame that is asked for again is still there. */
  private record Slot(RodPosition position, int flame) {}

  private final Map<Slot, Stages> stages = new HashMap<>();

  private double[] lastPlace = {};
  private List<Sight> lastSights = List.of();
  private double[] lastValues = {};

  private final Map<MeterModel, Meter> meters = new HashMap<>();

  /** The readings at one set of coordinates could not be had. */
  static final class Unreadable extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Matched why;

    private Unreadable(Matched why, Throwable cause) {
      super(cause);
      this.why = why;
    }

    Matched why() {
      return why;
    }
  }

  Predictor(Bench start, List<Unknown> unknowns) {
    this.start = start;
    this.unknowns = unknowns;
  }

  /** The bench with those coordinates, before or after cleaning. */
  Bench bench(double[] u, boolean cleaned) {
    Bench bench = cleaned ? start.with(start.condition().withRodCoat(Coat.CLEAN)) : start;
    for (int k = 0; k < u.length; k++) {
      Unknown unknown = unknowns.get(k);
      bench = unknown.on(bench, unknown.si(start, u[k]), cleaned);
    }
    return bench;
  }

  /** All readings, in SI. */
  double[] values(double[] u, List<Sight> sights) {
    if (!(Arrays.equals(u, lastPlace) && sights.equals(lastSights))) {
      lastValues = values(bench(u, false), bench(u, true), sights, SAME_FLAME);
      lastPlace = u.clone();
      lastSights = sights;
    }
    return lastValues.clone();
  }

  private double[] values(Bench found, Bench cleaned, List<Sight> sights, int flame) {
    Map<Hooked, Shown> shown = new HashMap<>();
    double[] values = new double[sights.size()];
    for (int n = 0; n < values.length; n++) {
      Sight sight = sights.get(n);
      Bench bench = sight.setting().cleaned() ? cleaned : found;
      Hooked hooked = new Hooked(sight.kind().test(), sight.setting(), sight.meter());
      values[n] = sight.kind().si(shown.computeIfAbsent(hooked, h -> shown(bench, sight, flame)));
    }
    return values;
  }

  private Shown shown(Bench bench, Sight sight, int flame) {
    Bench placed;
    try {
      placed = sight.setting().placed(bench);
    } catch (RejectedValueException e) {
      throw new Unreadable(new Matched.Impossible(sight, e), e);
    }
    Stages remembered =
        stages.computeIfAbsent(
            new Slot(placed.condition().rodPosition(), flame), s -> new Stages());
    Meter meter = meters.computeIfAbsent(sight.meter(), m -> Meter.fresh(m.faultless()));
    Shown shown = sight.kind().test().of(remembered, placed, meter, Look.settled(0)).shown();
    if (shown instanceof Shown.Unsolved unsolved) {
      SteadyState.Failed reason = unsolved.reason();
      throw new Unreadable(new Matched.Unsolved(sight, reason), new ArithmeticException());
    }
    return shown;
  }

  /** Change of all readings with one coordinate, by one small step into its range. */
  double[] slopes(double[] u, double[] here, int k, List<Sight> sights) {
    double[] aside = u.clone();
    double size = unknowns.get(k).isWear() ? WEAR_STEP : STEP;
    double step = u[k] + size <= unknowns.get(k).most() ? size : -size;
    aside[k] += step;
    int flame = unknowns.get(k).changesFlame() ? k : SAME_FLAME;
    double[] there = values(bench(aside, false), bench(aside, true), sights, flame);
    for (int n = 0; n < there.length; n++) {
      there[n] = (there[n] - here[n]) / step;
    }
    return there;
  }

  /** Change of all readings with the logarithm of the ion source: what flicker moves. */
  double[] flickerSlopes(double[] u, double[] here, List<Sight> sights) {
    double[] there =
        values(stronger(bench(u, false)), stronger(bench(u, true)), sights, unknowns.size());
    for (int n = 0; n < there.length; n++) {
      there[n] = (there[n] - here[n]) / STEP;
    }
    return there;
  }

  private static Bench stronger(Bench bench) {
    return Unknown.ION_STRENGTH.on(bench, Unknown.ION_STRENGTH.si(bench, STEP), false);
  }
}
