package halfwave.board;

import static halfwave.board.BoardUnderTest.driving;
import static halfwave.board.BoardUnderTest.seeing;
import static halfwave.board.BoardUnderTest.set;
import static halfwave.board.BoardUnderTest.slipping;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Boards broken on purpose, each with the rule that has to catch it. */
enum BrokenBoard {
  BLOWS_WITHOUT_POWER(
      SafetyRule.NOTHING_RUNS_WITHOUT_POWER,
      SmallBoard::hotSurface,
      driving((s, o) -> s.stage() == Stage.OFF ? with(o, o.gas(), true) : o)),
  BURNS_ON_WITHOUT_A_CALL(
      SafetyRule.GAS_NEEDS_CALL,
      SmallBoard::spark,
      seeing((s, in) -> s.stage().gas() ? inputs(in, true, in.limitClosed(), in.signal()) : in)),
  IGNORES_THE_LIMIT(
      SafetyRule.GAS_NEEDS_CLOSED_LIMIT,
      SmallBoard::hotSurface,
      seeing((s, in) -> inputs(in, in.call(), true, in.signal()))),
  IGNORES_THE_PRESSURE_SWITCH(
      SafetyRule.GAS_NEEDS_AIR,
      SmallBoard::hotSurface,
      seeing((s, in) -> s.stage().gas() ? pressure(in) : in)),
  IGNORES_ITS_SELF_TEST(
      SafetyRule.GAS_NEEDS_A_SOUND_BOARD,
      SmallBoard::pilot,
      seeing(
          (s, in) ->
              new BoardInputs(
                  in.power(),
                  in.call(),
                  in.pressureClosed(),
                  in.limitClosed(),
                  in.lineRight(),
                  true,
                  in.signal()))),
  TRIES_TOO_LONG(
      SafetyRule.UNPROVED_GAS_ENDS_WITH_THE_TRIAL, SmallBoard::spark, to(b -> b.trial++)),
  PROVES_AT_ONCE(
      SafetyRule.UNPROVED_GAS_ENDS_WITH_THE_TRIAL, SmallBoard::learning, to(b -> b.proving--)),
  TAKES_A_SHORT_FOR_A_FLAME(
      SafetyRule.UNPROVED_GAS_ENDS_WITH_THE_TRIAL,
      SmallBoard::spark,
      seeing((s, in) -> s.stage().gas() && shorted(in) ? signal(in, FlameSignal.GOOD) : in)),
  STARTS_THE_TRIAL_ANEW_WITH_EACH_SIGNAL(
      SafetyRule.UNPROVED_GAS_ENDS_WITH_THE_TRIAL,
      SmallBoard::pilot,
      slipping(
          (s, in, step) ->
              s.stage() == Stage.PROVING && step.state().stage() == Stage.TRIAL
                  ? replace(step, clocks(step.state(), step.state().stageMillis(), 0))
                  : step)),
  ANSWERS_LATE(
      SafetyRule.UNANSWERED_GAS_ENDS_WITH_THE_RESPONSE_TIME,
      SmallBoard::pilot,
      to(
          b -> {
            b.response++;
            b.fade++;
          })),
  HOLDS_ON_A_SHORT(
      SafetyRule.UNANSWERED_GAS_ENDS_WITH_THE_RESPONSE_TIME,
      SmallBoard::hotSurface,
      seeing((s, in) -> s.stage() == Stage.RUN && shorted(in) ? signal(in, FlameSignal.WEAK) : in)),
  OPENS_THE_MAIN_VALVE_WITH_THE_PILOT(
      SafetyRule.MAIN_GAS_NEEDS_A_PROVED_PILOT,
      SmallBoard::pilot,
      driving((s, o) -> with(o, o.pilotValve(), o.blower()))),
  IGNORES_A_FALSE_FLAME(
      SafetyRule.NO_OPENING_ONTO_A_FLAME,
      SmallBoard::spark,
      seeing((s, in) -> s.stage().gas() ? in : signal(in, FlameSignal.NONE))),
  LEAKS_GAS_IN_LOCKOUT(
      SafetyRule.NO_OPENING_IN_LOCKOUT,
      SmallBoard::hotSurface,
      driving((s, o) -> s.stage().lockout() ? with(o, true, o.blower()) : o)),
  PURGES_TOO_SHORT(
      SafetyRule.NO_IGNITION_WITHOUT_PURGE, SmallBoard::hotSurface, to(b -> b.prePurge--)),
  PURGES_TOO_SHORT_BETWEEN(
      SafetyRule.NO_IGNITION_WITHOUT_PURGE, SmallBoard::spark, to(b -> b.interPurge--)),
  RETRIES_A_PILOT_TOO_SOON(
      SafetyRule.NO_IGNITION_WITHOUT_PURGE,
      () -> {
        SmallBoard b = SmallBoard.pilot();
        b.mostLosses = 0;
        return b;
      },
      to(b -> b.interPurge = 0)),
  PURGES_WITHOUT_A_BLOWER(
      SafetyRule.NO_IGNITION_WITHOUT_PURGE,
      SmallBoard::learning,
      driving((s, o) -> s.stage() == Stage.PRE_PURGE ? withoutInducer(o) : o)),
  PURGES_ON_WITH_THE_SWITCH_OPEN(
      SafetyRule.NO_IGNITION_WITHOUT_PURGE,
      SmallBoard::hotSurface,
      seeing((s, in) -> s.stage() == Stage.PRE_PURGE ? pressure(in) : in)),
  WARMS_UP_TOO_SHORT(
      SafetyRule.NO_GAS_WITHOUT_IGNITION,
      () -> {
        SmallBoard b = SmallBoard.hotSurface();
        b.warmUp = 2;
        return b;
      },
      to(b -> b.warmUp = 1)),
  HAS_A_DEAD_IGNITER(
      SafetyRule.NO_GAS_WITHOUT_IGNITION,
      SmallBoard::learning,
      driving((s, o) -> lighter(o, false, o.spark()))),
  HAS_A_DEAD_SPARK(
      SafetyRule.NO_GAS_WITHOUT_IGNITION,
      SmallBoard::pilot,
      driving((s, o) -> lighter(o, o.igniter(), false))),
  GLOWS_ON_WHILE_BURNING(
      SafetyRule.IGNITION_ONLY_TO_LIGHT,
      SmallBoard::hotSurface,
      driving((s, o) -> lighter(o, o.igniter() || s.stage() == Stage.RUN, o.spark()))),
  GLOWS_TOO_LONG(
      SafetyRule.IGNITION_ONLY_TO_LIGHT, SmallBoard::hotSurface, to(b -> b.activation++)),
  SPARKS_WHILE_PURGING(
      SafetyRule.IGNITION_ONLY_TO_LIGHT,
      SmallBoard::spark,
      driving((s, o) -> lighter(o, o.igniter(), o.spark() || s.stage() == Stage.PRE_PURGE))),
  TRIES_TOO_OFTEN(
      SafetyRule.NO_MORE_TRIALS_THAN_SET, SmallBoard::hotSurface, to(b -> b.mostTrials++)),
  DOES_NOT_COUNT_A_TRIAL_BROKEN_OFF(
      SafetyRule.NO_MORE_TRIALS_THAN_SET,
      SmallBoard::hotSurface,
      slipping(
          (s, in, step) ->
              s.stage() == Stage.TRIAL && step.state().stage() == Stage.PRESSURE_PROOF
                  ? replace(step, step.state().withCounts(s.failedTrials(), s.losses()))
                  : step)),
  FORGETS_ITS_TRIALS_WHEN_THE_POWER_BLINKS(
      SafetyRule.NO_MORE_TRIALS_THAN_SET,
      SmallBoard::spark,
      slipping(
          (s, in, step) ->
              in.power() ? step : replace(step, step.state().withCounts(0, s.losses())))),
  COUNTS_NO_EARLY_LOSS(
      SafetyRule.NO_MORE_TRIALS_THAN_SET,
      SmallBoard::spark,
      to(b -> b.lossCounts = LossCount.NEVER)),
  LOSES_TOO_OFTEN(
      SafetyRule.NO_MORE_LOSSES_THAN_SET, SmallBoard::hotSurface, to(b -> b.mostLosses++)),
  LEAVES_LOCKOUT_TOO_SOON(SafetyRule.LOCKOUT_LASTS, SmallBoard::spark, to(b -> b.lockout--)),
  LEAVES_LOCKOUT_AT_A_BLINK_OF_THE_CALL(
      SafetyRule.LOCKOUT_LASTS, SmallBoard::learning, to(b -> b.callReset--)),
  LEAVES_LOCKOUT_AT_A_BLINK_OF_THE_POWER(
      SafetyRule.LOCKOUT_LASTS,
      SmallBoard::pilot,
      slipping((s, in, step) -> replace(step, step.state().withLocked(Stage.OFF)))),
  FORGETS_ITS_LOCKOUT_TOO_SOON(
      SafetyRule.LOCKOUT_LASTS, SmallBoard::pilot, to(b -> b.powerReset--)),
  LEAVES_HARD_LOCKOUT_WITHOUT_A_CALL(
      SafetyRule.LOCKOUT_LASTS,
      SmallBoard::learning,
      slipping(
          (s, in, step) ->
              s.stage() == Stage.HARD_LOCKOUT && in.power() && !in.call()
                  ? new BoardStep(s.to(Stage.STANDBY), List.of())
                  : step)),
  STAYS_IN_LOCKOUT(SafetyRule.LOCKOUT_ENDS, SmallBoard::spark, to(b -> b.lockout++)),
  STAYS_IN_LOCKOUT_WITHOUT_A_CALL(
      SafetyRule.LOCKOUT_ENDS, SmallBoard::learning, to(b -> b.callReset++)),
  STAYS_IN_LOCKOUT_WITHOUT_POWER(
      SafetyRule.LOCKOUT_ENDS, SmallBoard::pilot, to(b -> b.powerReset++)),
  SKIPS_WHAT_IT_DID(
      SafetyRule.TRANSITIONS_CONNECT,
      SmallBoard::spark,
      slipping(
          (s, in, step) ->
              step.transitions().size() < 2
                  ? step
                  : new BoardStep(step.state(), step.transitions().subList(0, 1)))),
  STOPS_HALFWAY(
      SafetyRule.BOARD_RESTS,
      SmallBoard::spark,
      (settings, state, in) -> {
        Rules.Move move = new Rules(settings, state, in).next();
        return new BoardStep(move == null ? state : move.state(), List.of());
      }),
  NEVER_RESTS(
      SafetyRule.BOARD_RESTS,
      SmallBoard::spark,
      (settings, state, in) -> {
        // as the board does when it gives up
        throw new IllegalStateException("does not rest");
      }),
  SLEEPS_PAST_ITS_TIME(
      SafetyRule.DUE_IS_EXACT,
      SmallBoard::hotSurface,
      new BoardUnderTest() {
        @Override
        public BoardStep settle(BoardSettings settings, BoardState state, BoardInputs inputs) {
          return Board.settle(settings, state, inputs);
        }

        @Override
        public long dueMillis(BoardSettings settings, BoardState state, BoardInputs inputs) {
          return Board.NEVER;
        }
      }),
  DOES_NOT_COME_BACK(
      SafetyRule.NO_DEAD_END,
      SmallBoard::pilot,
      slipping(
          (s, in, step) ->
              s.stage() == Stage.OFF && s.trouble() == StatusCode.FALSE_FLAME
                  ? new BoardStep(s, List.of())
                  : step));

  final SafetyRule breaks;
  final SmallBoard made;
  final BoardUnderTest broken;

  BrokenBoard(SafetyRule breaks, Supplier<SmallBoard> made, BoardUnderTest broken) {
    this.breaks = breaks;
    this.made = made.get();
    this.broken = broken;
  }

  /** Works to wrong settings: filled in by the constructor that knows the right ones. */
  BrokenBoard(SafetyRule breaks, Supplier<SmallBoard> made, Consumer<SmallBoard> wrong) {
    this.breaks = breaks;
    this.made = made.get();
    SmallBoard other = made.get();
    wrong.accept(other);
    BoardSettings settings = other.build();
    this.broken = set(right -> settings);
  }

  /** Tells the compiler which constructor. */
  private static Consumer<SmallBoard> to(Consumer<SmallBoard> wrong) {
    return wrong;
  }

  private static boolean shorted(BoardInputs in) {
    return in.signal() == FlameSignal.SHORTED;
  }

  private static BoardInputs signal(BoardInputs in, FlameSignal signal) {
    return inputs(in, in.call(), in.limitClosed(), signal);
  }

  private static BoardInputs pressure(BoardInputs in) {
    return new BoardInputs(
        in.power(),
        in.call(),
        true,
        in.limitClosed(),
        in.lineRight(),
        in.selfTestPassed(),
        in.signal());
  }

  private static BoardInputs inputs(
      BoardInputs in, boolean call, boolean limitClosed, FlameSignal signal) {
    return new BoardInputs(
        in.power(),
        call,
        in.pressureClosed(),
        limitClosed,
        in.lineRight(),
        in.selfTestPassed(),
        signal);
  }

  private static BoardOutputs with(BoardOutputs o, boolean mainValve, boolean blower) {
    return new BoardOutputs(o.inducer(), o.igniter(), o.spark(), o.pilotValve(), mainValve, blower);
  }

  private static BoardOutputs withoutInducer(BoardOutputs o) {
    return new BoardOutputs(
        false, o.igniter(), o.spark(), o.pilotValve(), o.mainValve(), o.blower());
  }

  private static BoardOutputs lighter(BoardOutputs o, boolean igniter, boolean spark) {
    return new BoardOutputs(o.inducer(), igniter, spark, o.pilotValve(), o.mainValve(), o.blower());
  }

  private static BoardStep replace(BoardStep step, BoardState state) {
    return new BoardStep(state, step.transitions());
  }

  private static BoardState clocks(BoardState s, long stageMillis, long valveMillis) {
    return new BoardState(
        s.stage(),
        stageMillis,
        valveMillis,
        s.quietMillis(),
        s.callOffMillis(),
        s.failedTrials(),
        s.losses(),
        s.blowerOn(),
        s.blowerMillis(),
        s.warmUpMillis(),
        s.trouble(),
        s.locked());
  }
}
