package halfwave.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import halfwave.circuit.Circuit;
import halfwave.circuit.Element;
import halfwave.circuit.Part;
import halfwave.circuit.Point;
import halfwave.circuit.PowerBalance;
import halfwave.circuit.Solved;
import halfwave.circuit.SteadyState;
import halfwave.instrument.MeterReading;
import halfwave.instrument.MeterReading.Amps;
import halfwave.instrument.MeterReading.Volts;
import halfwave.quantity.RejectedValueException;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** What holds for every bench, on seeded random ones; ten times as many with halfwave.deep. */
class BenchPropertyTest {

  private static final int DEEPER = Boolean.getBoolean("halfwave.deep") ? 10 : 1;
  private static final int COUNT = Boolean.getBoolean("halfwave.deep") ? 100_000 : 4_000;

  /** The star of three electrodes costs many times a single path. */
  private static final int STARS = 100 * DEEPER;

  private static RandomBenches benches(long seed) {
    return new RandomBenches(new SplittableRandom(seed));
  }

  /** Draws that many benches; a rod in the burner's tube is the only reason to refuse one. */
  private static void each(int count, Supplier<Bench> draw, Consumer<Bench> check) {
    int refused = 0;
    for (int k = 0; k < count; ) {
      try {
        Bench bench = draw.get();
        k++;
        check.accept(bench);
      } catch (RejectedValueException e) {
        assertThat(e.allowed()).isEqualTo(RejectedValueException.Allowed.CLEAR_OF_BURNER);
        refused++;
      }
    }
    // the rod stands 15 mm off and is moved by 15 mm at most, mostly
    assertThat(refused).isLessThan(count);
  }

  /** The steady state; there is no bench without one. */
  private static Solved answer(Circuit circuit) {
    SteadyState state = SteadyState.of(circuit);
    assertThat(state).as("%s", circuit).isInstanceOf(Solved.class);
    return (Solved) state;
  }

  @Test
  void everyBenchHasAnAnswer() {
    Stages stages = new Stages();
    each(COUNT, benches(1)::any, bench -> balances(bench, answer(stages.circuit(bench))));
  }

  @Test
  void everyBenchWithASparkElectrodeHasAnAnswer() {
    Stages stages = new Stages();
    each(STARS, benches(2)::withSpark, bench -> balances(bench, answer(stages.circuit(bench))));
  }

  private static void balances(Bench bench, Solved s) {
    double sum = 0;
    for (Element e : s.circuit().elements()) {
      sum += s.currentMeanAmps(e.part()) + s.currentAlternatingRmsAmps(e.part());
      sum += s.voltageMeanVolts(e.from(), e.to());
      sum += s.voltageAlternatingRmsVolts(e.from(), e.to());
    }
    assertThat(sum).as("%s", bench).isFinite();
    charge(bench, s);
    power(bench, s);
  }

  /** Capacitors keep no charge over a period: what enters leaves. */
  private static void charge(Bench bench, Solved s) {
    // rounding of potentials up to 325 V across the least resistance, 0.05 ohm, is 1e-12 A
    double rounding = 1e-11;
    assertThat(s.currentMeanAmps(Part.CONNECTOR))
        .as("board of %s", bench)
        .isCloseTo(
            s.currentMeanAmps(Part.LEAD) + s.currentMeanAmps(Part.INSULATION), within(rounding));
    double flame = s.currentMeanAmps(Part.FLAME) + s.currentMeanAmps(Part.ROD_SHEATH);
    assertThat(s.currentMeanAmps(Part.LEAD))
        .as("rod of %s", bench)
        .isCloseTo(
            flame + s.currentMeanAmps(Part.JUMPER) + s.currentMeanAmps(Part.DEPOSIT),
            within(rounding));
    assertThat(s.currentMeanAmps(Part.PROBE_SHEATH))
        .as("spark winding of %s", bench)
        .isCloseTo(-s.currentMeanAmps(Part.SPARK_WINDING), within(rounding));
    assertThat(
            s.currentMeanAmps(Part.ROD_SHEATH)
                + s.currentMeanAmps(Part.PROBE_SHEATH)
                + s.currentMeanAmps(Part.BURNER_SHEATH))
        .as("plasma of %s", bench)
        .isCloseTo(0, within(rounding));
  }

  /**
   * The powers add up to 1e-9 of the source's. No element but the source gives any; a contact in
   * which nearly nothing is lost is rounded, which an ulp of the source's power allows for.
   */
  private static void power(Bench bench, Solved s) {
    PowerBalance balance = PowerBalance.of(s);
    assertThat(balance.residualWatts())
        .as("%s", bench)
        .isCloseTo(0, within(1e-9 * balance.sourceWatts()));
    for (Element e : s.circuit().elements()) {
      assertThat(balance.watts(e.part()))
          .as("%s of %s", e.part(), bench)
          .isGreaterThanOrEqualTo(-Math.ulp(balance.sourceWatts()));
    }
  }

  @Test
  void aBrokenLoopCarriesNothing() {
    Stages stages = new Stages();
    double open = Double.POSITIVE_INFINITY;
    Consumer<Bench> check =
        bench -> {
          silent(stages, bench.with(bench.condition().withConnector(open)));
          silent(stages, bench.with(bench.condition().withGroundExtra(open)));
        };
    each(COUNT / 10, benches(3)::any, check);
    each(STARS / 10, benches(4)::withSpark, check);
  }

  private static void silent(Stages stages, Bench bench) {
    for (Part part : List.of(Part.FLAME, Part.ROD_SHEATH, Part.BURNER_SHEATH)) {
      Solved s = answer(stages.circuit(bench));
      assertThat(s.currentMeanAmps(part)).as("%s", bench).isZero();
      assertThat(s.currentAlternatingRmsAmps(part)).as("%s", bench).isZero();
    }
  }

  /** A cache full of other benches changes no bit. */
  @Test
  void answersDoNotDependOnWhatWasAskedBefore() {
    Stages used = new Stages();
    each(
        COUNT / 10,
        benches(5)::any,
        bench -> {
          List<Double> first = numbers(used, bench);
          assertThat(first).as("%s", bench).isEqualTo(numbers(new Stages(), bench));
          assertThat(first).as("%s", bench).isEqualTo(numbers(used, bench));
        });
  }

  private static List<Double> numbers(Stages stages, Bench bench) {
    return numbers(answer(stages.circuit(bench)));
  }

  private static List<Double> numbers(Solved s) {
    List<Double> n = new ArrayList<>();
    for (Element e : s.circuit().elements()) {
      n.add(s.currentMeanAmps(e.part()));
      n.add(s.currentAlternatingRmsAmps(e.part()));
    }
    n.add(s.voltageMeanVolts(Point.TERMINAL, Point.COMMON));
    n.add(s.voltageAlternatingRmsVolts(Point.TERMINAL, Point.COMMON));
    return n;
  }

  /** Every hook-up of a technician, a wire in the flame among them, has a finite reading. */
  @Test
  void everyMeterReads() {
    Stages stages = new Stages();
    each(COUNT / 100, benches(6)::any, bench -> reads(bench, Readings.of(stages, bench)));
    each(STARS / 10, benches(7)::withSpark, bench -> reads(bench, Readings.of(stages, bench)));
  }

  private static void reads(Bench bench, Readings r) {
    for (MeterReading reading : List.of(r.series(), r.seriesWithVoltmeter())) {
      assertThat(reading).as("%s", bench).isInstanceOf(Amps.class);
      Amps amps = (Amps) reading;
      assertThat(amps.meanAmps() + amps.alternatingRmsAmps()).as("%s", bench).isFinite();
    }
    for (MeterReading reading :
        List.of(r.terminal(), r.terminalLeadOff(), r.terminalFlameOut(), r.probe())) {
      assertThat(reading).as("%s", bench).isInstanceOf(Volts.class);
      Volts volts = (Volts) reading;
      assertThat(volts.meanVolts() + volts.alternatingRmsVolts()).as("%s", bench).isFinite();
    }
  }
}
