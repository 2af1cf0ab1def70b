package halfwave.bench;

import static halfwave.bench.Hookups.HEALTHY;
import static halfwave.bench.Hookups.STANDARD;
import static halfwave.instrument.IdealMeters.measure;
import static halfwave.instrument.IdealMeters.si;
import static org.assertj.core.api.Assertions.assertThat;

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
import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Unit;
import halfwave.validation.Validated;
import org.junit.jupiter.api.Test;

/**
 * The multimeter on the shipped standard bench. Source: common practice of the trade, and where a
 * comment says so a closed form.
 */
@Validated(Area.METERS)
class MeterPracticeReferenceTest {

  private static final Reference PRACTICE = Reference.practice("common practice");
  private static final Reference SYMMETRY = Reference.calc("symmetry");
  private static final Reference OHM = Reference.calc("Ohm's law");
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
    PRACTICE
        .check("wire in the flame's root to the rod, AC", Unit.VOLTS, si(m.shown()))
        .isBetween(4, 28, "several volts");
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
    PRACTICE
        .check("multimeter in series: DC", Unit.MICROAMPS, si(both.direct()))
        .isBetween(2e-6, 3.5e-6, "the common range");
    PRACTICE
        .check("multimeter in series: AC", Unit.MICROAMPS, si(both.alternating()))
        .isBetween(4e-6, 8e-6, "the common range");
    Shown.Both swapped =
        (Shown.Both)
            measure(MeterFunction.AC_AND_DC_MICROAMPS, AT_BOARD.swapped(), burning(STANDARD))
                .shown();
    String steps = "a step of the ideal meter, and rounding of volts over the burden";
    SYMMETRY
        .check("leads swapped: DC turns", Unit.MICROAMPS, si(swapped.direct()))
        .isCloseTo(-si(both.direct()), 1e-11, steps);
    SYMMETRY
        .check("leads swapped: AC stays", Unit.MICROAMPS, si(swapped.alternating()))
        .isCloseTo(si(both.alternating()), 1e-11, steps);
  }

  /** The cable's and the insulation's AC passes only the meter at the board. */
  @Test
  void boardEndAgainstRodEnd() {
    Subject damp = burning(STANDARD.with(HEALTHY.withLeakage(20e6)));
    double atBoard = si(MeterFunction.AC_MICROAMPS, AT_BOARD, damp);
    double atRod = si(MeterFunction.AC_MICROAMPS, AT_ROD, damp);
    PRACTICE
        .check(
            "damp insulator: AC at the board above AC at the rod", Unit.MICROAMPS, atBoard - atRod)
        .isAbove(0.5e-6, "more than any meter's limit of error");
    // Ohm: the only DC in the leak is what the lead's own DC volts drive through it
    Solved undisturbed = (Solved) SteadyState.of(damp.circuit());
    double insulation = STANDARD.design().lead().insulationOhms();
    double leakOhms = 1 / (1 / 20e6 + 1 / insulation);
    double leak = undisturbed.voltageMeanVolts(Point.LEAD, Point.CHASSIS) / leakOhms;
    double difference =
        si(MeterFunction.DC_MICROAMPS, AT_BOARD, damp)
            - si(MeterFunction.DC_MICROAMPS, AT_ROD, damp);
    assertThat(difference).isNegative();
    OHM.check("damp insulator: DC at the board less DC at the rod", Unit.MICROAMPS, difference)
        .isWithin(3e-3, leak, "three currents, each moved by a burden below 1e-3 of the megohms");
  }

  /** 50 to 85 V with flame on a 10 MΩ meter, and less DC while it hangs there. */
  @Test
  void theVoltmeterLowersTheSignal() {
    Subject subject = burning(STANDARD);
    Measurement m = measure(MeterFunction.AC_VOLTS, TERMINAL, subject);
    PRACTICE
        .check("10 MΩ multimeter with flame", Unit.VOLTS, si(m.shown()))
        .isBetween(50, 85, "the common range");
    PRACTICE
        .check(
            "10 MΩ multimeter: DC over undisturbed",
            Unit.RATIO,
            boardMeanAmps(m.loaded()) / boardMeanAmps(subject.circuit()))
        .isBelow(0.95, "it falls, visibly");
  }

  /** Low impedance: near 0 V, and no board would hold the flame. */
  @Test
  void lowImpedance() {
    Measurement m = measure(MeterFunction.LOW_IMPEDANCE_AC_VOLTS, TERMINAL, burning(STANDARD));
    PRACTICE
        .check("low-impedance range with flame", Unit.VOLTS, si(m.shown()))
        .isBelow(0.5, "near 0 V");
    PRACTICE
        .check("low-impedance range: DC", Unit.MICROAMPS, boardMeanAmps(m.loaded()))
        .isBelow(0.3e-6, "no board holds the flame");
  }

  /** A rod so coated that it gives no signal still reads near zero ohms from end to tip. */
  @Test
  void goodOhmsProveNothing() {
    Coat thick = new Coat(100e-6, 1e4, Double.POSITIVE_INFINITY);
    Bench coated = STANDARD.with(HEALTHY.withRodCoat(thick).withRodKelvin(800));
    PRACTICE
        .check(
            "thickly coated rod: DC",
            Unit.MICROAMPS,
            si(MeterFunction.DC_MICROAMPS, AT_BOARD, burning(coated)))
        .isBelow(0.5e-6, "a usual drop-out");
    Subject dead =
        Subject.of(BenchCircuit.withoutFlame(coated, new Stages().flame(coated))).unpowered();
    PRACTICE
        .check(
            "thickly coated rod: ohms from end to tip",
            Unit.OHMS,
            si(MeterFunction.OHMS, new Across(Point.ROD, Point.ROD_SURFACE), dead))
        .isBelow(1, "near zero");
  }

  /** The flame's current is no sine; the methods differ, by a few per cent, and in AC alone. */
  @Test
  void meanRespondingDiffers() {
    Subject subject = burning(STANDARD);
    Shown.Both trueRms = both(AlternatingMethod.TRUE_RMS, subject);
    Shown.Both mean = both(AlternatingMethod.MEAN_RESPONDING, subject);
    assertThat(mean.direct()).isEqualTo(trueRms.direct());
    double ratio = si(mean.alternating()) / si(trueRms.alternating());
    PRACTICE
        .check(
            "mean-responding against true-rms, of a flame's AC", Unit.PERCENT, Math.abs(ratio - 1))
        .isBetween(1e-3, 0.12, "a few per cent; 11 % on a square wave");
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
