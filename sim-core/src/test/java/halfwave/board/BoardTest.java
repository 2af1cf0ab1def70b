package halfwave.board;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.board.BoardPlant.Pressure;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a technician expects of a board: the order of its stages, its times to the millisecond, when
 * it gives up and what helps. The order and the behaviour are [seen: product literature]; where a
 * test says so, it is [common practice, no source]. The times are each board's own settings.
 */
class BoardTest {

  private static final long SECOND = 1000;
  private static final long HOUR = 3600 * SECOND;

  /** A flame needs a second to reach the rod; every shipped trial is longer. */
  private static final long CATCHES_MILLIS = SECOND;

  private static final BoardPlant IDLE = BoardPlant.IDLE;
  private static final BoardPlant HEALTHY = BoardPlant.HEALTHY;
  private static final BoardPlant UNLIT = HEALTHY.withFlame(FlameSignal.NONE, true);
  private static final BoardPlant FALSE_FLAME = HEALTHY.withFlame(FlameSignal.GOOD, false);

  private record At(Stage stage, long millis) {}

  static Stream<BoardSettings> boards() {
    return ShippedBoards.all().stream();
  }

  static Stream<BoardSettings> boardsWithLockoutTime() {
    return boards().filter(b -> b.counting().lockoutMillis() != null);
  }

  static Stream<BoardSettings> boardsWithCallReset() {
    return boards().filter(b -> b.counting().callResetMillis() != null);
  }

  static Stream<BoardSettings> boardsWithoutCallReset() {
    return boards().filter(b -> b.counting().callResetMillis() == null);
  }

  static Stream<BoardSettings> boardsWithSwitch() {
    return boards().filter(b -> b.times().hasPressureSwitch());
  }

  static Stream<BoardSettings> boardsThatRetry() {
    return boards().filter(b -> b.counting().mostTrials() > 1);
  }

  static Stream<BoardSettings> boardsThatCountLosses() {
    return boards().filter(b -> b.counting().mostLosses() > 0);
  }

  static Stream<BoardSettings> boardsThatRecycle() {
    return boards().filter(b -> b.counting().mostLosses() != 1);
  }

  static Stream<BoardSettings> pilotBoards() {
    return boards().filter(b -> b.ignition() == Ignition.INTERMITTENT_PILOT);
  }

  private static BoardRun on(BoardSettings board) {
    return new BoardRun(board).pass(IDLE, 60 * SECOND);
  }

  private static BoardRun running(BoardSettings board) {
    BoardRun run = on(board).until(UNLIT, Stage.TRIAL);
    return run.pass(UNLIT, CATCHES_MILLIS).until(HEALTHY, Stage.RUN);
  }

  private static BoardRun lockedOut(BoardSettings board) {
    return on(board).until(UNLIT, Stage.SOFT_LOCKOUT);
  }

  private static List<At> stages(BoardRun run, long fromMillis) {
    List<At> stages = new ArrayList<>();
    run.log.stream()
        .filter(e -> e.transition() != null && e.atMillis() >= fromMillis)
        .filter(e -> e.transition().from() != e.transition().to())
        .forEach(e -> stages.add(new At(e.transition().to(), e.atMillis() - fromMillis)));
    return stages;
  }

  private static long count(BoardRun run, Stage stage) {
    return stages(run, 0).stream().filter(a -> a.stage() == stage).count();
  }

  @Test
  void thereAreBoardsForEveryWayOfLighting() {
    List<BoardSettings> all = ShippedBoards.all();
    assertThat(all).hasSizeGreaterThanOrEqualTo(6);
    assertThat(all.stream().map(BoardSettings::name)).doesNotHaveDuplicates();
    assertThat(all).allSatisfy(b -> assertThat(ShippedBoards.named(b.name())).contains(b));
    assertThat(ShippedBoards.named("no-such-board")).isEmpty();
    assertThat(boardsWithLockoutTime().map(b -> b.counting().lockoutMillis()))
        .contains(HOUR, 3 * HOUR);
  }

  @ParameterizedTest
  @EnumSource(Ignition.class)
  void theStandardBoardFits(Ignition ignition) {
    assertThat(ShippedBoards.standard(ignition).ignition().fits(ignition)).isTrue();
  }

  @ParameterizedTest
  @MethodSource("boards")
  void aHealthyCallPassesItsStagesInTime(BoardSettings board) {
    Times t = board.times();
    BoardRun run = on(board);
    long begin = run.now();
    run.until(UNLIT, Stage.TRIAL).pass(UNLIT, CATCHES_MILLIS).until(HEALTHY, Stage.RUN);
    long burns = 10 * 60 * SECOND;
    run.pass(HEALTHY, burns).pass(IDLE, 10 * 60 * SECOND);

    List<At> expected = new ArrayList<>();
    long at = 0;
    expected.add(new At(Stage.SELF_CHECK, at));
    at += t.selfCheckMillis();
    if (t.hasPressureSwitch()) {
      expected.add(new At(Stage.PRESSURE_PROOF, at));
    }
    if (t.prePurgeMillis() > 0) {
      expected.add(new At(Stage.PRE_PURGE, at));
      at += t.prePurgeMillis();
    }
    if (board.ignition().hotSurface()) {
      expected.add(new At(Stage.WARM_UP, at));
      at += t.warmUpMillis();
    }
    expected.add(new At(Stage.TRIAL, at));
    at += CATCHES_MILLIS;
    expected.add(new At(Stage.PROVING, at));
    at += t.provingMillis();
    expected.add(new At(Stage.RUN, at));
    at += burns;
    expected.add(new At(Stage.POST_PURGE, at));
    at += t.postPurgeMillis();
    expected.add(new At(Stage.STANDBY, at));
    assertThat(stages(run, begin)).isEqualTo(expected);
    assertThat(run.broken).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("boards")
  void theBlowerFollowsTheFlame(BoardSettings board) {
    BoardRun run = running(board);
    run.pass(HEALTHY, board.times().blowerOnMillis() - 1);
    assertThat(run.outputs().blower()).isFalse();
    run.pass(HEALTHY, 1);
    assertThat(run.outputs().blower()).isTrue();
    run.pass(HEALTHY, 60 * SECOND).pass(IDLE, board.times().blowerOffMillis() - 1);
    assertThat(run.outputs().blower()).isTrue();
    run.pass(IDLE, 1);
    assertThat(run.outputs().blower()).isFalse();
  }

  @ParameterizedTest
  @MethodSource("boards")
  void ignitionEndsAtItsTime(BoardSettings board) {
    BoardRun run = on(board).until(UNLIT, Stage.TRIAL);
    long activation = board.times().ignitionActivationMillis();
    boolean hot = board.ignition().hotSurface();
    run.pass(UNLIT, activation - 1);
    assertThat(run.outputs().igniter()).isEqualTo(hot);
    assertThat(run.outputs().spark()).isNotEqualTo(hot);
    run.pass(UNLIT, 1);
    assertThat(run.outputs().igniter()).isFalse();
    assertThat(run.outputs().spark()).isFalse();
  }

  /** A tenth below the pick-up burns to the end of the trial and no longer. */
  @ParameterizedTest
  @MethodSource("boards")
  void tooLittleCurrentEndsWithTheTrial(BoardSettings board) {
    SenseFilter filter = SenseFilter.QUIET;
    double amps = 0.9 * board.sensing().pickUpAmps();
    BoardRun run = on(board).until(UNLIT, Stage.TRIAL);
    long trial = board.times().trialMillis();
    for (long k = 1; k <= trial; k++) {
      assertThat(run.outputs().gas()).as("%d ms", k - 1).isTrue();
      filter = filter.after(board.sensing(), amps, 2 * amps, 0.001);
      run.pass(HEALTHY.withFlame(filter.signal(), true), 1);
    }
    assertThat(run.outputs().gas()).isFalse();
    assertThat(run.stages).doesNotContain(Stage.PROVING);
    assertThat(run.state().trouble()).isEqualTo(StatusCode.NO_IGNITION);
  }

  @ParameterizedTest
  @MethodSource("boards")
  void itLocksOutAfterTheTrialsThatAreSet(BoardSettings board) {
    BoardRun run = lockedOut(board);
    assertThat(count(run, Stage.TRIAL)).isEqualTo(board.counting().mostTrials());
    assertThat(count(run, Stage.INTER_PURGE)).isEqualTo(board.counting().mostTrials() - 1);
    assertThat(run.code()).isEqualTo(StatusCode.SOFT_LOCKOUT);
    assertThat(run.outputs().gas()).isFalse();
  }

  @ParameterizedTest
  @MethodSource("boardsThatRetry")
  void retriesWaitForThePurgeAndTheWarmUp(BoardSettings board) {
    BoardRun run = lockedOut(board);
    List<At> all = stages(run, 0);
    List<Long> opened = all.stream().filter(a -> a.stage() == Stage.TRIAL).map(At::millis).toList();
    Times t = board.times();
    WarmUpLearning learning = board.learning();
    long warmUp =
        learning == null ? t.retryWarmUpMillis() : t.warmUpMillis() + learning.stepMillis();
    assertThat(opened.get(1) - opened.get(0))
        .isEqualTo(t.trialMillis() + t.interPurgeMillis() + warmUp);
  }

  @ParameterizedTest
  @MethodSource("boardsWithLockoutTime")
  void lockoutEndsToTheMillisecond(BoardSettings board) {
    BoardRun run = lockedOut(board);
    run.pass(UNLIT, board.counting().lockoutMillis() - 1);
    assertThat(run.stage()).isEqualTo(Stage.SOFT_LOCKOUT);
    run.pass(UNLIT, 1);
    assertThat(run.stage()).isEqualTo(Stage.SELF_CHECK);
    assertThat(run.state().failedTrials()).isZero();
  }

  /** [common practice, no source]: 5 to 10 seconds without power, and a second is too short. */
  @ParameterizedTest
  @MethodSource("boards")
  void powerClearsALockout(BoardSettings board) {
    long reset = board.counting().powerResetMillis();
    assertThat(reset).isBetween(5 * SECOND, 10 * SECOND);
    BoardPlant dark = UNLIT.withPower(false);
    for (long millis : new long[] {SECOND, reset - 1}) {
      BoardRun run = lockedOut(board).pass(dark, millis);
      assertThat(run.code()).isEqualTo(StatusCode.DARK);
      assertThat(run.pass(UNLIT, 1).stage()).as("%d ms", millis).isEqualTo(Stage.SOFT_LOCKOUT);
    }
    for (long millis : new long[] {reset, 10 * SECOND, HOUR}) {
      BoardRun run = lockedOut(board).pass(dark, millis).pass(UNLIT, 1);
      assertThat(run.stage()).as("%d ms", millis).isIn(Stage.SELF_CHECK, Stage.RESTART);
      assertThat(run.state().failedTrials()).isZero();
    }
  }

  @ParameterizedTest
  @MethodSource("boardsWithCallReset")
  void cyclingTheCallClearsALockout(BoardSettings board) {
    long reset = board.counting().callResetMillis();
    BoardRun tooShort = lockedOut(board).pass(IDLE, reset - 1).pass(UNLIT, 1);
    assertThat(tooShort.stage()).isEqualTo(Stage.SOFT_LOCKOUT);
    BoardRun twice = tooShort.pass(IDLE, reset - 1).pass(UNLIT, 1);
    assertThat(twice.stage()).isEqualTo(Stage.SOFT_LOCKOUT);
    BoardRun cleared = lockedOut(board).pass(IDLE, reset);
    assertThat(cleared.stage()).isEqualTo(Stage.STANDBY);
    assertThat(cleared.pass(UNLIT, 1).stage()).isEqualTo(Stage.SELF_CHECK);
  }

  @ParameterizedTest
  @MethodSource("boardsWithoutCallReset")
  void cyclingTheCallIsNoHelpWhereItIsNotSet(BoardSettings board) {
    BoardRun run = lockedOut(board).pass(IDLE, HOUR - 1).pass(UNLIT, 1);
    assertThat(run.stage()).isEqualTo(Stage.SOFT_LOCKOUT);
  }

  @ParameterizedTest
  @MethodSource("boards")
  void aFalseFlameKeepsItFromStarting(BoardSettings board) {
    BoardRun run = on(board).pass(FALSE_FLAME, 10 * SECOND);
    assertThat(run.stage()).isEqualTo(Stage.FALSE_FLAME);
    assertThat(run.code()).isEqualTo(StatusCode.FALSE_FLAME);
    long clear = board.counting().falseFlameClearMillis();
    run.pass(UNLIT, clear - 1);
    assertThat(run.stage()).isEqualTo(Stage.FALSE_FLAME);
    run.pass(UNLIT, 1);
    assertThat(run.stage()).isEqualTo(Stage.SELF_CHECK);
    assertThat(run.stages).doesNotContain(Stage.TRIAL);
  }

  @Test
  void aFalseFlameThatStaysEndsInHardLockout() {
    BoardSettings board = ShippedBoards.named("spark-one-loss").orElseThrow();
    BoardRun run = on(board).until(FALSE_FLAME, Stage.FALSE_FLAME);
    run.pass(FALSE_FLAME, board.counting().falseFlameLockoutMillis() - 1);
    assertThat(run.stage()).isEqualTo(Stage.FALSE_FLAME);
    run.pass(FALSE_FLAME, 1);
    assertThat(run.stage()).isEqualTo(Stage.HARD_LOCKOUT);
    // neither time nor the call
    run.pass(UNLIT, 24 * HOUR).pass(IDLE, HOUR).pass(UNLIT, SECOND);
    assertThat(run.stage()).isEqualTo(Stage.HARD_LOCKOUT);
    run.pass(UNLIT.withPower(false), 10 * SECOND).pass(UNLIT, 1);
    assertThat(run.stage()).isEqualTo(Stage.SELF_CHECK);
  }

  @ParameterizedTest
  @MethodSource("boards")
  void aLostFlameShutsTheValveAfterTheResponseTime(BoardSettings board) {
    BoardRun run = running(board).pass(HEALTHY, 30 * SECOND);
    run.pass(UNLIT, board.sensing().responseMillis() - 1);
    assertThat(run.outputs().gas()).isTrue();
    run.pass(UNLIT, 1);
    assertThat(run.outputs().gas()).isFalse();
    assertThat(run.state().trouble()).isEqualTo(StatusCode.FLAME_LOST);
    assertThat(run.state().losses()).isEqualTo(1);
  }

  /** [common practice, no source]: a flame that blinks for less than the response time is kept. */
  @ParameterizedTest
  @MethodSource("boards")
  void aBlinkOfTheFlameIsForgiven(BoardSettings board) {
    BoardRun run = running(board);
    long blink = board.sensing().responseMillis() - 1;
    for (int k = 0; k < 20; k++) {
      run.pass(UNLIT, blink).pass(HEALTHY, 1);
    }
    assertThat(run.stage()).isEqualTo(Stage.RUN);
  }

  /** [common practice, no source]: a shorted rod is AC without DC, and no flame. */
  @ParameterizedTest
  @MethodSource("boards")
  void aShortedRodIsToldApart(BoardSettings board) {
    BoardRun run = on(board).until(UNLIT, Stage.TRIAL);
    run.sense(HEALTHY, SenseCurrent.SHORT, true, 2 * SECOND);
    assertThat(run.stage()).isEqualTo(Stage.TRIAL);
    assertThat(run.code()).isEqualTo(StatusCode.SENSE_SHORTED);
  }

  @ParameterizedTest
  @MethodSource("boardsThatCountLosses")
  void lostFlamesLockOutWhereSet(BoardSettings board) {
    Counting counting = board.counting();
    BoardRun run = running(board);
    for (int k = 1; k < counting.mostLosses(); k++) {
      // long enough to clear the failed trials
      run.pass(HEALTHY, 60 * SECOND).until(UNLIT, Stage.INTER_PURGE);
      run.until(UNLIT, Stage.TRIAL).until(HEALTHY, Stage.RUN);
    }
    run.pass(HEALTHY, 60 * SECOND).until(UNLIT, Stage.SOFT_LOCKOUT);
    assertThat(count(run, Stage.RUN)).isEqualTo(counting.mostLosses());
  }

  @ParameterizedTest
  @MethodSource("boardsWithSwitch")
  void thePressureSwitchIsProved(BoardSettings board) {
    Times t = board.times();
    BoardRun open =
        on(board).until(HEALTHY.withPressure(Pressure.STUCK_OPEN), Stage.PRESSURE_PROOF);
    open.pass(HEALTHY.withPressure(Pressure.STUCK_OPEN), t.pressureProofMillis() - 1);
    assertThat(open.stage()).isEqualTo(Stage.PRESSURE_PROOF);
    open.pass(HEALTHY.withPressure(Pressure.STUCK_OPEN), 1);
    assertThat(open.stage()).isEqualTo(Stage.PRESSURE_FAULT);
    assertThat(open.code()).isEqualTo(StatusCode.PRESSURE_OPEN);

    BoardRun closed = on(board).pass(HEALTHY.withPressure(Pressure.STUCK_CLOSED), HOUR);
    assertThat(closed.stage()).isEqualTo(Stage.SELF_CHECK);
    assertThat(closed.code()).isEqualTo(StatusCode.PRESSURE_CLOSED);
  }

  /** Air that flutters opens the valve no more often than trials are set. */
  @ParameterizedTest
  @MethodSource("boardsWithSwitch")
  void aTrialBrokenOffCounts(BoardSettings board) {
    BoardRun run = on(board);
    for (int k = 0; k < board.counting().mostTrials(); k++) {
      run.until(UNLIT, Stage.TRIAL).pass(UNLIT.withPressure(Pressure.STUCK_OPEN), SECOND);
    }
    assertThat(run.stage()).isEqualTo(Stage.SOFT_LOCKOUT);
  }

  @ParameterizedTest
  @MethodSource("boards")
  void anOpenLimitShutsTheValveAtOnce(BoardSettings board) {
    BoardRun run = running(board).pass(HEALTHY, 5 * SECOND);
    run.pass(HEALTHY.withLimitClosed(false), 0);
    assertThat(run.outputs().gas()).isFalse();
    assertThat(run.outputs().blower()).isTrue();
    assertThat(run.code()).isEqualTo(StatusCode.LIMIT_OPEN);
  }

  @ParameterizedTest
  @MethodSource("boardsThatRecycle")
  void countsEndWithTheCallWhileTheLimitIsOpen(BoardSettings board) {
    BoardRun run = running(board).pass(HEALTHY, 60 * SECOND).until(UNLIT, Stage.INTER_PURGE);
    run.until(UNLIT, Stage.TRIAL).until(HEALTHY, Stage.RUN);
    assertThat(run.state().losses()).isEqualTo(1);
    run.pass(HEALTHY.withLimitClosed(false), SECOND).pass(IDLE, SECOND);
    assertThat(run.stage()).isEqualTo(Stage.STANDBY);
    assertThat(run.state().losses()).isZero();
  }

  @ParameterizedTest
  @MethodSource("boards")
  void swappedWiresAreSeenWhereChecked(BoardSettings board) {
    BoardRun run = on(board).pass(UNLIT.withLineRight(false), 20 * SECOND);
    boolean waits = run.stage() == Stage.SELF_CHECK;
    assertThat(waits).isEqualTo(board.sensing().checksLine());
    assertThat(run.code() == StatusCode.LINE_REVERSED).isEqualTo(waits);
  }

  @ParameterizedTest
  @MethodSource("boards")
  void itsOwnFaultEndsInHardLockout(BoardSettings board) {
    BoardRun run = running(board).pass(HEALTHY.withSelfTestPassed(false), 0);
    assertThat(run.stage()).isEqualTo(Stage.HARD_LOCKOUT);
    assertThat(run.outputs().gas()).isFalse();
    run.pass(HEALTHY, 24 * HOUR).pass(IDLE, HOUR);
    assertThat(run.code()).isEqualTo(StatusCode.HARD_LOCKOUT);
  }

  @ParameterizedTest
  @MethodSource("boardsThatRetry")
  void aFlameThatHoldsClearsTheCount(BoardSettings board) {
    BoardRun run = on(board).until(UNLIT, Stage.INTER_PURGE).until(UNLIT, Stage.TRIAL);
    run.until(HEALTHY, Stage.RUN).pass(HEALTHY, board.counting().clearAfterMillis() - 1);
    assertThat(run.state().failedTrials()).isEqualTo(1);
    run.pass(HEALTHY, 1);
    assertThat(run.state().failedTrials()).isZero();
  }

  /** Shorter after a first trial that lights, longer after one that does not, within bounds. */
  @Test
  void aLearningBoardFindsItsWarmUp() {
    BoardSettings board = ShippedBoards.named("nitride-learning").orElseThrow();
    WarmUpLearning learning = board.learning();
    BoardRun run = on(board);
    List<Long> warmUps = new ArrayList<>();
    for (int k = 0; k < 8; k++) {
      run.until(UNLIT, Stage.TRIAL).until(HEALTHY, Stage.RUN).pass(IDLE, 120 * SECOND);
      warmUps.add(run.state().warmUpMillis());
    }
    assertThat(warmUps)
        .containsExactly(26_000L, 22_000L, 18_000L, 14_000L, 10_000L, 7_000L, 7_000L, 7_000L);
    for (int k = 0; k < 20; k++) {
      run.until(UNLIT, Stage.SOFT_LOCKOUT).pass(IDLE, 60 * SECOND);
    }
    assertThat(run.state().warmUpMillis()).isEqualTo(learning.mostMillis());
  }

  @ParameterizedTest
  @MethodSource("pilotBoards")
  void aPilotIsProvedBeforeTheMainValveOpens(BoardSettings board) {
    BoardRun run = on(board).until(UNLIT, Stage.TRIAL);
    assertThat(run.outputs().pilotValve()).isTrue();
    assertThat(run.outputs().mainValve()).isFalse();
    run.pass(HEALTHY, board.times().provingMillis() - 1);
    assertThat(run.outputs().mainValve()).isFalse();
    run.pass(HEALTHY, 1);
    assertThat(run.outputs().pilotValve()).isTrue();
    assertThat(run.outputs().mainValve()).isTrue();
  }
}
