package halfwave.bench;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.circuit.Circuit;
import halfwave.circuit.Point;
import halfwave.circuit.SteadyState;
import halfwave.instrument.HookUp;
import halfwave.instrument.HookUp.Across;
import halfwave.instrument.HookUp.AcrossSupply;
import halfwave.instrument.HookUp.InSenseLead;
import halfwave.instrument.HookUp.WireInFlame;
import halfwave.instrument.LeadEnd;
import halfwave.instrument.Look;
import halfwave.instrument.Measurement;
import halfwave.instrument.Measuring;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.MeterModel;
import halfwave.instrument.Microammeter;
import halfwave.instrument.Ohmmeter;
import halfwave.instrument.ShippedMeters;
import halfwave.instrument.Shown;
import halfwave.instrument.Subject;
import halfwave.instrument.Supply;
import halfwave.instrument.SupplyPoint;
import halfwave.instrument.Voltmeter;
import halfwave.quantity.RejectedValueException;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/** Random meters on random benches; ten times as many with halfwave.deep. */
class MeterPropertyTest {

  private static final int DEEPER = Boolean.getBoolean("halfwave.deep") ? 10 : 1;
  private static final int COUNT = 2_000 * DEEPER;

  /** Three electrodes and a wire cost many times a single path. */
  private static final int STARS = 40 * DEEPER;

  private final List<Point> points = HookUp.REACHABLE.stream().sorted().toList();

  private <T> T one(RandomGenerator random, List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  private HookUp hookUp(RandomGenerator random, Bench bench, BenchFlame flame, boolean wires) {
    return switch (random.nextInt(wires ? 8 : 7)) {
      case 0, 1, 2, 3 -> new Across(one(random, points), one(random, points));
      case 4, 5 -> new InSenseLead(one(random, List.of(LeadEnd.values())), random.nextBoolean());
      case 6 ->
          new AcrossSupply(
              one(random, List.of(SupplyPoint.values())),
              one(random, List.of(SupplyPoint.values())));
      default ->
          new WireInFlame(
              ProbeWire.IN_ROOT.against(bench, flame), one(random, points), random.nextBoolean());
    };
  }

  private Subject subject(RandomGenerator random, Bench bench, BenchFlame flame) {
    Circuit circuit =
        random.nextInt(4) > 0
            ? BenchCircuit.of(bench, flame)
            : BenchCircuit.withoutFlame(bench, flame);
    Supply supply =
        one(
            random,
            List.of(
                Supply.CORRECT,
                Supply.CORRECT.lineReversed(),
                Supply.CORRECT.phaseReversed(),
                Supply.OFF));
    Subject subject = new Subject(circuit, supply, random.nextInt(10) == 0, random.nextBoolean());
    return random.nextInt(3) == 0 ? subject.unpowered() : subject;
  }

  private Meter meter(RandomGenerator random) {
    MeterModel shipped = one(random, ShippedMeters.all());
    Meter fresh = Meter.fresh(random.nextBoolean() ? shipped : bent(random, shipped));
    return switch (random.nextInt(10)) {
      case 0 -> fresh.destroyed();
      case 1, 2 -> fresh.withBlownFuse();
      default -> fresh;
    };
  }

  /** A meter such as nobody sells, of numbers that the records allow. */
  private static MeterModel bent(RandomGenerator random, MeterModel m) {
    return new MeterModel(
        m.name(),
        new Voltmeter(spread(random, 1e3, 1e10), spread(random, 1e-13, 1e-8)),
        new Voltmeter(spread(random, 1, 1e6), 0),
        new Microammeter(spread(random, 0.01, 1e6)),
        new Microammeter(spread(random, 1e-3, 1e3)),
        new Ohmmeter(spread(random, 0.01, 100), spread(random, 1, 1e7), spread(random, 1, 1e3)),
        m.method(),
        random.nextBoolean() ? 0 : spread(random, 1e-3, 100),
        1 + random.nextInt(1000),
        spread(random, 1e-3, 100),
        spread(random, 1e-6, 10),
        random.nextDouble(),
        m.scales());
  }

  /** A number whose logarithm is evenly spread. */
  private static double spread(RandomGenerator random, double low, double high) {
    return low * StrictMath.exp(random.nextDouble() * StrictMath.log(high / low));
  }

  private void each(long seed, int count, boolean spark, boolean wires) {
    SplittableRandom random = new SplittableRandom(seed);
    RandomBenches benches = new RandomBenches(random);
    Stages stages = new Stages();
    for (int k = 0; k < count; ) {
      Bench bench;
      try {
        bench = spark ? benches.withSpark() : benches.any();
      } catch (RejectedValueException e) {
        continue;
      }
      k++;
      BenchFlame flame = stages.flame(bench);
      Meter meter = meter(random);
      MeterFunction function = one(random, List.of(MeterFunction.values()));
      HookUp hookUp = hookUp(random, bench, flame, wires);
      Subject subject = subject(random, bench, flame);
      Look look = new Look(2 * random.nextDouble(), random.nextLong(), random.nextInt(100_000));
      String story =
          "seed %d case %d: %s %s %s %s on %s"
              .formatted(seed, k, meter.model(), function, hookUp, look, bench);
      check(story, meter, subject, Measuring.of(meter, function, hookUp, subject, look));
    }
  }

  private static void check(String story, Meter before, Subject subject, Measurement m) {
    assertThat(m.shown()).as(story).isNotInstanceOf(Shown.Unsolved.class);
    assertThat(SteadyState.of(m.loaded())).as(story).isNotInstanceOf(SteadyState.Failed.class);
    assertThat(m.shown() instanceof Shown.Nothing).as(story).isEqualTo(!m.meter().alive());
    // nothing mends itself, and what breaks is said
    assertThat(m.meter().alive() && !before.alive()).as(story).isFalse();
    assertThat(m.meter().fuseIntact() && !before.fuseIntact()).as(story).isFalse();
    assertThat(m.meter().equals(before) || !m.cautions().isEmpty()).as(story).isTrue();
    assertThat(m.loaded().live()).as(story).isEqualTo(subject.circuit().live());
  }

  @Test
  void everyMeterOnEveryBench() {
    each(1, COUNT, false, false);
  }

  @Test
  void everyMeterOnEveryBenchWithWiresAndSparkElectrodes() {
    each(2, STARS, false, true);
    each(3, STARS, true, true);
  }
}
