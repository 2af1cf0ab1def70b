package halfwave.explain;

import halfwave.bench.Bench;
import halfwave.bench.BenchFlame;
import halfwave.bench.Readings;
import halfwave.bench.Stages;
import halfwave.circuit.Solved;
import halfwave.circuit.SteadyState;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Everything there is to say about a bench at rest: readings, where the volts go, what the signal
 * depends on, and the account in words.
 *
 * @param bench the bench
 * @param flame its flame
 * @param readings what a meter shows
 * @param state the undisturbed circuit's periodic steady state, or why there is none
 * @param rodPositive where the volts go while the rod is positive; null where nothing was solved
 * @param rodNegative where they go while it is negative; null where nothing was solved
 * @param elasticities what the DC depends on, the strongest first
 */
public record BenchAnswer(
    Bench bench,
    BenchFlame flame,
    Readings readings,
    SteadyState state,
    @Nullable VoltageLadder rodPositive,
    @Nullable VoltageLadder rodNegative,
    List<Elasticity> elasticities) {

  /** Solves and explains a bench. */
  public static BenchAnswer of(Bench bench) {
    Stages stages = new Stages();
    BenchFlame flame = stages.flame(bench);
    Readings readings = Readings.of(stages, bench);
    SteadyState state = Readings.undisturbed(stages, bench);
    Solved solved = state instanceof Solved s ? s : null;
    return new BenchAnswer(
        bench,
        flame,
        readings,
        state,
        solved == null ? null : VoltageLadder.rodPositive(solved, flame.path()),
        solved == null ? null : VoltageLadder.rodNegative(solved, flame.path()),
        Elasticity.all(stages, bench));
  }
}
