package halfwave.diagnosis;

import halfwave.bench.Bench;
import halfwave.bench.BenchCircuit;
import halfwave.bench.BenchFlame;
import halfwave.bench.Disorder;
import halfwave.bench.Stages;
import halfwave.circuit.Circuit;
import halfwave.circuit.Part;
import halfwave.circuit.Point;
import halfwave.evidence.HeatingCall;
import halfwave.instrument.MeterReading;
import halfwave.instrument.Microammeter;
import halfwave.instrument.Voltmeter;
import halfwave.sequence.Moment;
import halfwave.sequence.Scenes;
import halfwave.work.Finding;
import halfwave.work.Recollection;
import halfwave.work.Scene;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What every check finds on a bench in the course of a heating call. The call may be that of
 * another bench with the same fault: what the board did and when is then taken from there, all else
 * from the bench itself.
 */
public final class Appearance {

  private final Stages stages = new Stages();
  private final Bench bench;
  private final HeatingCall call;
  private final Finding sinceWhen;

  /** The scene of each occasion: all looks at one moment see the same flame. */
  private final Map<Occasion, Scene> scenes = new EnumMap<>(Occasion.class);

  /**
   * Prepares it.
   *
   * @param bench the bench as it is
   * @param call its heating call, or that of a bench like it
   */
  public Appearance(Bench bench, HeatingCall call) {
    this(bench, call, Recollection.sinceWhen(bench.condition()));
  }

  /** For a bench whose customer remembers something else than its condition shows. */
  Appearance(Bench bench, HeatingCall call, Finding sinceWhen) {
    this.bench = bench;
    this.call = call;
    this.sinceWhen = sinceWhen;
  }

  /** The heating call it was prepared with. */
  public HeatingCall call() {
    return call;
  }

  List<Outcome> of(List<Check> checks) {
    return checks.stream().map(this::outcome).toList();
  }

  /** What a check finds. */
  public Outcome outcome(Check check) {
    if (check instanceof Check.Call) {
      return new Outcome.Found(call.course());
    } else if (check instanceof Check.Light) {
      return new Outcome.Found(call.code());
    } else if (check.remembered()) {
      return new Outcome.Found(sinceWhen);
    } else if (check instanceof Check.Looked looked) {
      Optional<Moment> moment = looked.occasion().in(call);
      return moment.isEmpty()
          ? new Outcome.NotReached()
          : new Outcome.Found(
              looked
                  .look()
                  .at(scenes.computeIfAbsent(looked.occasion(), o -> scene(moment.get()))));
    } else if (check instanceof Check.Read read) {
      return read.occasion().in(call).map(m -> read(read, m)).orElse(new Outcome.NotReached());
    }
    throw new IllegalStateException("no outcome of " + check);
  }

  private Scene scene(Moment moment) {
    Scene there = Scenes.of(stages, moment);
    return new Scene(
        bench,
        there.triggers(),
        there.supply(),
        there.litCount(),
        there.code(),
        there.outputs(),
        stages.flame(bench.under(there.triggers())).field().sheets().state(),
        there.draftProved(),
        there.overheated());
  }

  private Outcome read(Check.Read read, Moment moment) {
    Circuit circuit = circuit(moment, read.test().needsFlame());
    MeterReading reading =
        switch (read.test()) {
          case SERIES_CURRENT -> Microammeter.SERVICE.read(circuit);
          case TERMINAL_VOLTS, TERMINAL_VOLTS_FLAME_OUT ->
              Voltmeter.HIGH_IMPEDANCE.read(circuit, Point.TERMINAL, Point.COMMON);
          case TERMINAL_VOLTS_LEAD_OFF ->
              Voltmeter.HIGH_IMPEDANCE.read(
                  circuit.without(Part.CONNECTOR), Point.TERMINAL, Point.COMMON);
        };
    if (reading instanceof MeterReading.Amps amps) {
      return new Outcome.Amps(amps.meanAmps(), amps.alternatingRmsAmps());
    } else if (reading instanceof MeterReading.Volts volts) {
      return new Outcome.Volts(volts.alternatingRmsVolts());
    }
    // no solution, no prediction
    return read.current()
        ? new Outcome.Amps(Double.NaN, Double.NaN)
        : new Outcome.Volts(Double.NaN);
  }

  private Circuit circuit(Moment moment, boolean flame) {
    Bench now = bench.under(moment.triggers());
    double kelvin = Math.max(280, moment.furnace().rodKelvin());
    now = now.with(now.condition().withRodKelvin(kelvin));
    if (now.condition().appliance().has(Disorder.DOOR_OPEN)) {
      now = now.with(now.condition().withAppliance(now.condition().appliance().withSenseSupply(0)));
    }
    BenchFlame burning = stages.flame(now);
    boolean atRod = flame && moment.furnace().growthRatio() > 0;
    return atRod ? BenchCircuit.of(now, burning) : BenchCircuit.withoutFlame(now, burning);
  }
}
