package halfwave.bench;

import static halfwave.bench.Hookups.HEALTHY;
import static halfwave.bench.Hookups.STANDARD;
import static halfwave.instrument.IdealMeters.measure;
import static halfwave.instrument.IdealMeters.si;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import halfwave.circuit.Circuit;
import halfwave.circuit.Part;
import halfwave.circuit.Point;
import halfwave.circuit.Solved;
import halfwave.circuit.SteadyState;
import halfwave.instrument.AlternatingMethod;
import halfwave.instrument.HookUp.Across;
import halfwave.instrument.HookUp.InSenseLead;
import halfwave.instrument.HookUp.WireInFlame;
import halfwave.instrument.IdealMeters;
import halfwave.instrument.LeadEnd;
import halfwave.instrument.Look;
import halfwave.instrument.Measurement;
import halfwave.instrument.Measuring;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.Shown;
import halfwave.instrument.Subject;
import org.junit.jupiter.api.Test;

/**
 * The multimeter on the shipped standard bench. Source: common practice of the trade, and where a
 * comment says so a closed form.
 */
class MeterPracticeReferenceTest {

  private static final InSenseLead AT_BOARD = new InSenseLead(LeadEnd.BOARD, true);
  private static final InSenseLead AT_ROD = new InSenseLead(LeadEnd.ROD, true);
  private static final Across TERMINAL = new Across(Point.TERMINAL, Point.COMMON);

  private static Subject burning(Bench bench) {
    return Subject.of(new Stages().circuit(bench));
  }

  private static WireInFlame wire(Bench bench) {
    return new WireInFlame(
        ProbeWire.IN_ROOT.against(bench, new Stages().flame(bench)), Point.ROD, true);
  }

  private static double boardMeanAmps(Circuit circuit) {
    return ((Solved) SteadyState.of(circuit)).currentMeanAmps(Part.CONNECTOR);
  }

  /** Several volts between a wire in the flame's root and the rod; it lowers the DC. */
  @Test
  void wireInTheFlame() {
    Subject subject = burning(STANDARD);
    Measurement m = measure(MeterFunction.AC_VOLTS, wire(STANDARD), subject);
    assertThat(si(m.shown())).isBetween(4.0, 28.0);
    assertThat(boardMeanAmps(m.loaded())).isPositive().isLessThan(boardMeanAmps(subject.circuit()));
  }

  /** Without a flame the wire is on nothing. */
  @Test
  void wireInNoFlame() {
    BenchFlame flame = new Stages().flame(STANDARD);
    Subject dark = Subject.of(BenchCircuit.withoutFlame(STANDARD, flame));
    assertThat(si(MeterFunction.AC_VOLTS, wire(STANDARD), dark)).isZero();
  }

  /** 2 to 3.5 µA beside 4 to 8 µA, red towards the board; leads swapped turn the DC alone. */
  @Test
  void healthyReading() {
    Shown.Both both =
        (Shown.Both)
            measure(MeterFunction.AC_AND_DC_MICROAMPS, AT_BOARD, burning(STANDARD)).shown();
    assertThat(si(both.direct())).isBetween(2e-6, 3.5e-6);
    assertThat(si(both.alternating())).isBetween(4e-6, 8e-6);
    Shown.Both swapped =
        (Shown.Both)
            measure(MeterFunction.AC_AND_DC_MICROAMPS, AT_BOARD.swapped(), burning(STANDARD))
                .shown();
    // a step of the ideal meter, and rounding of volts over the burden
    assertThat(si(swapped.direct())).isCloseTo(-si(both.direct()), within(1e-11));
    assertThat(si(swapped.alternating())).isCloseTo(si(both.alternating()), within(1e-11));
  }

  /** The cable's and the insulation's AC passes only the meter at the board. */
  @Test
  void boardEndAgainstRodEnd() {
    Subject damp = burning(STANDARD.with(HEALTHY.withLeakage(20e6)));
    double atBoard = si(MeterFunction.AC_MICROAMPS, AT_BOARD, damp);
    double atRod = si(MeterFunction.AC_MICROAMPS, AT_ROD, damp);
    assertThat(atBoard - atRod).isGreaterThan(0.5e-6);
    // Ohm: the only DC in the leak is what the lead's own DC volts drive through it
    Solved undisturbed = (Solved) SteadyState.of(damp.circuit());
    double insulation = STANDARD.design().lead().insulationOhms();
    double leakOhms = 1 / (1 / 20e6 + 1 / insulation);
    double leak = undisturbed.voltageMeanVolts(Point.LEAD, Point.CHASSIS) / leakOhms;
    double difference =
        si(MeterFunction.DC_MICROAMPS, AT_BOARD, damp)
            - si(MeterFunction.DC_MICROAMPS, AT_ROD, damp);
    // the burden is below 1e-3 of the megohms around it
    assertThat(difference).isNegative().isCloseTo(leak, within(3e-3 * Math.abs(leak)));
  }

  /** 50 to 85 V with flame on a 10 MΩ meter, and less DC while it hangs there. */
  @Test
  void theVoltmeterLowersTheSignal() {
    Subject subject = burning(STANDARD);
    Measurement m = measure(MeterFunction.AC_VOLTS, TERMINAL, subject);
    assertThat(si(m.shown())).isBetween(50.0, 85.0);
    assertThat(boardMeanAmps(m.loaded())).isLessThan(0.95 * boardMeanAmps(subject.circuit()));
  }

  /** Low impedance: near 0 V, and no board would hold the flame. */
  @Test
  void lowImpedance() {
    Measurement m = measure(MeterFunction.LOW_IMPEDANCE_AC_VOLTS, TERMINAL, burning(STANDARD));
    assertThat(si(m.shown())).isLessThan(0.5);
    assertThat(boardMeanAmps(m.loaded())).isLessThan(0.3e-6);
  }

  /** A rod so coated that it gives no signal still reads near zero ohms from end to tip. */
  @Test
  void goodOhmsProveNothing() {
    Coat thick = new Coat(100e-6, 1e4, Double.POSITIVE_INFINITY);
    Bench coated = STANDARD.with(HEALTHY.withRodCoat(thick).withRodKelvin(800));
    assertThat(si(MeterFunction.DC_MICROAMPS, AT_BOARD, burning(coated))).isLessThan(0.5e-6);
    Subject dead =
        Subject.of(BenchCircuit.withoutFlame(coated, new Stages().flame(coated))).unpowered();
    assertThat(si(MeterFunction.OHMS, new Across(Point.ROD, Point.ROD_SURFACE), dead))
        .isLessThan(1);
  }

  /** The flame's current is no sine; the methods differ, by a few per cent, and in AC alone. */
  @Test
  void meanRespondingDiffers() {
    Subject subject = burning(STANDARD);
    Shown.Both trueRms = both(AlternatingMethod.TRUE_RMS, subject);
    Shown.Both mean = both(AlternatingMethod.MEAN_RESPONDING, subject);
    assertThat(mean.direct()).isEqualTo(trueRms.direct());
    double ratio = si(mean.alternating()) / si(trueRms.alternating());
    assertThat(Math.abs(ratio - 1)).isBetween(1e-3, 0.12);
  }

  private static Shown.Both both(AlternatingMethod method, Subject subject) {
    return (Shown.Both)
        Measuring.of(
                IdealMeters.of(method),
                MeterFunction.AC_AND_DC_MICROAMPS,
                AT_BOARD,
                subject,
                Look.settled(1))
            .shown();
  }
}
