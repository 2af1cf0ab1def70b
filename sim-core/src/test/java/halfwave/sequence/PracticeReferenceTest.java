package halfwave.sequence;

import static halfwave.sequence.Calls.CALL_MILLIS;
import static halfwave.sequence.Calls.HOUR;
import static halfwave.sequence.Calls.MINUTE;
import static halfwave.sequence.Calls.SECOND;
import static halfwave.sequence.Calls.benchFor;
import static halfwave.sequence.Calls.board;
import static halfwave.sequence.Calls.entries;
import static halfwave.sequence.Calls.largestAmps;
import static halfwave.sequence.Calls.play;
import static halfwave.sequence.Calls.set;
import static halfwave.sequence.Calls.stages;
import static halfwave.sequence.Calls.upset;
import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.ApplianceCondition;
import halfwave.bench.Bench;
import halfwave.bench.Change;
import halfwave.bench.Coat;
import halfwave.bench.Condition;
import halfwave.bench.Disorder;
import halfwave.bench.Intermittent;
import halfwave.bench.Parameter;
import halfwave.bench.ShippedBenches;
import halfwave.bench.Trigger;
import halfwave.board.BoardSettings;
import halfwave.board.FlameSignal;
import halfwave.board.ShippedBoards;
import halfwave.board.Stage;
import halfwave.board.StatusCode;
import halfwave.board.Times;
import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Unit;
import halfwave.validation.Validated;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;

/**
 * What technicians see a furnace do. Sources: common practice, no published source, unless a test
 * names another; the ranges are those of the trade's own words ("within 2 to 3 seconds").
 */
@Validated(Area.SEQUENCE)
class PracticeReferenceTest {

  private static final Reference PRACTICE = Reference.practice("common practice");
  private static final Reference SYMPTOMS = Reference.seen("symptom tables, number 21");
  private static final Reference OHM = Reference.calc("Ohm's law");
  private static final Reference HEATING =
      Reference.memory("rod heating with textbook coefficients, model's section 3");

  static final List<BoardSettings> BOARDS = ShippedBoards.all();

  private static final long STEADY_MILLIS = 5 * MINUTE;

  private static Bench with(Bench bench, Condition condition) {
    return bench.with(condition);
  }

  private static Bench with(Bench bench, Intermittent intermittent) {
    Condition c = bench.condition();
    ApplianceCondition appliance = c.appliance().with(intermittent);
    return bench.with(c.withAppliance(appliance));
  }

  /** Each stage lasts what is set; only the pressure switch and the flame take their own time. */
  @ParameterizedTest
  @FieldSource("BOARDS")
  void healthyCallKeepsTheSetTimes(BoardSettings settings) {
    Segment call = play(benchFor(settings), settings, STEADY_MILLIS);
    Times times = settings.times();

    long check = entries(call, Stage.SELF_CHECK).get(0);
    Stage first = times.prePurgeMillis() > 0 ? Stage.PRE_PURGE : Stage.TRIAL;
    long purge = entries(call, first).get(0);
    long trial = entries(call, Stage.TRIAL).get(0);
    long proving = entries(call, Stage.PROVING).get(0);
    long run = entries(call, Stage.RUN).get(0);

    assertThat(check).isEqualTo(CALL_MILLIS);
    assertThat(purge - check)
        .isBetween(times.selfCheckMillis(), times.selfCheckMillis() + times.pressureProofMillis());
    long warmUp = settings.ignition().hotSurface() ? times.warmUpMillis() : 0;
    assertThat(trial - purge).isEqualTo(times.prePurgeMillis() + warmUp);
    assertThat(run - proving).isEqualTo(times.provingMillis());
    PRACTICE
        .check("trial to proof, healthy", Unit.SECONDS, (proving - trial) / 1000.0)
        .at(settings.name())
        .isBetween(
            0.3, 3, "lit within a second, carried along in another, seen by the filter in a third");
    assertThat(entries(call, Stage.INTER_PURGE)).isEmpty();
    assertThat(call.end().board().stage()).isEqualTo(Stage.RUN);
    assertThat(call.end().outputs().blower()).isTrue();
    PRACTICE
        .check("signal of a healthy call", Unit.MICROAMPS, call.end().filter().meanAmps())
        .at(settings.name())
        .isBetween(1.9e-6, 3.7e-6, "2 to 3.5 µA and what the filter leaves of flicker");
  }

  /** Interrupting the sense lead puts the burners out within 2 to 3 s. */
  @ParameterizedTest
  @FieldSource("BOARDS")
  void senseLeadPulled(BoardSettings settings) {
    long pulled = STEADY_MILLIS;
    Segment call =
        play(
            benchFor(settings),
            settings,
            pulled + 4 * SECOND,
            set(pulled, Parameter.CONNECTOR, Double.POSITIVE_INFINITY));

    long off =
        call.events().stream()
            .filter(e -> e.transition() != null && e.transition().from() == Stage.RUN)
            .filter(e -> !e.transition().to().gas())
            .mapToLong(Event::timeMillis)
            .findFirst()
            .orElseThrow();
    // ten time constants empty the filter, whatever was in it
    double filterMillis = 10_000 * settings.sensing().filterSeconds();
    assertThat(off - pulled)
        .isGreaterThan(settings.sensing().responseMillis())
        .isLessThan((long) (settings.sensing().responseMillis() + filterMillis));
    PRACTICE
        .check("sense lead pulled: gas off after", Unit.SECONDS, (off - pulled) / 1000.0)
        .at(settings.name())
        .isBelow(3, "within 2 to 3 s");
    assertThat(call.end().outputs().gas()).isFalse();
  }

  /** Burners light, burn for the trial, go out; so many trials, then lockout. */
  @ParameterizedTest
  @FieldSource("BOARDS")
  void lostSensingRetriesAndLocksOut(BoardSettings settings) {
    Bench bench = benchFor(settings);
    Bench off = with(bench, bench.condition().withConnector(Double.POSITIVE_INFINITY));
    Segment call = play(off, settings, 20 * MINUTE);

    List<Long> trials = entries(call, Stage.TRIAL);
    long lockout = entries(call, Stage.SOFT_LOCKOUT).get(0);
    int most = settings.counting().mostTrials();
    assertThat(trials.stream().filter(t -> t < lockout)).hasSize(most);
    assertThat(lockout - trials.get(most - 1)).isEqualTo(settings.times().trialMillis());
    assertThat(entries(call, Stage.PROVING)).isEmpty();
    // the gas does burn each time: it is the sensing that is lost
    assertThat(call.samples().stream().filter(s -> s.timeMillis() < lockout))
        .anyMatch(s -> s.growthRatio() > 0.9);
  }

  /** Soft lockout of an hour on many boards, of three on some; then it tries again. */
  @ParameterizedTest
  @CsvSource({"carbide-four-trials,1", "nitride-five-trials,1", "carbide-three-hours,3"})
  void softLockoutEndsByItself(String name, int hours) {
    BoardSettings settings = board(name);
    Bench bench = benchFor(settings);
    Bench off = with(bench, bench.condition().withConnector(Double.POSITIVE_INFINITY));
    Segment call = play(off, settings, 4 * HOUR);

    long lockout = entries(call, Stage.SOFT_LOCKOUT).get(0);
    assertThat(entries(call, Stage.STANDBY)).contains(lockout + hours * HOUR);
    assertThat(entries(call, Stage.TRIAL)).anyMatch(t -> t > lockout + hours * HOUR);
    assertThat(entries(call, Stage.TRIAL))
        .noneMatch(t -> t > lockout && t < lockout + hours * HOUR);
  }

  /** Switching the power off for 5 to 10 s clears a lockout; a flicker of it does not. */
  @ParameterizedTest
  @CsvSource({"100,false", "1000,false", "10000,true"})
  void powerClearsLockout(long offMillis, boolean clears) {
    BoardSettings settings = board("carbide-four-trials");
    Bench bench = benchFor(settings);
    long cut = 10 * MINUTE;
    Segment call =
        play(
            bench,
            settings,
            cut + 3 * MINUTE,
            upset(0, Disorder.GAS_SHUT, true),
            upset(cut, Disorder.GAS_SHUT, false),
            new Act(cut, new Deed.Supply(false)),
            new Act(cut + offMillis, new Deed.Supply(true)));

    assertThat(entries(call, Stage.SOFT_LOCKOUT).get(0)).isLessThan(cut);
    assertThat(call.end().board().stage()).isEqualTo(clears ? Stage.RUN : Stage.SOFT_LOCKOUT);
  }

  /** A rod on the burner, or a jumper, gives AC without DC: no flame, and the valve shuts. */
  @ParameterizedTest
  @FieldSource("BOARDS")
  void jumperDoesNotFoolTheBoard(BoardSettings settings) {
    Bench bench = benchFor(settings);
    Segment start = play(with(bench, bench.condition().withJumper(0)), settings, 20 * MINUTE);
    assertThat(entries(start, Stage.PROVING)).isEmpty();
    assertThat(entries(start, Stage.SOFT_LOCKOUT)).isNotEmpty();
    PRACTICE
        .check("signal with a jumper", Unit.MICROAMPS, largestAmps(start, 0, 20 * MINUTE))
        .at(settings.name())
        .isBelow(0.05e-6, "no DC: a tenth of the drop-out of most boards");
    assertThat(start.samples()).anyMatch(s -> s.code() == StatusCode.SENSE_SHORTED);

    long joined = STEADY_MILLIS;
    Segment running = play(bench, settings, joined + 3 * SECOND, set(joined, Parameter.JUMPER, 0));
    assertThat(running.end().outputs().gas()).isFalse();
  }

  /** The igniter glows though the sense terminal is dead: board or wiring, not the rod. */
  @Test
  void deadSenseSourceStillGlows() {
    Segment call =
        play(
            ShippedBenches.standard(),
            board("carbide-four-trials"),
            MINUTE,
            set(0, Parameter.SENSE_SUPPLY, 0));

    assertThat(call.samples()).anyMatch(s -> s.igniterKelvin() > 1500);
    assertThat(call.samples()).anyMatch(s -> s.growthRatio() > 0.9);
    assertThat(largestAmps(call, 0, MINUTE)).isZero();
    assertThat(entries(call, Stage.INTER_PURGE)).hasSize(1);
  }

  /** A signal below pick-up: lights, burns to the end of the trial, goes out. */
  @Test
  void weakSignalEndsWithTheTrial() {
    BoardSettings settings = board("carbide-four-trials");
    Bench bench = ShippedBenches.standard();
    // 30 megohm of burner scale leave a few tenths of a microamp
    Bench weak = with(bench, bench.condition().withConnector(25e6));
    Segment call = play(weak, settings, MINUTE);

    long trial = entries(call, Stage.TRIAL).get(0);
    assertThat(entries(call, Stage.INTER_PURGE).get(0) - trial)
        .isEqualTo(settings.times().trialMillis());
    PRACTICE
        .check(
            "signal with 25 MΩ in the connector",
            Unit.MICROAMPS,
            largestAmps(call, trial, trial + settings.times().trialMillis()))
        .isBetween(0.2e-6, settings.sensing().pickUpAmps(), "weak, and below pick-up");
    assertThat(call.samples()).anyMatch(s -> s.growthRatio() > 0.9);
  }

  /** With a film the cold rod gives no signal; as it warms in a long trial it proves. */
  @Test
  void filmProvesOnceTheRodIsHot() {
    BoardSettings settings = board("pilot-retry");
    Bench bench = benchFor(settings);
    Bench filmed = with(bench, bench.condition().withRodCoat(Coat.even(1e-6, 1000)));

    long clean = entries(play(bench, settings, MINUTE), Stage.PROVING).get(0);
    Segment call = play(filmed, settings, 2 * MINUTE);
    long late = entries(call, Stage.PROVING).get(0);

    PRACTICE
        .check("clean cold rod: proof after the call", Unit.SECONDS, (clean - CALL_MILLIS) / 1000.0)
        .isBelow(4, "a clean rod is seen within seconds");
    SYMPTOMS
        .check("filmed cold rod: proof after the call", Unit.SECONDS, (late - CALL_MILLIS) / 1000.0)
        .isAbove(10, "good after 10 s and more");
    assertThat(call.end().board().stage()).isEqualTo(Stage.RUN);
    Sample cold =
        call.samples().stream().filter(s -> s.rodKelvin() > 400).findFirst().orElseThrow();
    PRACTICE
        .check("filmed rod at 400 K: signal", Unit.MICROAMPS, cold.filteredAmps())
        .isBelow(0.05e-6, "no signal: a tenth of the drop-out of most boards");
  }

  /** A fouled rod whose film has cracks: weak from a cold start on, and it runs. */
  @Test
  void fouledRodRunsWeakly() {
    BoardSettings settings = board("carbide-four-trials");
    Bench bench = ShippedBenches.standard();
    Bench fouled = with(bench, bench.condition().withRodCoat(new Coat(100e-6, 1000, 8e6)));
    Segment call = play(fouled, settings, 3 * MINUTE);

    assertThat(entries(call, Stage.TRIAL)).hasSize(1);
    assertThat(call.end().board().stage()).isEqualTo(Stage.RUN);
    assertThat(call.end().filter().signal()).isEqualTo(FlameSignal.WEAK);
    assertThat(call.samples().get(call.samples().size() - 1).code())
        .isEqualTo(StatusCode.WEAK_FLAME);
  }

  /** Recirculation or a leaking heat exchanger: a good flame is lost when the blower starts. */
  @Test
  void flameLostWhenTheBlowerStarts() {
    BoardSettings settings = board("carbide-four-trials");
    Bench blown =
        with(
            ShippedBenches.standard(),
            new Intermittent(Trigger.BLOWER, Change.Turned.to(Parameter.BURNER_ATTACHMENT, 0.02)));
    Segment call = play(blown, settings, 2 * MINUTE);

    long run = entries(call, Stage.RUN).get(0);
    long blower = run + settings.times().blowerOnMillis();
    long lost = entries(call, Stage.INTER_PURGE).get(0);
    PRACTICE
        .check(
            "signal before the blower starts",
            Unit.MICROAMPS,
            largestAmps(call, run + SECOND, blower))
        .isAbove(1.5e-6, "good: above the board's warning");
    PRACTICE
        .check("blower blows the flame off: lost after", Unit.SECONDS, (lost - blower) / 1000.0)
        .isBetween(
            settings.sensing().responseMillis() / 1000.0, 5, "from the response time to 5 s");
    assertThat(call.events()).anyMatch(e -> e.subject() == Event.Subject.FAULT);
  }

  /** What looks like lost sensing and is not. */
  @ParameterizedTest
  @CsvSource({
    "PRESSURE_SWITCH_OPEN,PRESSURE_FAULT,PRESSURE_OPEN",
    "PRESSURE_SWITCH_CLOSED,SELF_CHECK,PRESSURE_CLOSED",
    "LIMIT_OPEN,LIMIT_OPEN,LIMIT_OPEN",
    "DOOR_OPEN,OFF,DARK",
    "BOARD_FAULT,HARD_LOCKOUT,HARD_LOCKOUT"
  })
  void otherFaultsKeepTheGasShut(Disorder disorder, Stage stage, StatusCode code) {
    Segment call =
        play(
            ShippedBenches.standard(),
            board("carbide-four-trials"),
            MINUTE,
            upset(0, disorder, true));

    assertThat(call.end().board().stage()).isEqualTo(stage);
    assertThat(call.samples().get(call.samples().size() - 1).code()).isEqualTo(code);
    assertThat(call.samples()).noneMatch(s -> s.outputs().gas());
  }

  /** No gas, a broken igniter, a stuck valve: nothing burns, every trial fails. */
  @ParameterizedTest
  @CsvSource({"GAS_SHUT", "IGNITER_BROKEN", "VALVE_STUCK_SHUT"})
  void nothingBurns(Disorder disorder) {
    Segment call =
        play(
            ShippedBenches.standard(),
            board("carbide-four-trials"),
            10 * MINUTE,
            upset(0, disorder, true));

    assertThat(call.samples()).noneMatch(s -> s.litCount() > 0);
    assertThat(call.end().board().stage()).isEqualTo(Stage.SOFT_LOCKOUT);
  }

  /** The first burner burns, the rod at the other end sees nothing: dirty crossover. */
  @Test
  void flameThatDoesNotCarryOver() {
    Segment call =
        play(
            ShippedBenches.standard(),
            board("carbide-four-trials"),
            10 * MINUTE,
            new Act(0, new Deed.Alter(new Change.CarriedOver(Double.POSITIVE_INFINITY))));

    assertThat(call.samples()).anyMatch(s -> s.litCount() == 1);
    assertThat(call.samples()).noneMatch(s -> s.litCount() > 1);
    assertThat(call.end().board().stage()).isEqualTo(Stage.SOFT_LOCKOUT);
  }

  /** A valve that leaks on after the call: flame where none should be, no restart. */
  @Test
  void leakingValveIsSeenAsFalseFlame() {
    long stuck = STEADY_MILLIS;
    Segment call =
        play(
            ShippedBenches.standard(),
            board("carbide-four-trials"),
            stuck + 5 * MINUTE,
            upset(stuck, Disorder.VALVE_STUCK_OPEN, true),
            new Act(stuck + SECOND, new Deed.Call(false)),
            new Act(stuck + MINUTE, new Deed.Call(true)),
            upset(stuck + 2 * MINUTE, Disorder.VALVE_STUCK_OPEN, false));

    long seen = entries(call, Stage.FALSE_FLAME).get(0);
    PRACTICE
        .check("valve leaks on: false flame after", Unit.SECONDS, (seen - stuck) / 1000.0)
        .isBetween(1, 10, "as soon as there should be none; within seconds");
    assertThat(entries(call, Stage.TRIAL))
        .filteredOn(t -> t > seen)
        .allMatch(t -> t > stuck + 2 * MINUTE);
    assertThat(call.end().board().stage()).isEqualTo(Stage.RUN);
  }

  /** Without the circulating blower the limit opens, after minutes. */
  @Test
  void deadBlowerOpensTheLimit() {
    Segment call =
        play(
            ShippedBenches.standard(),
            board("carbide-four-trials"),
            10 * MINUTE,
            upset(0, Disorder.BLOWER_DEAD, true));

    long run = entries(call, Stage.RUN).get(0);
    PRACTICE
        .check(
            "dead blower: limit opens after",
            Unit.MINUTES,
            (entries(call, Stage.LIMIT_OPEN).get(0) - run) / (double) MINUTE)
        .isBetween(1, 5, "minutes");
  }

  /** A connector that vibration or a hand opens: the flame is lost now and then. */
  @Test
  void looseConnector() {
    Bench loose =
        with(
            ShippedBenches.standard(),
            new Intermittent(
                Trigger.VIBRATION,
                Change.Turned.to(Parameter.CONNECTOR, Double.POSITIVE_INFINITY)));
    BoardSettings settings = board("carbide-four-trials");
    Segment call = play(loose, settings, 10 * MINUTE);
    assertThat(call.events())
        .filteredOn(e -> e.transition() != null && e.transition().from() == Stage.RUN)
        .anyMatch(e -> e.transition().to() == Stage.INTER_PURGE);

    // without the inducer's shaking only a tug shows it: a meter would see the AC vanish
    Segment idle =
        new Sequence()
            .advance(
                Moment.cold(loose, settings, 1),
                MINUTE,
                List.of(new Act(0, new Deed.Supply(true)), new Act(30 * SECOND, new Deed.Touch())));
    assertThat(idle.samples())
        .filteredOn(s -> s.timeMillis() > 30 * SECOND && s.timeMillis() < 32 * SECOND)
        .isNotEmpty()
        .allMatch(s -> s.sense().alternatingRmsAmps() < 1e-9);
  }

  /** A leak through damp insulation dries as the appliance warms. */
  @Test
  void dampLeakDries() {
    Bench damp =
        with(
            ShippedBenches.standard(),
            new Intermittent(Trigger.DAMP, Change.Turned.to(Parameter.LEAKAGE, 6e6)));
    Segment call =
        play(damp, board("carbide-four-trials"), 5 * MINUTE, new Act(0, new Deed.Damp(true)));

    double wet = call.samples().get(20).sense().alternatingRmsAmps();
    double dry = call.end().filter().alternatingRmsAmps();
    // 110 V behind 2.2 and 6 MΩ
    OHM.check("damp insulation of 6 MΩ, AC", Unit.MICROAMPS, wet)
        .isCloseTo(110 / 8.2e6, 0.5e-6, "the cable comes on top");
    PRACTICE
        .check("insulation dried by the appliance, AC", Unit.MICROAMPS, dry)
        .isBetween(4e-6, 9e-6, "the usual 4 to 8, and flicker");
  }

  /** The reference rod: 425 K after 3 s, 673 after 10, 919 after 20 from 300 K [calc]. */
  @Test
  void rodWarms() {
    Segment call = play(ShippedBenches.standard(), board("carbide-four-trials"), 2 * MINUTE);
    long lit =
        call.events().stream()
            .filter(e -> e.subject() == Event.Subject.FLAME)
            .mapToLong(Event::timeMillis)
            .max()
            .orElseThrow();

    warms(call, lit, 3, 425, 10);
    warms(call, lit, 10, 673, 10);
    warms(call, lit, 20, 919, 15);
  }

  private static void warms(Segment call, long lit, int seconds, double kelvin, double room) {
    HEATING
        .check("rod of a lit burner", Unit.KELVIN, rodKelvin(call, lit + seconds * SECOND))
        .at(seconds + " s")
        .isCloseTo(kelvin, room, "the flame grows first, and the walls are colder than 500 K");
  }

  private static double rodKelvin(Segment call, long millis) {
    return call.samples().stream()
        .filter(s -> s.timeMillis() >= millis)
        .findFirst()
        .orElseThrow()
        .rodKelvin();
  }

  /** One electrode for both: blind while it sparks, good after. */
  @Test
  void sparkingElectrodeIsBlind() {
    Bench one = ShippedBenches.named("spark-and-sense-rod").orElseThrow();
    Segment call = play(one, board("spark-three-trials"), STEADY_MILLIS);

    assertThat(call.samples())
        .filteredOn(s -> s.outputs().spark())
        .isNotEmpty()
        .allMatch(s -> s.sense().alternatingRmsAmps() == 0 && s.signal() == FlameSignal.NONE);
    assertThat(call.end().board().stage()).isEqualTo(Stage.RUN);
  }

  @Test
  void stagesComeInTheOrderOfTheTrade() {
    Segment call =
        play(
            ShippedBenches.standard(),
            board("carbide-four-trials"),
            20 * MINUTE,
            new Act(10 * MINUTE, new Deed.Call(false)));

    assertThat(stages(call))
        .containsExactly(
            Stage.STANDBY,
            Stage.SELF_CHECK,
            Stage.PRESSURE_PROOF,
            Stage.PRE_PURGE,
            Stage.WARM_UP,
            Stage.TRIAL,
            Stage.PROVING,
            Stage.RUN,
            Stage.POST_PURGE,
            Stage.STANDBY);
  }
}
