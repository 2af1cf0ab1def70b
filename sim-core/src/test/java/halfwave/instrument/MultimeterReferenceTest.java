package halfwave.instrument;

import static halfwave.instrument.IdealMeters.measure;
import static halfwave.instrument.IdealMeters.si;
import static halfwave.instrument.MeterFunction.AC_MICROAMPS;
import static halfwave.instrument.MeterFunction.AC_VOLTS;
import static halfwave.instrument.MeterFunction.CONTINUITY;
import static halfwave.instrument.MeterFunction.DC_MICROAMPS;
import static halfwave.instrument.MeterFunction.LOW_IMPEDANCE_AC_VOLTS;
import static halfwave.instrument.MeterFunction.OHMS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import halfwave.circuit.Circuit;
import halfwave.circuit.Element.Conductor;
import halfwave.circuit.LumpedCircuit.Film;
import halfwave.circuit.LumpedCircuit.Lead;
import halfwave.circuit.Part;
import halfwave.circuit.Point;
import halfwave.circuit.SquareRootLaw;
import halfwave.instrument.HookUp.Across;
import halfwave.instrument.HookUp.AcrossSupply;
import halfwave.instrument.HookUp.InSenseLead;
import halfwave.surface.RectifyingDeposit;
import org.junit.jupiter.api.Test;

/** The multimeter against closed forms of linear circuits; each test states its form. */
class MultimeterReferenceTest {

  private static final Across TERMINAL = new Across(Point.TERMINAL, Point.COMMON);
  private static final InSenseLead AT_BOARD = new InSenseLead(LeadEnd.BOARD, true);
  private static final InSenseLead AT_ROD = new InSenseLead(LeadEnd.ROD, true);

  private static double at(MeterFunction function, HookUp hookUp, Circuit circuit) {
    return si(function, hookUp, Subject.of(circuit));
  }

  /** E·|Z/(Z + R)| with 10 MΩ and 100 pF; with 3 kΩ. Half of the last digit given. */
  @Test
  void whatAMeterLeavesOfTheSenseVoltage() {
    assertThat(at(AC_VOLTS, TERMINAL, SenseCircuits.leadOff())).isCloseTo(98.1, within(0.05));
    assertThat(at(LOW_IMPEDANCE_AC_VOLTS, TERMINAL, SenseCircuits.leadOff()))
        .isCloseTo(0.163, within(0.0005));
  }

  /** E/R: 120 V over 20 MΩ is 6 µA AC. Linear: no DC. The burden is less than 1e-4 of 20 MΩ. */
  @Test
  void leakageIsAlternatingOnly() {
    Circuit leaking =
        SenseCircuits.of(SenseCircuits.stiff(120), new Lead(1, 20e6, null), null, null);
    assertThat(at(AC_MICROAMPS, AT_BOARD, leaking)).isCloseTo(6e-6, within(6e-10));
    // rounding of 170 V over the meter's burden
    assertThat(at(DC_MICROAMPS, AT_BOARD, leaking)).isCloseTo(0, within(1e-12));
    assertThat(at(AC_MICROAMPS, AT_ROD, leaking)).isCloseTo(0, within(1e-12));
  }

  /** E·ωC: 90 V, 60 Hz, 100 pF give 3.4 µA AC, to the digits given. Linear: no DC. */
  @Test
  void cableIsAlternatingOnly() {
    Circuit cable =
        SenseCircuits.of(SenseCircuits.stiff(90), new Lead(1, null, 100e-12), null, null);
    assertThat(at(AC_MICROAMPS, AT_BOARD, cable)).isCloseTo(3.4e-6, within(0.05e-6));
    assertThat(at(DC_MICROAMPS, AT_BOARD, cable)).isCloseTo(0, within(1e-12));
    assertThat(at(AC_MICROAMPS, AT_ROD, cable)).isCloseTo(0, within(1e-12));
  }

  /** The DC through 200 MΩ of insulation is the lead's DC volts over it (Kirchhoff, Ohm). */
  @Test
  void theTwoEndsDifferByTheLeak() {
    Circuit circuit =
        SenseCircuits.of(SenseCircuits.BOARD, new Lead(1, 20e6, null), null, SenseCircuits.FLAME);
    double board = at(DC_MICROAMPS, AT_BOARD, circuit);
    double rod = at(DC_MICROAMPS, AT_ROD, circuit);
    // the terminal stands at −I·R_s on the mean, and so does the lead
    double leak = -board * 2.2e6 / 20e6;
    // the burden moves both currents by less than 1.5 kΩ of 2.2 MΩ
    assertThat(board - rod).isCloseTo(leak, within(1e-3 * Math.abs(leak)));
    assertThat(rod).isGreaterThan(board);
  }

  /** 1.5 kΩ beside megohms: below the last digit of a meter, 0.01 µA. */
  @Test
  void theBurdenCostsNothing() {
    Circuit circuit = SenseCircuits.burning();
    double bare = ((MeterReading.Amps) new Microammeter(0).read(circuit)).meanAmps();
    assertThat(at(DC_MICROAMPS, AT_BOARD, circuit)).isCloseTo(bare, within(0.01e-6));
  }

  /** Ohm: source resistance and return side by side, both leads' 0.2 Ω on top. */
  @Test
  void ohmsOfADeadBoard() {
    Circuit dead = SenseCircuits.leadOff().unpowered();
    // the meter sees megohms by what is left of a current of 0.5 µA; doubles round at 1e-16
    assertThat(at(OHMS, TERMINAL, dead)).isCloseTo(2.2e6 + 0.2, within(1e-3));
    assertThat(at(OHMS, TERMINAL.swapped(), dead)).isCloseTo(2.2e6 + 0.2, within(1e-3));
    assertThat(at(OHMS, new Across(Point.LEAD, Point.ROD), dead)).isInfinite();
    assertThat(at(OHMS, new Across(Point.ROD, Point.PROBE), dead)).isInfinite();
  }

  /** Ohm: a ground of 0.3 Ω and leads of 0.2 Ω; below 40 Ω it sounds. */
  @Test
  void continuityOfTheGround() {
    Shown shown =
        measure(
                CONTINUITY,
                new Across(Point.CHASSIS, Point.COMMON),
                Subject.of(SenseCircuits.leadOff().unpowered()))
            .shown();
    assertThat(si(shown)).isCloseTo(0.5, within(1e-9));
    assertThat(((Shown.Ohms) shown).tone()).isTrue();
    assertThat(((Shown.Ohms) shown).steady()).isTrue();
  }

  /** A film of 50 MΩ between rod and flame: a prod goes through it, so only the leads are left. */
  @Test
  void goodOhmsProveNothing() {
    Circuit coated =
        SenseCircuits.of(
            SenseCircuits.BOARD, new Lead(1, 200e6, 80e-12), new Film(50e6, 1e-10), null);
    Subject dead = Subject.of(coated).unpowered();
    assertThat(si(OHMS, new Across(Point.ROD, Point.ROD_SURFACE), dead))
        .isCloseTo(0.2, within(1e-12));
    // through the lead as well: its ohm
    assertThat(si(OHMS, new Across(Point.LEAD, Point.ROD_SURFACE), dead))
        .isCloseTo(1.2, within(1e-9));
    assertThat(measure(OHMS, new Across(Point.ROD, Point.ROD_SURFACE), dead).cautions())
        .isNotEmpty();
  }

  /** I = law(V): the resistance that shows is where the test source's line meets the deposit's. */
  @Test
  void aDepositReadsByDirection() {
    RectifyingDeposit law = new RectifyingDeposit(1e6);
    Circuit deposit =
        SenseCircuits.of(SenseCircuits.BOARD, new Lead(OPEN_LEAD, null, null), null, null)
            .with(new Conductor(Part.DEPOSIT, Point.ROD, Point.CHASSIS, law))
            .unpowered();
    double amps = law.currentInSeriesAmps(1, 10e3);
    double back = -law.currentInSeriesAmps(-1, 10e3);
    Across across = new Across(Point.ROD, Point.CHASSIS);
    // the solver's own tolerance, 1e-11 of a volt, over the drop at 10 kΩ, 1e-2 of a volt
    assertThat(at(OHMS, across, deposit)).isCloseTo(1 / amps - 10e3 + 0.2, within(10.0));
    double backOhms = 1 / back - 10e3 + 0.2;
    assertThat(at(OHMS, across.swapped(), deposit)).isCloseTo(backOhms, within(1e-4 * backOhms));
    assertThat(backOhms).isNotCloseTo(1 / amps - 10e3 + 0.2, within(1e4));
  }

  private static final double OPEN_LEAD = Double.POSITIVE_INFINITY;

  /**
   * 120 to ground and 0; 96 V in phase and 144 V out of phase with neutral and common tied: sums
   * and differences of 120 and 24.
   */
  @Test
  void polarityAndPhase() {
    Circuit circuit = SenseCircuits.leadOff();
    Subject right = new Subject(circuit, Supply.CORRECT, false, false);
    Subject swapped = new Subject(circuit, Supply.CORRECT.lineReversed(), false, false);
    Subject outOfPhase = new Subject(circuit, Supply.CORRECT.phaseReversed(), false, false);
    assertThat(supply(right, SupplyPoint.LINE, SupplyPoint.GROUND)).isCloseTo(120, digits());
    assertThat(supply(right, SupplyPoint.NEUTRAL, SupplyPoint.GROUND)).isZero();
    assertThat(supply(swapped, SupplyPoint.LINE, SupplyPoint.GROUND)).isZero();
    assertThat(supply(swapped, SupplyPoint.NEUTRAL, SupplyPoint.GROUND)).isCloseTo(120, digits());
    assertThat(supply(right, SupplyPoint.LINE, SupplyPoint.CONTROL_HOT)).isCloseTo(96, digits());
    assertThat(supply(outOfPhase, SupplyPoint.LINE, SupplyPoint.CONTROL_HOT))
        .isCloseTo(144, digits());
    assertThat(supply(outOfPhase, SupplyPoint.CONTROL_HOT, SupplyPoint.CONTROL_COMMON))
        .isCloseTo(24, digits());
  }

  /** Rounding of 120 V in steps of 1e-13. */
  private static org.assertj.core.data.Offset<Double> digits() {
    return within(1e-9);
  }

  private static double supply(Subject subject, SupplyPoint red, SupplyPoint black) {
    return si(AC_VOLTS, new AcrossSupply(red, black), subject);
  }

  /**
   * An ideal half-wave of a total resistance: DC √2/π·V/R, AC √(π²/4 − 1) = 1.211 times it. A diode
   * is a square-root law that hardly conducts one way and, without its bend, hardly drops the
   * other.
   */
  @Test
  void halfWave() {
    SquareRootLaw diode = new SquareRootLaw(1e-15, 1, 0);
    Circuit circuit =
        SenseCircuits.of(
            new halfwave.circuit.LumpedCircuit.Source(120, 60, 13.5e6, null, null),
            new Lead(0, null, null),
            null,
            diode);
    double dc = at(DC_MICROAMPS, AT_ROD, circuit);
    double expected = Math.sqrt(2) / Math.PI * 120 / (13.5e6 + 1500);
    // ground and the diode's own drop, below 1e-6 of the volts
    assertThat(dc).isCloseTo(expected, within(1e-6 * expected));
    assertThat(dc).isCloseTo(4.0e-6, within(0.05e-6));
    double alternating = at(AC_MICROAMPS, AT_ROD, circuit);
    assertThat(alternating / dc).isCloseTo(Math.sqrt(Math.PI * Math.PI / 4 - 1), within(1e-6));
    assertThat(alternating / dc).isCloseTo(1.211, within(5e-4));
  }
}
