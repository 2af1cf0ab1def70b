package halfwave.bench;

import static halfwave.bench.Hookups.HEALTHY;
import static halfwave.bench.Hookups.OPEN;
import static halfwave.bench.Hookups.STANDARD;
import static halfwave.bench.Hookups.amps;
import static halfwave.bench.Hookups.dc;
import static halfwave.bench.Hookups.readings;
import static halfwave.bench.Hookups.series;
import static halfwave.bench.Hookups.sheets;
import static halfwave.bench.Hookups.shifted;
import static halfwave.bench.Hookups.volts;
import static halfwave.bench.Hookups.withGap;
import static halfwave.bench.Hookups.withOhmsAtRod;
import static halfwave.bench.Hookups.withSourceVolts;
import static org.assertj.core.api.Assertions.assertThat;

import halfwave.board.Ignition;
import halfwave.circuit.Circuit;
import halfwave.circuit.LumpedCircuit.Lead;
import halfwave.circuit.LumpedCircuit.Source;
import halfwave.circuit.Part;
import halfwave.circuit.Point;
import halfwave.flame.FlameState;
import halfwave.instrument.MeterReading.Amps;
import halfwave.instrument.Microammeter;
import halfwave.instrument.Voltmeter;
import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Unit;
import halfwave.validation.Validated;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/**
 * Benches against what the trade knows. "Common practice, no source" beside a test means just that:
 * the range is the tolerance. Where the design's trial model is meant it says so; that is a
 * calculation, not a measurement.
 */
@Validated(Area.BENCH)
class PracticeReferenceTest {

  private static final Reference PRACTICE = Reference.practice("common practice");
  private static final Reference TEXTS = Reference.practice("common practice; trade texts");
  private static final Reference TRIAL = Reference.calc("the design's trial model");
  private static final Reference FORM = Reference.calc("closed form");
  private static final String NOTHING = "nothing is nothing";

  static final List<Bench> SHIPPED = ShippedBenches.all();

  @Test
  void eightBenchesAreShipped() {
    assertThat(SHIPPED).hasSize(8).extracting(Bench::name).doesNotHaveDuplicates();
    assertThat(SHIPPED).extracting(b -> b.design().ignition()).contains(Ignition.values());
  }

  /** Source: 2 to 3.5 µA DC beside 4 to 8 µA AC in series, common practice; trade texts. */
  @ParameterizedTest
  @FieldSource("SHIPPED")
  void healthyMicroamps(Bench bench) {
    Amps series = series(bench);
    TEXTS
        .check("healthy benches: DC in series", Unit.MICROAMPS, series.meanAmps())
        .at(bench.name())
        .isBetween(2e-6, 3.5e-6, "the common range");
    TEXTS
        .check("healthy benches: AC in series", Unit.MICROAMPS, series.alternatingRmsAmps())
        .at(bench.name())
        .isBetween(4e-6, 8e-6, "the common range");
  }

  /** Source: sense voltage on a 10 MΩ meter, common practice; the flame pulls it down. */
  @ParameterizedTest
  @FieldSource("SHIPPED")
  void healthyVolts(Bench bench) {
    Readings r = readings(bench);
    double leadOff = volts(r.terminalLeadOff()).alternatingRmsVolts();
    double flameOut = volts(r.terminalFlameOut()).alternatingRmsVolts();
    double flame = volts(r.terminal()).alternatingRmsVolts();
    TEXTS
        .check("healthy benches: 10 MΩ meter, lead off", Unit.VOLTS, leadOff)
        .at(bench.name())
        .isBetween(80, 100, "the common range");
    TEXTS
        .check("healthy benches: 10 MΩ meter, flame", Unit.VOLTS, flame)
        .at(bench.name())
        .isBetween(50, 85, "the common range");
    assertThat(flame).isLessThan(flameOut);
    assertThat(flameOut).isLessThan(leadOff);
    assertThat(volts(r.terminal()).meanVolts()).isNegative();
    assertThat(amps(r.seriesWithVoltmeter()).meanAmps())
        .isPositive()
        .isLessThan(amps(r.series()).meanAmps());
  }

  /**
   * Source: several volts from a wire in the flame's root to the rod, common practice, no source.
   */
  @ParameterizedTest
  @FieldSource("SHIPPED")
  void probeInTheRoot(Bench bench) {
    PRACTICE
        .check(
            "healthy benches: wire in the root to the rod, AC",
            Unit.VOLTS,
            volts(readings(bench).probe()).alternatingRmsVolts())
        .at(bench.name())
        .isBetween(2, 28, "several volts");
  }

  /** Common practice, no source: rod out of the flame, no signal; 0.5 µA is a usual drop-out. */
  @Test
  void rodOutOfTheFlame() {
    PRACTICE
        .check("rod 9 mm short of the mantle, DC", Unit.MICROAMPS, dc(shifted(-35e-3, 0, 0)))
        .isCloseTo(0, 2e-9, "a thousandth of a healthy signal is nothing");
    PRACTICE
        .check("rod 35 mm up, above the flame, DC", Unit.MICROAMPS, dc(shifted(0, 35e-3, 0)))
        .isCloseTo(0, 0.1e-6, "far below any drop-out");
    for (double up = 15e-3; up <= 30e-3; up += 1e-3) {
      PRACTICE
          .check("rod 15 to 30 mm up, DC", Unit.MICROAMPS, dc(shifted(0, up, 0)))
          .at(Unit.MILLIMETERS.text(up, 1e-3))
          .isBelow(0.5e-6, "a usual drop-out");
    }
  }

  /** Common practice, no source: dead centre reads about the same; "about" is taken as 30 %. */
  @Test
  void deadCentre() {
    PRACTICE
        .check(
            "rod dead centre, DC over fitted", Unit.RATIO, dc(shifted(0, -5e-3, 0)) / dc(HEALTHY))
        .isCloseTo(1, 0.3, "\"about the same\", taken as 30 %");
  }

  /** Common practice, no source: a lifting flame loses the signal. The model reverses it. */
  @Test
  void liftedFlame() {
    Bench lifted = withGap(3.2e-3);
    assertThat(sheets(lifted).state()).isEqualTo(FlameState.LIFTED);
    lost("gap of 3.2 mm", dc(lifted));
    Bench tooMuchAir = STANDARD.with(HEALTHY.withAir(1.5));
    assertThat(sheets(tooMuchAir).state()).isEqualTo(FlameState.LIFTED);
    lost("air of 1.5", dc(tooMuchAir));
  }

  private static void lost(String at, double amps) {
    PRACTICE
        .check("lifted flame: DC over healthy", Unit.RATIO, amps / dc(HEALTHY))
        .at(at)
        .isBelow(0.5, "the signal is lost; the model even reverses it");
  }

  /** Common practice, no source: a dirty rod loses its DC before its AC. */
  @Test
  void filmTakesDirectCurrentFirst() {
    Amps clean = series(STANDARD);
    double before = clean.meanAmps();
    for (double thickness : new double[] {1e-6, 3e-6, 1e-5, 3e-5, 1e-4}) {
      Amps dirty = series(STANDARD.with(HEALTHY.withRodCoat(Coat.even(thickness, 1000))));
      assertThat(dirty.meanAmps()).isLessThan(before);
      assertThat(dirty.meanAmps() / clean.meanAmps())
          .isLessThan(dirty.alternatingRmsAmps() / clean.alternatingRmsAmps());
      before = dirty.meanAmps();
    }
    PRACTICE
        .check("100 µm of porous film: DC over clean", Unit.RATIO, before / clean.meanAmps())
        .isBelow(0.5, "a dirty rod loses its signal");
  }

  /** Common practice, no source: rust and scale on the burner cost signal too. */
  @Test
  void burnerScale() {
    falls(
        DoubleStream.of(0, 1e6, 3e6, 1e7, 3e7)
            .map(ohms -> dc(HEALTHY.withBurnerScale(ohms, 1e-9))));
    falls(DoubleStream.of(1, 0.7, 0.5, 0.3).map(share -> dc(HEALTHY.withAttachment(share))));
  }

  private static void falls(DoubleStream values) {
    double[] v = values.toArray();
    for (int k = 1; k < v.length; k++) {
      assertThat(v[k]).isLessThan(v[k - 1]);
    }
  }

  /** Common practice, no source: a leaking insulator shows more AC and takes away DC. */
  @Test
  void leakingInsulator() {
    double[] ohms = {OPEN, 100e6, 50e6, 20e6, 10e6, 3e6};
    falls(DoubleStream.of(ohms).map(r -> dc(HEALTHY.withLeakage(r))));
    falls(
        DoubleStream.of(ohms)
            .map(r -> -series(STANDARD.with(HEALTHY.withLeakage(r))).alternatingRmsAmps()));
  }

  /** Source: design's model; resistance matters from about half a megohm, 6 to 8 % there. */
  @Test
  void groundResistance() {
    double healthy = dc(HEALTHY);
    PRACTICE
        .check(
            "1 Ω in the ground: DC over healthy",
            Unit.RATIO,
            dc(HEALTHY.withGroundExtra(1)) / healthy)
        .isCloseTo(1, 1e-4, "an ohm beside megohms; far below any meter");
    TRIAL
        .check(
            "0.5 MΩ in the ground: DC over healthy",
            Unit.RATIO,
            dc(HEALTHY.withGroundExtra(0.5e6)) / healthy)
        .isBetween(0.92, 0.94, "6 to 8 % less");
    TRIAL
        .check(
            "1 MΩ in the ground: DC over healthy",
            Unit.RATIO,
            dc(HEALTHY.withGroundExtra(1e6)) / healthy)
        .isBetween(0.8, 0.9, "about twice that");
  }

  /** Source: 50 to 180 V at terminals, common practice; more voltage, more current: monotony. */
  @Test
  void sourceVoltage() {
    falls(
        DoubleStream.of(180, 150, 130, 110, 90, 70, 50).map(v -> dc(withSourceVolts(STANDARD, v))));
  }

  /** Common practice, no source: low gas pressure, low signal. 1 and 1.75 of 3.5 in w.c. */
  @Test
  void lowGasPressure() {
    falls(DoubleStream.of(1, 0.5, 0.286).map(ratio -> dc(HEALTHY.withManifold(ratio))));
    assertThat(series(STANDARD.with(HEALTHY.withManifold(0))).meanAmps()).isZero();
  }

  /** Common practice, no source: a little too much air weakens; far too much blows off: nothing. */
  @Test
  void tooMuchPrimaryAir() {
    falls(DoubleStream.of(0.95, 1.0, 1.05, 1.1).map(air -> dc(HEALTHY.withAir(air))));
    Bench blownOff = STANDARD.with(HEALTHY.withAir(1.7));
    assertThat(sheets(blownOff).state()).isEqualTo(FlameState.BLOWN_OFF);
    assertThat(dc(blownOff)).isZero();
  }

  /** Common practice, no source: shorted or jumpered rod, AC without DC. 1 nA is "no DC". */
  @Test
  void shortedRod() {
    Bench touching = shifted(0, 0, -13.5e-3);
    assertThat(touching.rodClearanceMeters()).isZero();
    for (Bench bench :
        List.of(
            touching,
            STANDARD.with(HEALTHY.withJumper(0)),
            STANDARD.with(HEALTHY.withJumper(2)),
            STANDARD.with(HEALTHY.withLeakage(0)))) {
      Amps series = series(bench);
      PRACTICE
          .check("rod shorted or jumpered: DC", Unit.MICROAMPS, series.meanAmps())
          .isCloseTo(0, 1e-9, "1 nA is no DC");
      FORM.check("rod shorted or jumpered: AC", Unit.MICROAMPS, series.alternatingRmsAmps())
          .isCloseTo(110 / 2.2e6, 5e-8, "the burden of 1.5 kΩ takes 0.07 %");
    }
  }

  /** Common practice, no source: lead pulled or ground lost, no current, full voltage at board. */
  @Test
  void brokenLoop() {
    for (Condition broken : List.of(HEALTHY.withConnector(OPEN), HEALTHY.withGroundExtra(OPEN))) {
      Bench bench = STANDARD.with(broken);
      PRACTICE
          .check("lead pulled or ground lost: DC", Unit.MICROAMPS, series(bench).meanAmps())
          .isCloseTo(0, 1e-15, NOTHING);
      PRACTICE
          .check(
              "lead pulled or ground lost: AC", Unit.MICROAMPS, series(bench).alternatingRmsAmps())
          .isCloseTo(0, 1e-15, NOTHING);
      TEXTS
          .check(
              "lead pulled or ground lost: 10 MΩ meter",
              Unit.VOLTS,
              volts(readings(bench).terminal()).alternatingRmsVolts())
          .isBetween(80, 100, "the common range with the lead off");
    }
  }

  /** Source: design's trial model, −30 % and −66 %. */
  @Test
  void highResistanceAtTheRod() {
    double healthy = dc(HEALTHY);
    trial("3 MΩ at the rod: change of DC", dc(withOhmsAtRod(3e6)) / healthy - 1, -0.30, 0.03);
    trial("10 MΩ at the rod: change of DC", dc(withOhmsAtRod(10e6)) / healthy - 1, -0.66, 0.03);
  }

  private static void trial(String subject, double computed, double expected, double points) {
    TRIAL
        .check(subject, Unit.PERCENT, computed)
        .isCloseTo(expected, points, "it had no flow at the rod and no law for a rod outside");
  }

  /** Source: design's trial model, −35 % at 0.8 mm, −58 % at 1 mm, zero near 1.5 mm. */
  @Test
  void gapAtTheBurner() {
    double healthy = dc(HEALTHY);
    trial("gap of 0.8 mm: change of DC", dc(withGap(0.8e-3)) / healthy - 1, -0.35, 0.07);
    trial("gap of 1 mm: change of DC", dc(withGap(1.0e-3)) / healthy - 1, -0.58, 0.07);
    assertThat(dc(withGap(1.2e-3))).isPositive();
    assertThat(dc(withGap(1.7e-3))).isNegative();
  }

  /** Source: closed form, 120 V behind 2.2 MΩ. */
  @Test
  void lowImpedanceMeterShowsADeadBoard() {
    Bench bench = withSourceVolts(STANDARD, 120).with(HEALTHY.withConnector(OPEN));
    Circuit circuit = new Stages().circuit(bench);
    FORM.check(
            "3 kΩ meter behind 2.2 MΩ and 120 V",
            Unit.VOLTS,
            volts(Voltmeter.LOW_IMPEDANCE.read(circuit, Point.TERMINAL, Point.COMMON))
                .alternatingRmsVolts())
        .isCloseTo(0.163, 0.0005, "half of the last digit");
  }

  /** Source: closed form: 20 MΩ at 120 V 6 µA AC, 100 pF at 90 V and 60 Hz 3.4 µA; no DC. */
  @Test
  void leakageAndCableAlone() {
    Amps leak = dark(new Source(120, 60, 1, null, null), 20e6, 0);
    Amps cable = dark(new Source(90, 60, 1, null, null), OPEN, 100e-12);
    FORM.check("bench with 20 MΩ of leakage alone, AC", Unit.MICROAMPS, leak.alternatingRmsAmps())
        .isCloseTo(6e-6, 0.005e-6, "the burden of 1.5 kΩ is 0.01 %");
    FORM.check("bench with 100 pF of cable alone, AC", Unit.MICROAMPS, cable.alternatingRmsAmps())
        .isCloseTo(3.4e-6, 0.05e-6, "half of the last digit");
    for (Amps amps : List.of(leak, cable)) {
      FORM.check("leakage or cable alone, DC", Unit.MICROAMPS, amps.meanAmps())
          .isCloseTo(0, 1e-15, NOTHING);
    }
  }

  private static Amps dark(Source source, double leakage, double cable) {
    Bench bench =
        STANDARD
            .with(STANDARD.design().withSource(source).withLead(new Lead(1, null, cable)))
            .with(HEALTHY.withLeakage(leakage));
    Circuit circuit = BenchCircuit.withoutFlame(bench, new Stages().flame(bench));
    assertThat(circuit.elements()).noneMatch(e -> e.part() == Part.FLAME);
    return amps(Microammeter.SERVICE.read(circuit));
  }
}
