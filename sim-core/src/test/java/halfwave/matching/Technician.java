package halfwave.matching;

import halfwave.bench.Bench;
import halfwave.bench.BenchCircuit;
import halfwave.bench.BenchFlame;
import halfwave.bench.ShippedBenches;
import halfwave.bench.Stages;
import halfwave.circuit.Circuit;
import halfwave.circuit.Part;
import halfwave.flame.Flicker;
import halfwave.instrument.Figure;
import halfwave.instrument.Look;
import halfwave.instrument.Measuring;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterModel;
import halfwave.instrument.ShippedMeters;
import halfwave.instrument.Shown;
import halfwave.instrument.Subject;
import halfwave.instrument.Supply;
import halfwave.work.MeterTest;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.commons.math3.util.FastMath;

/**
 * Takes readings on benches whose numbers are known. It uses the multimeter itself, with its error,
 * its last digit and a flame that flickers, and nothing of what the fit assumes about them.
 */
final class Technician {

  static final MeterModel METER = ShippedMeters.service();

  private final Random random;
  private final Stages stages = new Stages();

  Technician(long seed) {
    random = new Random(seed);
  }

  /** Numbers as they are before any reading. */
  Map<Unknown, Double> drawn(List<Unknown> unknowns) {
    Map<Unknown, Double> u = new EnumMap<>(Unknown.class);
    for (Unknown unknown : unknowns) {
      double most = unknown.most();
      double drawn;
      do {
        drawn = random.nextGaussian() * unknown.widthRatio();
        drawn = unknown.isWear() ? Math.abs(drawn) : drawn;
      } while (Math.abs(drawn) > most);
      u.put(unknown, drawn);
    }
    return u;
  }

  /** Those readings on the standard bench with those numbers. */
  List<TakenReading> readings(Map<Unknown, Double> truth, List<Sight> sights) {
    List<Unknown> unknowns = List.copyOf(truth.keySet());
    double[] u = unknowns.stream().mapToDouble(truth::get).toArray();
    Predictor predictor = new Predictor(ShippedBenches.standard(), unknowns);
    List<TakenReading> taken = new ArrayList<>();
    for (Sight sight : sights) {
      Bench bench = sight.setting().placed(predictor.bench(u, sight.setting().cleaned()));
      taken.add(TakenReading.of(sight, read(sight.kind(), bench)));
    }
    return taken;
  }

  private double read(ReadingKind kind, Bench steady) {
    double flicker = random.nextGaussian() * Flicker.averagedRatio(METER.averagingSeconds());
    double strength = steady.design().flame().ionMultiplierRatio() * FastMath.exp(flicker);
    Bench bench =
        steady.with(steady.design().withFlame(steady.design().flame().withIonMultiplier(strength)));
    BenchFlame flame = stages.flame(bench);
    MeterTest test = kind.test();
    Circuit circuit =
        test.needsFlame() ? BenchCircuit.of(bench, flame) : BenchCircuit.withoutFlame(bench, flame);
    Circuit hooked =
        test == MeterTest.TERMINAL_VOLTS_LEAD_OFF ? circuit.without(Part.CONNECTOR) : circuit;
    Shown shown =
        Measuring.of(
                Meter.fresh(METER),
                kind.function(),
                test.hookUp(),
                new Subject(hooked, Supply.CORRECT, false, false),
                new Look(60, random.nextLong(), 60_000))
            .shown();
    Figure figure =
        shown instanceof Shown.Direct direct
            ? direct.figure()
            : ((Shown.Alternating) shown).figure();
    return ((Figure.Value) figure).quantity().si();
  }
}
