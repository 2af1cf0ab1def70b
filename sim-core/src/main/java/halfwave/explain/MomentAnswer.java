package halfwave.explain;

import halfwave.bench.Bench;
import halfwave.bench.BenchCircuit;
import halfwave.bench.BenchFlame;
import halfwave.bench.Disorder;
import halfwave.bench.Stages;
import halfwave.circuit.Circuit;
import halfwave.circuit.Part;
import halfwave.circuit.Solved;
import halfwave.circuit.SteadyState;
import halfwave.instrument.Look;
import halfwave.instrument.Measurement;
import halfwave.instrument.Measuring;
import halfwave.instrument.Subject;
import halfwave.sequence.Hooked;
import halfwave.sequence.MeterDisplay;
import halfwave.sequence.Moment;
import halfwave.sequence.Subjects;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Everything there is to say about a moment: the bench with the rod as warm and the flame as grown
 * as they are, and the meter that is on it. Where nothing burns, the circuits are those of the
 * flame that there would be: that is what the board waits for.
 *
 * @param moment the moment
 * @param bench the bench as it is then
 * @param flame its flame
 * @param lit whether that flame burns at the rod
 * @param powered whether there is voltage on the sense circuit
 * @param measured what the meter shows, if one is on
 * @param bare the circuit without a meter
 * @param loaded the circuit with the meter in it
 * @param rodPositive where the volts go, meter included, while the rod is positive; null where
 *     nothing was solved
 * @param rodNegative where they go while it is negative; null where nothing was solved
 * @param fitted the same with the rod where it was fitted; null where it stands there, or nothing
 *     burns
 * @param elasticities what the DC depends on, the strongest first; empty where nothing burns
 */
public record MomentAnswer(
    Moment moment,
    Bench bench,
    BenchFlame flame,
    boolean lit,
    boolean powered,
    Optional<Measurement> measured,
    SteadyState bare,
    SteadyState loaded,
    @Nullable VoltageLadder rodPositive,
    @Nullable VoltageLadder rodNegative,
    @Nullable FittedRod fitted,
    List<Elasticity> elasticities) {

  /** Takes a copy. */
  public MomentAnswer {
    elasticities = List.copyOf(elasticities);
  }

  /** Solves and explains a moment. */
  public static MomentAnswer of(Moment moment) {
    Stages stages = new Stages();
    Bench bench = Subjects.bench(moment);
    BenchFlame flame = stages.flame(bench);
    boolean lit = moment.furnace().growthRatio() > 0;
    boolean powered = moment.supply() && !bench.condition().appliance().has(Disorder.DOOR_OPEN);
    Circuit circuit = BenchCircuit.of(bench, flame);
    SteadyState bare = SteadyState.of(powered ? circuit : circuit.unpowered());
    Circuit load = loaded(moment, powered ? circuit : circuit.unpowered());
    SteadyState loaded = moment.hooked() == null ? bare : SteadyState.of(load);
    Solved solved = loaded instanceof Solved s && flame.burning() ? s : null;
    return new MomentAnswer(
        moment,
        bench,
        flame,
        lit,
        powered,
        MeterDisplay.at(moment),
        bare,
        loaded,
        solved == null ? null : VoltageLadder.rodPositive(solved, flame.path()),
        solved == null ? null : VoltageLadder.rodNegative(solved, flame.path()),
        lit && powered && solved != null ? FittedRod.of(stages, moment) : null,
        lit && powered ? Elasticity.all(stages, bench) : List.of());
  }

  static Circuit loaded(Moment moment, Circuit circuit) {
    Hooked hooked = moment.hooked();
    if (hooked == null) {
      return circuit;
    }
    if (hooked.opening()) {
      return circuit.without(Part.CONNECTOR);
    }
    Subject here = Subjects.at(moment);
    Subject burning = new Subject(circuit, here.supply(), here.sparking(), here.rodSparks());
    return Measuring.of(
            hooked.meter(),
            hooked.function(),
            hooked.hookUp(),
            burning,
            Look.settled(moment.seed()))
        .loaded();
  }

  /** DC that leaves the board in a circuit (A); zero where there is no solution. */
  static double senseAmps(SteadyState state) {
    double amps = state instanceof Solved solved ? solved.currentMeanAmps(Part.CONNECTOR) : 0;
    return Math.abs(amps) < Account.ROUNDING_AMPS ? 0 : amps;
  }

  /** AC that leaves it (A rms). */
  static double alternatingAmps(SteadyState state) {
    return state instanceof Solved solved ? solved.currentAlternatingRmsAmps(Part.CONNECTOR) : 0;
  }
}
