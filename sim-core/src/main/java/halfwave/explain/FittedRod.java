package halfwave.explain;

import halfwave.bench.Bench;
import halfwave.bench.BenchCircuit;
import halfwave.bench.BenchFlame;
import halfwave.bench.RodPosition;
import halfwave.bench.Stages;
import halfwave.circuit.Solved;
import halfwave.circuit.SteadyState;
import halfwave.sequence.Moment;
import halfwave.sequence.Subjects;
import org.jspecify.annotations.Nullable;

/**
 * What would flow if the rod stood where it was fitted, all else alike: what a rod in another place
 * is compared with.
 *
 * @param lengthMeters how much of it would be in the flame (m)
 * @param positiveAmps crest of the flame current while it would be positive (A)
 * @param negativeAmps crest while it would be negative (A)
 * @param dcAmps DC that would leave the board (A)
 */
public record FittedRod(
    double lengthMeters, double positiveAmps, double negativeAmps, double dcAmps) {

  /** The comparison for a moment; null where the rod stands where it was fitted. */
  static @Nullable FittedRod of(Stages stages, Moment moment) {
    RodPosition position = moment.bench().condition().rodPosition();
    if (position.equals(RodPosition.FITTED)) {
      return null;
    }
    Moment there = moment.seenWith(moment.bench().condition().withRodPosition(RodPosition.FITTED));
    Bench bench = Subjects.bench(there);
    BenchFlame flame = stages.flame(bench);
    SteadyState state = SteadyState.of(MomentAnswer.loaded(there, BenchCircuit.of(bench, flame)));
    return flame.burning() && state instanceof Solved solved
        ? new FittedRod(
            lengthMeters(bench, flame),
            Math.abs(VoltageLadder.rodPositive(solved, flame.path()).flameAmps()),
            Math.abs(VoltageLadder.rodNegative(solved, flame.path()).flameAmps()),
            MomentAnswer.senseAmps(state))
        : null;
  }

  /** How much of a rod is in the flame (m). */
  static double lengthMeters(Bench bench, BenchFlame flame) {
    return BenchCircuit.lengthInFlameMeters(bench.rod(), flame.field());
  }
}
