package halfwave.instrument;

import static halfwave.instrument.IdealMeters.measure;
import static halfwave.instrument.IdealMeters.si;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import halfwave.circuit.Circuit;
import halfwave.circuit.Element.Resistor;
import halfwave.circuit.Failure;
import halfwave.circuit.Part;
import halfwave.circuit.Point;
import halfwave.circuit.Solved;
import halfwave.circuit.SteadyState;
import halfwave.instrument.HookUp.Across;
import halfwave.instrument.HookUp.AcrossSupply;
import halfwave.instrument.HookUp.InSenseLead;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Wrong use of a meter and what comes of it. */
class MeterUseTest {

  private static final Subject BURNING = Subject.of(SenseCircuits.burning());
  private static final Across TERMINAL = new Across(Point.TERMINAL, Point.COMMON);
  private static final AcrossSupply LINE = new AcrossSupply(SupplyPoint.LINE, SupplyPoint.GROUND);
  private static final InSenseLead SERIES = new InSenseLead(LeadEnd.BOARD, true);

  /** No shipped board holds a flame with so little; the root of a small voltage is not so small. */
  private static final double NO_BOARD_AMPS = 0.2e-6;

  private static List<MessageKey> keys(Measurement m) {
    return m.cautions().stream().map(Message::key).toList();
  }

  private static double boardMeanAmps(Circuit circuit) {
    return ((Solved) SteadyState.of(circuit)).currentMeanAmps(Part.CONNECTOR);
  }

  @ParameterizedTest
  @EnumSource(
      names = {".*MICROAMPS", ".*MILLIAMPS"},
      mode = EnumSource.Mode.MATCH_ANY)
  void ampsOnTheSupplyBlowTheFuse(MeterFunction function) {
    Measurement m = measure(function, LINE, BURNING);
    assertThat(m.meter().fuseIntact()).isFalse();
    assertThat(m.meter().alive()).isTrue();
    assertThat(keys(m)).contains(MessageKey.METER_AMPS_ON_SUPPLY, MessageKey.METER_FUSE_BLOWN);
  }

  /** The trap: zero in a healthy circuit, and the flame lost by the open lead. */
  @Test
  void aBlownFuseReadsZeroAndOpensTheLead() {
    Meter blown = measure(MeterFunction.DC_MICROAMPS, LINE, BURNING).meter();
    Measurement m =
        Measuring.of(blown, MeterFunction.DC_MICROAMPS, SERIES, BURNING, Look.settled(3));
    assertThat(si(m.shown())).isZero();
    assertThat(boardMeanAmps(m.loaded())).isZero();
    Measurement repaired =
        Measuring.of(
            blown.withNewFuse(), MeterFunction.DC_MICROAMPS, SERIES, BURNING, Look.settled(3));
    assertThat(si(repaired.shown())).isGreaterThan(1e-6);
    // volts do not pass through the fuse
    assertThat(
            si(
                Measuring.of(blown, MeterFunction.AC_VOLTS, TERMINAL, BURNING, Look.settled(3))
                    .shown()))
        .isGreaterThan(50);
  }

  /** Two points of the supply without a voltage between them blow nothing. */
  @Test
  void noVoltageNoBlow() {
    Measurement m =
        measure(
            MeterFunction.DC_MICROAMPS,
            new AcrossSupply(SupplyPoint.NEUTRAL, SupplyPoint.GROUND),
            BURNING);
    assertThat(m.meter().fuseIntact()).isTrue();
  }

  /** Megohms protect the meter, but the board sees no flame meanwhile. */
  @Test
  void ampsAcrossTheTerminal() {
    Measurement m = measure(MeterFunction.AC_MICROAMPS, TERMINAL, BURNING);
    // 120 V over 2.2 MΩ; less the burden's 0.1 %, and what the flame takes at 0.1 V: k·√V, 0.6 %
    assertThat(si(m.shown())).isCloseTo(120 / 2.2e6, within(1e-2 * 120 / 2.2e6));
    assertThat(boardMeanAmps(m.loaded())).isLessThan(NO_BOARD_AMPS);
    assertThat(keys(m)).containsExactly(MessageKey.METER_AMPS_ACROSS);
    assertThat(m.meter().fuseIntact()).isTrue();
  }

  @Test
  void aSparkDestroys() {
    Across spark = new Across(Point.PROBE, Point.CHASSIS);
    Measurement quiet = measure(MeterFunction.AC_VOLTS, spark, BURNING);
    assertThat(quiet.meter().alive()).isTrue();
    assertThat(keys(quiet)).containsExactly(MessageKey.METER_ON_SPARK_ELECTRODE);
    Measurement m = measure(MeterFunction.AC_VOLTS, spark, BURNING.whileSparking());
    assertThat(m.meter().alive()).isFalse();
    assertThat(m.shown()).isEqualTo(new Shown.Nothing());
    assertThat(keys(m))
        .containsExactly(MessageKey.METER_ON_SPARK_ELECTRODE, MessageKey.METER_DESTROYED);
    assertThat(
            Measuring.of(m.meter(), MeterFunction.OHMS, TERMINAL, BURNING, Look.settled(1)).shown())
        .isEqualTo(new Shown.Nothing());
  }

  @Test
  void ohmsOnALiveCircuitJump() {
    Measurement m = measure(MeterFunction.OHMS, TERMINAL, BURNING);
    assertThat(((Shown.Ohms) m.shown()).steady()).isFalse();
    assertThat(keys(m)).containsExactly(MessageKey.METER_OHMS_LIVE);
    Shown later =
        Measuring.of(m.meter(), MeterFunction.OHMS, TERMINAL, BURNING, new Look(60, 1, 61_000))
            .shown();
    assertThat(later).isNotEqualTo(m.shown());
  }

  /** 3 kΩ against 2.2 MΩ: the terminal reads near 0, and the flame's DC is gone. */
  @Test
  void lowImpedanceMakesABoardLookDead() {
    Measurement m = measure(MeterFunction.LOW_IMPEDANCE_AC_VOLTS, TERMINAL, BURNING);
    assertThat(si(m.shown())).isLessThan(0.2);
    assertThat(boardMeanAmps(m.loaded())).isLessThan(NO_BOARD_AMPS);
    assertThat(keys(m)).containsExactly(MessageKey.METER_LOW_IMPEDANCE);
  }

  @Test
  void aVoltmeterLowersTheSignal() {
    Measurement m = measure(MeterFunction.AC_VOLTS, TERMINAL, BURNING);
    assertThat(boardMeanAmps(m.loaded())).isPositive().isLessThan(boardMeanAmps(BURNING.circuit()));
    assertThat(m.cautions()).isEmpty();
  }

  @Test
  void wrongChoicesInTheLead() {
    assertThat(keys(measure(MeterFunction.AC_MICROAMPS, SERIES, BURNING)))
        .containsExactly(MessageKey.METER_AC_WHERE_DC);
    assertThat(keys(measure(MeterFunction.DC_MILLIAMPS, SERIES, BURNING)))
        .containsExactly(MessageKey.METER_TOO_COARSE);
    assertThat(keys(measure(MeterFunction.AC_VOLTS, SERIES, BURNING)))
        .containsExactly(MessageKey.METER_VOLTS_IN_SERIES);
    assertThat(keys(measure(MeterFunction.DC_MICROAMPS, SERIES, BURNING))).isEmpty();
    assertThat(keys(measure(MeterFunction.AC_AND_DC_MICROAMPS, SERIES, BURNING))).isEmpty();
    assertThat(keys(measure(MeterFunction.DC_VOLTS, LINE, BURNING)))
        .containsExactly(MessageKey.METER_DC_WHERE_AC);
    assertThat(si(MeterFunction.DC_VOLTS, LINE, BURNING)).isZero();
  }

  /** A service meter's milliamps show a flame as nothing, but for the last digits' error. */
  @Test
  void milliampsAreTooCoarse() {
    Shown shown =
        Measuring.of(
                Meter.fresh(ShippedMeters.service()),
                MeterFunction.DC_MILLIAMPS,
                SERIES,
                BURNING,
                Look.settled(1))
            .shown();
    // two steps of 10 µA
    assertThat(si(shown)).isCloseTo(0, within(21e-6));
  }

  @Test
  void overRange() {
    Shown shown =
        Measuring.of(
                Meter.fresh(ShippedMeters.service()),
                MeterFunction.AC_VOLTS,
                LINE,
                new Subject(SenseCircuits.burning(), new Supply(900, 0, 24, 0), false, false),
                Look.settled(1))
            .shown();
    assertThat(((Shown.Alternating) shown).figure()).isInstanceOf(Figure.OverRange.class);
  }

  /** After one time constant 63 %: 1 − 1/e. Step of the display and error: 0.7 % and 3 digits. */
  @Test
  void settling() {
    MeterModel model = ShippedMeters.service();
    double volts =
        si(
            Measuring.of(
                    Meter.fresh(model),
                    MeterFunction.AC_VOLTS,
                    LINE,
                    BURNING,
                    new Look(model.averagingSeconds(), 1, 300))
                .shown());
    assertThat(volts).isCloseTo(120 * (1 - 1 / Math.E), within(0.01 * 76 + 0.3));
    assertThat(
            si(
                Measuring.of(
                        Meter.fresh(model),
                        MeterFunction.AC_VOLTS,
                        LINE,
                        BURNING,
                        new Look(0, 1, 0))
                    .shown()))
        .isCloseTo(0, within(3.1e-3));
  }

  /** The last digits stand until the display is refreshed, and depend on seed and time alone. */
  @Test
  void lastDigits() {
    Meter meter = Meter.fresh(ShippedMeters.service());
    Shown one =
        Measuring.of(meter, MeterFunction.AC_VOLTS, LINE, BURNING, new Look(60, 5, 10_000)).shown();
    Shown soon =
        Measuring.of(meter, MeterFunction.AC_VOLTS, LINE, BURNING, new Look(60, 5, 10_249)).shown();
    Shown later =
        Measuring.of(meter, MeterFunction.AC_VOLTS, LINE, BURNING, new Look(60, 5, 10_250)).shown();
    assertThat(soon).isEqualTo(one);
    assertThat(later).isNotEqualTo(one);
  }

  /** No number where the circuit has no solution. */
  @Test
  void noSolution() {
    Subject shorted =
        Subject.of(
            SenseCircuits.burning().with(new Resistor(Part.JUMPER, Point.EMF, Point.COMMON, 0)));
    assertThat(measure(MeterFunction.AC_VOLTS, TERMINAL, shorted).shown())
        .isInstanceOfSatisfying(
            Shown.Unsolved.class,
            none -> {
              assertThat(none.reason().failure()).isEqualTo(Failure.SOURCE_SHORTED);
              assertThat(none.reason().part()).isEqualTo(Part.SOURCE);
            });
  }

  @Test
  void milliampsOfAStiffSourceBlowTheFuseInTheSenseCircuit() {
    Circuit stiff =
        SenseCircuits.of(
            SenseCircuits.stiff(120),
            new halfwave.circuit.LumpedCircuit.Lead(1, null, null),
            null,
            null);
    Measurement m = measure(MeterFunction.DC_MICROAMPS, TERMINAL, Subject.of(stiff));
    assertThat(m.meter().fuseIntact()).isFalse();
    assertThat(keys(m)).contains(MessageKey.METER_FUSE_BLOWN);
  }
}
