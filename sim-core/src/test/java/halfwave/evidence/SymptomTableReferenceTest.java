package halfwave.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Bench;
import halfwave.bench.Condition;
import halfwave.bench.ShippedBenches;
import halfwave.board.BoardSettings;
import halfwave.board.ShippedBoards;
import halfwave.board.StatusCode;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import halfwave.instrument.MeterReading;
import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Unit;
import halfwave.validation.Validated;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The computed table against what the trade says each fault looks like: the symptom table that the
 * project's founders compiled from manuals, trade articles and common practice; its row numbers
 * stand with the tests. Directions and patterns, not sizes. Where the model differs the test says
 * so, and {@code docs/model.md} why.
 */
@Validated(Area.EVIDENCE)
class SymptomTableReferenceTest {

  private static final Reference TABLE_OF_SYMPTOMS =
      Reference.practice("table of symptoms from manuals, trade articles and practice");
  private static final Bench BENCH = ShippedBenches.standard();
  private static final BoardSettings BOARD = ShippedBoards.standard(BENCH.design().ignition());
  private static final SymptomTable ALL =
      SymptomTable.of(BENCH, BOARD, (done, all) -> true).orElseThrow();
  private static final Map<FaultKind, Symptoms> TABLE = ALL.faulty();
  private static final Symptoms HEALTHY = ALL.healthy();

  private static double dc(Symptoms symptoms) {
    MeterReading at = symptoms.warm().or(symptoms::trial).orElseThrow();
    return ((MeterReading.Amps) at).meanAmps();
  }

  private static double ac(Symptoms symptoms) {
    MeterReading at = symptoms.warm().or(symptoms::trial).orElseThrow();
    return ((MeterReading.Amps) at).alternatingRmsAmps();
  }

  private static double volts(MeterReading reading) {
    return ((MeterReading.Volts) reading).alternatingRmsVolts();
  }

  private static Symptoms of(FaultKind kind) {
    return TABLE.get(kind);
  }

  /** Reference line: 2 to 6 µA DC steady, some AC, 80 to 110 V with a 10 MΩ meter. */
  @Test
  void healthyIsHealthy() {
    assertThat(HEALTHY.course()).isEqualTo(Course.RUNS);
    TABLE_OF_SYMPTOMS
        .check("healthy: DC", Unit.MICROAMPS, dc(HEALTHY))
        .isBetween(2e-6, 6e-6, "the table's line of reference");
    sourceVolts("healthy", HEALTHY);
    assertThat(TABLE).hasSameSizeAs(FaultKind.values());
  }

  /** How the call goes. The number is that of the row in the trade's table. */
  @ParameterizedTest
  @CsvSource({
    "1, ROD_FOULED, RUNS_WEAKLY",
    "2, ROD_SILICA, GOES_OUT",
    "3, ROD_ABOVE_FLAME, GOES_OUT",
    "5, CERAMIC_CRACKED, GOES_OUT",
    "5, CERAMIC_LEAKS_HOT, IS_LOST",
    "6, ROD_TOUCHES_BURNER, GOES_OUT",
    "7, LEAD_BROKEN, GOES_OUT",
    "8, CONNECTOR_CORRODED, RUNS_WEAKLY",
    "8, CONNECTOR_LOOSE, IS_LOST",
    "9, GROUND_LOST, GOES_OUT",
    "9, GROUND_LOOSE, IS_LOST",
    "10, LINE_REVERSED, GOES_OUT",
    "12, CROSSOVER_DIRTY, PROVES_LATE",
    "12, CROSSOVER_BLOCKED, GOES_OUT",
    "14, AIR_EXCESSIVE, GOES_OUT",
    "17, AIR_FROM_BLOWER, IS_LOST",
    "18, BOARD_DEAF, GOES_OUT",
    "18, SENSE_SUPPLY_WEAK, GOES_OUT",
    "19, VALVE_LEAKS, SEES_FALSE_FLAME",
    "19, BOARD_SEES_FLAME, SEES_FALSE_FLAME"
  })
  void callGoesAsTheTradeSays(int row, FaultKind kind, Course course) {
    TABLE_OF_SYMPTOMS.same(
        "how a call goes", "row " + row + ", " + kind, course, of(kind).course());
  }

  private static void sourceVolts(Object at, Symptoms symptoms) {
    TABLE_OF_SYMPTOMS
        .check("volts at the terminal, healthy or filmed", Unit.VOLTS, volts(symptoms.standby()))
        .at(at)
        .isBetween(80, 110, "the table's line of reference");
  }

  /** Rows 1, 3, 4, 9, 15: the DC falls; row 1: the AC falls less than the DC. */
  @ParameterizedTest
  @CsvSource({
    "ROD_FOULED",
    "ROD_PULLED_BACK",
    "CONNECTOR_CORRODED",
    "GROUND_CORRODED",
    "BURNER_SCALED",
    "GAS_PRESSURE_LOW",
    "PORTS_BLOCKED",
    "ROD_ABOVE_FLAME"
  })
  void dcFalls(FaultKind kind) {
    TABLE_OF_SYMPTOMS
        .check("what lowers the DC: over healthy", Unit.RATIO, dc(of(kind)) / dc(HEALTHY))
        .at(kind)
        .isBelow(0.9, "it falls, visibly");
  }

  @ParameterizedTest
  @CsvSource({"ROD_FOULED", "ROD_SILICA", "BURNER_SCALED"})
  void filmTakesTheDcBeforeTheAc(FaultKind kind) {
    assertThat(ac(of(kind)) / ac(HEALTHY)).isGreaterThan(dc(of(kind)) / dc(HEALTHY));
    sourceVolts(kind, of(kind));
  }

  /** Rows 5 and 6: AC up, terminal volts sag, and come back with the lead lifted. */
  @ParameterizedTest
  @CsvSource({"CERAMIC_CRACKED", "ROD_TOUCHES_BURNER", "LEAD_CHAFED", "INSULATION_DAMP"})
  void leakPullsTheVoltsDown(FaultKind kind) {
    TABLE_OF_SYMPTOMS
        .check("leaks: AC over healthy", Unit.RATIO, ac(of(kind)) / ac(HEALTHY))
        .at(kind)
        .isAbove(2, "up");
    double sag = volts(of(kind).standby()) / volts(HEALTHY.standby());
    TABLE_OF_SYMPTOMS
        .check("leaks: volts over healthy", Unit.RATIO, sag)
        .at(kind)
        .isBelow(0.5, "they sag");
    fullVolts("leaks: volts with the lead lifted", kind, volts(of(kind).leadOff()));
    assertThat(of(kind).code()).isEqualTo(StatusCode.SENSE_SHORTED);
  }

  /** Rows 7 and 9: nothing flows, full volts at the board. */
  @ParameterizedTest
  @CsvSource({"LEAD_BROKEN", "CONNECTOR_OFF", "GROUND_LOST"})
  void openPathKeepsTheVolts(FaultKind kind) {
    TABLE_OF_SYMPTOMS
        .check("open path: DC", Unit.MICROAMPS, Math.abs(dc(of(kind))))
        .at(kind)
        .isBelow(1e-9, "nothing to a meter that shows 0.1 µA");
    fullVolts("open path: volts at the board", kind, volts(of(kind).standby()));
  }

  private static void fullVolts(String subject, FaultKind kind, double volts) {
    TABLE_OF_SYMPTOMS
        .check(subject, Unit.VOLTS, volts)
        .at(kind)
        .isAbove(80, "the least of a healthy source");
  }

  /** Rows 10 and 18, and "igniter glows, no volts at the sense terminal: board or wiring". */
  @ParameterizedTest
  @CsvSource({"LINE_REVERSED", "SENSE_SUPPLY_DEAD"})
  void deadSourceHasNoVoltsWithTheLeadOff(FaultKind kind) {
    TABLE_OF_SYMPTOMS
        .check("dead source: volts with the lead off", Unit.VOLTS, volts(of(kind).leadOff()))
        .at(kind)
        .isBelow(0.1, "none");
    assertThat(of(kind).course()).isEqualTo(Course.GOES_OUT);
  }

  /** Row 18: the meter is in range, and yet it does not prove. */
  @Test
  void deafBoardHasAGoodReading() {
    TABLE_OF_SYMPTOMS
        .check("deaf board: DC", Unit.MICROAMPS, dc(of(FaultKind.BOARD_DEAF)))
        .isAbove(2e-6, "in range");
  }

  /** Row 14: a lifting flame takes the signal away; the model even reverses it. */
  @Test
  void liftingFlameLosesTheSignal() {
    TABLE_OF_SYMPTOMS
        .check("too much air: DC", Unit.MICROAMPS, dc(of(FaultKind.AIR_EXCESSIVE)))
        .isBelow(0.5e-6, "a usual drop-out");
  }

  /** Row 16: up, or down where the flame lifts. */
  @Test
  void highGasPressureRaisesTheAc() {
    assertThat(ac(of(FaultKind.GAS_PRESSURE_HIGH))).isGreaterThan(ac(HEALTHY));
  }

  /**
   * What only looks like lost sensing: no start, or no fire, and a sense circuit as it should be.
   */
  @ParameterizedTest
  @CsvSource({
    "PRESSURE_SWITCH_OPEN, DOES_NOT_START",
    "PRESSURE_SWITCH_CLOSED, DOES_NOT_START",
    "LIMIT_OPEN, DOES_NOT_START",
    "INDUCER_DEAD, DOES_NOT_START",
    "BOARD_FAULT, DOES_NOT_START",
    "GAS_SHUT, DOES_NOT_LIGHT",
    "IGNITER_BROKEN, DOES_NOT_LIGHT",
    "VALVE_DRIVER_DEAD, DOES_NOT_LIGHT",
    "VALVE_STUCK_SHUT, DOES_NOT_LIGHT"
  })
  void innocentSensing(FaultKind kind, Course course) {
    TABLE_OF_SYMPTOMS.same("what only looks like lost sensing", kind, course, of(kind).course());
    assertThat(volts(of(kind).standby())).isEqualTo(volts(HEALTHY.standby()));
  }

  /** Row 13 says little or none with a yellow flame; the model does not (docs/model.md). */
  @Test
  void yellowFlameDiffersFromPractice() {
    TABLE_OF_SYMPTOMS
        .check("yellow flame: DC", Unit.MICROAMPS, dc(of(FaultKind.AIR_BLOCKED)))
        .isKnownToDiffer(
            0,
            0.5e-6,
            2.6e-6,
            0.2e-6,
            "no soot, no cold air dragged in and no flicker in the model");
  }

  @Test
  void watchEndsIt() {
    assertThat(SymptomTable.of(BENCH, BOARD, (done, all) -> done < 2)).isEmpty();
  }

  /** Row 21: good after ten seconds and more; here in a pilot's long trial. */
  @Test
  void slowRiseProvesLate() {
    Bench pilot = ShippedBenches.named("intermittent-pilot").orElseThrow();
    Bench filmed = Fault.of(FaultKind.ROD_SILICA, 1e-6).on(pilot.with(Condition.HEALTHY));
    Symptoms slow = Symptoms.of(filmed, ShippedBoards.standard(pilot.design().ignition()), 1);
    assertThat(slow.course()).isEqualTo(Course.PROVES_LATE);
  }
}
