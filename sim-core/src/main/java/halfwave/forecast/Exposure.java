package halfwave.forecast;

import halfwave.bench.Bench;
import halfwave.bench.BenchCircuit;
import halfwave.bench.RodPosition;
import halfwave.bench.Stages;
import halfwave.flame.IonField;
import java.util.HashMap;
import java.util.Map;

/**
 * Share of the flame that reaches a rod where it stands, over where it was fitted: length in flame
 * over length in flame [practice, no source]. Films grow in proportion.
 */
final class Exposure {

  /** A rod that has come closer to the flame still sees no more than twice as much of it. */
  private static final double MOST_RATIO = 2;

  private final Stages stages = new Stages();
  private final Map<RodPosition, Double> known = new HashMap<>();

  /** The share (1) on benches that differ in nothing but the rod and its place. */
  double ratio(Bench bench) {
    return known.computeIfAbsent(bench.condition().rodPosition(), p -> computed(bench));
  }

  private double computed(Bench bench) {
    IonField field = stages.flame(bench).field();
    double usual = BenchCircuit.lengthInFlameMeters(bench.design().rod(), field);
    double now = BenchCircuit.lengthInFlameMeters(bench.rod(), field);
    return usual == 0 ? 1 : Math.min(MOST_RATIO, now / usual);
  }
}
