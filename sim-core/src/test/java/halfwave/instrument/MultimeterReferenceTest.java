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
import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Unit;
import halfwave.validation.Validated;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The multimeter against closed forms of linear circuits; each test states its form. */
@Validated(Area.METERS)
class MultimeterReferenceTest {

  private static final Reference FORM = Reference.calc("closed form of a linear circuit");
  private static final Reference OHM = Reference.calc("Ohm's law");
  private static final String ROUNDING = "rounding";
  private static final String NOTHING = "rounding of volts over the meter's burden";

  private static final Across TERMINAL = new Across(Point.TERMINAL, Point.COMMON);
  private static final InSenseLead AT_BOARD = new InSenseLead(LeadEnd.BOARD, true);
  private static final InSenseLead AT_ROD = new InSenseLead(LeadEnd.ROD, true);

  private static double at(MeterFunction function, HookUp hookUp, Circuit circuit) {
    return si(function, hookUp, Subject.of(circuit));
  }

  /** E·|Z/(Z + R)| with 10 MΩ and 100 pF; with 3 kΩ. Half of the last digit given. */
  @Test
  void whatAMeterLeavesOfTheSenseVoltage() {
    FORM.check(
            "120 V behind 2.2 MΩ, 10 MΩ meter",
            Unit.VOLTS,
            at(AC_VOLTS, TERMINAL, SenseCircuits.leadOff()))
        .isCloseTo(98.1, 0.05, "half of the last digit given");
    FORM.check(
            "120 V behind 2.2 MΩ, 3 kΩ meter",
            Unit.VOLTS,
            at(LOW_IMPEDANCE_AC_VOLTS, TERMINAL, SenseCircuits.leadOff()))
        .isCloseTo(0.163, 0.0005, "half of the last digit given");
  }

  /** E/R: 120 V over 20 MΩ is 6 µA AC. Linear: no DC. */
  @Test
  void leakageIsAlternatingOnly() {
    Circuit leaking =
        SenseCircuits.of(SenseCircuits.stiff(120), new Lead(1, 20e6, null), null, null);
    FORM.check(
            "120 V over 20 MΩ of leakage, AC", Unit.MICROAMPS, at(AC_MICROAMPS, AT_BOARD, leaking))
        .isCloseTo(6e-6, 6e-10, "the burden is less than 1e-4 of 20 MΩ");
    nothing("leakage", leaking);
  }

  /** E·ωC: 90 V, 60 Hz, 100 pF give 3.4 µA AC, to the digits given. Linear: no DC. */
  @Test
  void cableIsAlternatingOnly() {
    Circuit cable =
        SenseCircuits.of(SenseCircuits.stiff(90), new Lead(1, null, 100e-12), null, null);
    FORM.check("90 V on 100 pF of cable, AC", Unit.MICROAMPS, at(AC_MICROAMPS, AT_BOARD, cable))
        .isCloseTo(3.4e-6, 0.05e-6, "half of the last digit given");
    nothing("cable", cable);
  }

  private static void nothing(String what, Circuit circuit) {
    FORM.check("no DC in leakage or cable", Unit.MICROAMPS, at(DC_MICROAMPS, AT_BOARD, circuit))
        .at(what)
        .isCloseTo(0, 1e-12, NOTHING);
    FORM.check("no AC beyond leakage or cable", Unit.MICROAMPS, at(AC_MICROAMPS, AT_ROD, circuit))
        .at(what)
        .isCloseTo(0, 1e-12, NOTHING);
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
    FORM.check("DC at the board less DC at the rod", Unit.MICROAMPS, board - rod)
        .isWithin(1e-3, leak, "the burden moves both by less than 1.5 kΩ of 2.2 MΩ");
    assertThat(rod).isGreaterThan(board);
  }

  /** 1.5 kΩ beside megohms: below the last digit of a meter, 0.01 µA. */
  @Test
  void theBurdenCostsNothing() {
    Circuit circuit = SenseCircuits.burning();
    double bare = ((MeterReading.Amps) new Microammeter(0).read(circuit)).meanAmps();
    FORM.check("DC with the burden of a meter", Unit.MICROAMPS, at(DC_MICROAMPS, AT_BOARD, circuit))
        .isCloseTo(bare, 0.01e-6, "the last digit of a meter");
  }

  /** Ohm: source resistance and return side by side, both leads' 0.2 Ω on top. */
  @Test
  void ohmsOfADeadBoard() {
    Circuit dead = SenseCircuits.leadOff().unpowered();
    for (Across leads : List.of(TERMINAL, TERMINAL.swapped())) {
      OHM.check("ohms of a dead board", Unit.OHMS, at(OHMS, leads, dead))
          .at(leads.equals(TERMINAL) ? "red on the terminal" : "swapped")
          .isCloseTo(2.2e6 + 0.2, 1e-3, "what rounding leaves of 0.5 µA");
    }
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
    OHM.check("ground of 0.3 Ω with both leads", Unit.OHMS, si(shown))
        .isCloseTo(0.5, 1e-9, ROUNDING);
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
    OHM.check(
            "rod with a film of 50 MΩ, pierced by the prod",
            Unit.OHMS,
            si(OHMS, new Across(Point.ROD, Point.ROD_SURFACE), dead))
        .isCloseTo(0.2, 1e-12, ROUNDING);
    // through the lead as well: its ohm
    OHM.check(
            "lead and rod with a film of 50 MΩ",
            Unit.OHMS,
            si(OHMS, new Across(Point.LEAD, Point.ROD_SURFACE), dead))
        .isCloseTo(1.2, 1e-9, ROUNDING);
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
    FORM.check("ohms of a deposit that rectifies", Unit.OHMS, at(OHMS, across, deposit))
        .isCloseTo(1 / amps - 10e3 + 0.2, 10, "the solver's 1e-11 V over the drop at 10 kΩ");
    double backOhms = 1 / back - 10e3 + 0.2;
    FORM.check("the deposit with leads swapped", Unit.OHMS, at(OHMS, across.swapped(), deposit))
        .isWithin(1e-4, backOhms, "the solver's 1e-11 V over the drop at 10 kΩ");
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
    sums("line to ground", supply(right, SupplyPoint.LINE, SupplyPoint.GROUND), 120);
    assertThat(supply(right, SupplyPoint.NEUTRAL, SupplyPoint.GROUND)).isZero();
    assertThat(supply(swapped, SupplyPoint.LINE, SupplyPoint.GROUND)).isZero();
    sums("swapped", supply(swapped, SupplyPoint.NEUTRAL, SupplyPoint.GROUND), 120);
    sums("in phase", supply(right, SupplyPoint.LINE, SupplyPoint.CONTROL_HOT), 96);
    sums("out of phase", supply(outOfPhase, SupplyPoint.LINE, SupplyPoint.CONTROL_HOT), 144);
    sums("control", supply(outOfPhase, SupplyPoint.CONTROL_HOT, SupplyPoint.CONTROL_COMMON), 24);
  }

  private static void sums(String at, double computed, double expected) {
    FORM.check("sums and differences of 120 V and 24 V", Unit.VOLTS, computed)
        .at(at)
        .isCloseTo(expected, 1e-9, "rounding of 120 V in steps of 1e-13");
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
    FORM.check("half-wave: DC", Unit.MICROAMPS, dc)
        .isWithin(1e-6, expected, "ground and the diode's own drop");
    FORM.check("half-wave: DC as quoted", Unit.MICROAMPS, dc)
        .isCloseTo(4.0e-6, 0.05e-6, "half of the last digit quoted");
    double alternating = at(AC_MICROAMPS, AT_ROD, circuit);
    FORM.check("half-wave: AC over DC", Unit.RATIO, alternating / dc)
        .isCloseTo(Math.sqrt(Math.PI * Math.PI / 4 - 1), 1e-6, "ground and the diode's own drop");
    FORM.check("half-wave: AC over DC as quoted", Unit.RATIO, alternating / dc)
        .isCloseTo(1.211, 5e-4, "half of the last digit quoted");
  }
}
