package halfwave.board;

import static halfwave.message.Argument.count;
import static halfwave.message.Argument.quantity;

import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * What a board does next, from a snapshot of its state and inputs. The order of the questions is
 * the order of precedence: power, the board itself, lockout, a flame where none may be, the call,
 * the limit, the air, and only then the stage's own business.
 */
final class Rules {

  /** One transition, computed and not yet made. */
  record Move(BoardState state, Message cause) {}

  private final BoardSettings settings;
  private final Times times;
  private final Counting counting;
  private final BoardState state;
  private final Stage stage;
  private final BoardInputs in;
  private final boolean flame;

  Rules(BoardSettings settings, BoardState state, BoardInputs in) {
    this.settings = settings;
    this.times = settings.times();
    this.counting = settings.counting();
    this.state = state;
    this.stage = state.stage();
    this.in = in;
    this.flame = in.signal().proves();
  }

  /** The next transition, or null where none is due. */
  @Nullable Move next() {
    if (stage == Stage.OFF) {
      Move forgotten = forgotten();
      return forgotten == null && in.power() ? powered() : forgotten;
    }
    if (!in.power()) {
      return lostPower();
    }
    Move move = decided();
    return move == null ? blower() : move;
  }

  private @Nullable Move decided() {
    if (stage == Stage.HARD_LOCKOUT) {
      return null;
    }
    if (!in.selfTestPassed()) {
      return to(Stage.HARD_LOCKOUT, say(MessageKey.BOARD_INTERNAL));
    }
    if (stage == Stage.SOFT_LOCKOUT) {
      return lockedOut();
    }
    if (stage == Stage.FALSE_FLAME) {
      return falseFlame();
    }
    if (flame && !stage.gas() && state.valveMillis() >= settings.sensing().fadeMillis()) {
      return trouble(Stage.FALSE_FLAME, StatusCode.FALSE_FLAME, say(MessageKey.BOARD_FALSE_FLAME));
    }
    if (stage.needsCall() && !in.call()) {
      boolean air = stage.air();
      return new Move(
          state.to(air ? Stage.POST_PURGE : Stage.STANDBY).withCounts(0, 0),
          say(MessageKey.BOARD_CALL_ENDED));
    }
    if (stage == Stage.LIMIT_OPEN) {
      return in.limitClosed() ? again(say(MessageKey.BOARD_LIMIT_CLOSED)) : null;
    }
    if (!in.limitClosed()) {
      return new Move(
          brokenOff().to(Stage.LIMIT_OPEN).withTrouble(StatusCode.LIMIT_OPEN).withBlower(true),
          say(MessageKey.BOARD_LIMIT_OPEN));
    }
    if (stage.needsPressure() && times.hasPressureSwitch() && !in.pressureClosed()) {
      return new Move(
          brokenOff().to(Stage.PRESSURE_PROOF).withTrouble(StatusCode.PRESSURE_OPEN),
          say(MessageKey.BOARD_PRESSURE_LOST));
    }
    if (stage.needsCall() && !stage.gas() && state.failedTrials() >= counting.mostTrials()) {
      return usedUp(state);
    }
    return ofStage();
  }

  private @Nullable Move ofStage() {
    return switch (stage) {
      case STANDBY -> in.call() ? to(Stage.SELF_CHECK, say(MessageKey.BOARD_CALL)) : null;
      case RESTART ->
          past(times.restartMillis())
              ? to(
                  Stage.SELF_CHECK, say(MessageKey.BOARD_RESTARTED, seconds(times.restartMillis())))
              : null;
      case SELF_CHECK -> past(times.selfCheckMillis()) && !flame ? selfCheck() : null;
      case PRESSURE_PROOF -> pressureProof();
      case PRESSURE_FAULT ->
          past(times.pressureRetryMillis())
              ? to(Stage.SELF_CHECK, say(MessageKey.BOARD_PRESSURE_RETRY))
              : null;
      case PRE_PURGE ->
          past(times.prePurgeMillis()) && !flame
              ? to(ignite(), say(MessageKey.BOARD_PURGED, seconds(times.prePurgeMillis())))
              : null;
      case WARM_UP ->
          past(warmUpMillis(settings, state)) && !flame
              ? to(
                  Stage.TRIAL,
                  say(MessageKey.BOARD_WARMED_UP, seconds(warmUpMillis(settings, state))))
              : null;
      case TRIAL -> trial();
      case PROVING -> proving();
      case RUN -> run();
      case INTER_PURGE ->
          past(times.interPurgeMillis()) && !flame
              ? to(ignite(), say(MessageKey.BOARD_INTER_PURGED, seconds(times.interPurgeMillis())))
              : null;
      case POST_PURGE ->
          past(times.postPurgeMillis())
              ? to(
                  Stage.STANDBY,
                  say(MessageKey.BOARD_POST_PURGED, seconds(times.postPurgeMillis())))
              : null;
      case OFF, LIMIT_OPEN, FALSE_FLAME, SOFT_LOCKOUT, HARD_LOCKOUT -> null;
    };
  }

  /** The igniter's warm-up before the next trial (ms). */
  static long warmUpMillis(BoardSettings settings, BoardState state) {
    if (settings.learning() != null) {
      return state.warmUpMillis();
    }
    boolean again = state.failedTrials() > 0 || state.losses() > 0;
    return again ? settings.times().retryWarmUpMillis() : settings.times().warmUpMillis();
  }

  private Move lostPower() {
    BoardState dark = brokenOff().to(Stage.OFF).withBlower(false);
    return new Move(
        stage.lockout() ? dark.withLocked(stage) : dark, say(MessageKey.BOARD_POWER_LOST));
  }

  /** A trial that something breaks off has let gas flow unburnt, and counts as well. */
  private BoardState brokenOff() {
    boolean trying = stage == Stage.TRIAL || stage == Stage.PROVING;
    return trying ? state.withCounts(state.failedTrials() + 1, state.losses()) : state;
  }

  /** Without power for long enough, the board forgets its lockout and its counts. */
  private @Nullable Move forgotten() {
    boolean something =
        state.locked() != Stage.OFF || state.failedTrials() > 0 || state.losses() > 0;
    return something && past(counting.powerResetMillis())
        ? new Move(
            state.withLocked(Stage.OFF).withCounts(0, 0).withTrouble(StatusCode.READY),
            say(MessageKey.BOARD_FORGOTTEN, seconds(counting.powerResetMillis())))
        : null;
  }

  private Move powered() {
    if (state.locked() != Stage.OFF) {
      return to(state.locked(), say(MessageKey.BOARD_POWER_BACK_LOCKED));
    }
    return in.call() && times.restartMillis() > 0
        ? to(Stage.RESTART, say(MessageKey.BOARD_POWER_BACK_BLOWER))
        : to(Stage.STANDBY, say(MessageKey.BOARD_POWER_BACK));
  }

  private @Nullable Move lockedOut() {
    Long limit = counting.lockoutMillis();
    Long reset = counting.callResetMillis();
    if (limit != null && past(limit)) {
      return cleared(say(MessageKey.BOARD_LOCKOUT_OVER, seconds(limit)));
    }
    return reset != null && state.callOffMillis() >= reset
        ? cleared(say(MessageKey.BOARD_LOCKOUT_CALL_CYCLED, seconds(reset)))
        : null;
  }

  private Move cleared(Message cause) {
    return new Move(state.to(Stage.STANDBY).withCounts(0, 0).withTrouble(StatusCode.READY), cause);
  }

  private @Nullable Move falseFlame() {
    Long limit = counting.falseFlameLockoutMillis();
    if (limit != null && past(limit)) {
      return to(Stage.HARD_LOCKOUT, say(MessageKey.BOARD_FALSE_FLAME_STAYS, seconds(limit)));
    }
    return !flame && state.quietMillis() >= counting.falseFlameClearMillis()
        ? again(say(MessageKey.BOARD_FALSE_FLAME_GONE, seconds(counting.falseFlameClearMillis())))
        : null;
  }

  private @Nullable Move selfCheck() {
    if (times.hasPressureSwitch() && in.pressureClosed()) {
      return waiting(StatusCode.PRESSURE_CLOSED, say(MessageKey.BOARD_PRESSURE_STUCK));
    }
    if (settings.sensing().checksLine() && !in.lineRight()) {
      return waiting(StatusCode.LINE_REVERSED, say(MessageKey.BOARD_LINE_REVERSED));
    }
    Stage purge = times.prePurgeMillis() > 0 ? Stage.PRE_PURGE : ignite();
    Stage next = times.hasPressureSwitch() ? Stage.PRESSURE_PROOF : purge;
    return resolved(next, say(MessageKey.BOARD_CHECKED));
  }

  private @Nullable Move pressureProof() {
    if (in.pressureClosed()) {
      return resolved(Stage.PRE_PURGE, say(MessageKey.BOARD_PRESSURE_PROVED));
    }
    return past(times.pressureProofMillis())
        ? trouble(
            Stage.PRESSURE_FAULT,
            StatusCode.PRESSURE_OPEN,
            say(MessageKey.BOARD_PRESSURE_LATE, seconds(times.pressureProofMillis())))
        : null;
  }

  private @Nullable Move trial() {
    if (state.valveMillis() >= times.trialMillis()) {
      return trialFailed();
    }
    return flame
        ? to(
            Stage.PROVING,
            say(
                MessageKey.BOARD_SIGNAL,
                quantity(settings.sensing().pickUpAmps(), Dimension.CURRENT),
                seconds(state.valveMillis())))
        : null;
  }

  private @Nullable Move proving() {
    if (!flame) {
      return to(Stage.TRIAL, say(MessageKey.BOARD_SIGNAL_GONE, dropOut()));
    }
    if (past(times.provingMillis())) {
      WarmUpLearning learning = settings.learning();
      BoardState running = state.to(Stage.RUN);
      return new Move(
          learning != null && state.failedTrials() == 0
              ? running.withWarmUp(learning.shorter(state.warmUpMillis()))
              : running,
          say(
              settings.ignition() == Ignition.INTERMITTENT_PILOT
                  ? MessageKey.BOARD_PILOT_PROVED
                  : MessageKey.BOARD_PROVED,
              seconds(state.valveMillis())));
    }
    return state.valveMillis() >= times.trialMillis() ? trialFailed() : null;
  }

  private Move trialFailed() {
    int failed = state.failedTrials() + 1;
    WarmUpLearning learning = settings.learning();
    BoardState counted = state.withCounts(failed, state.losses());
    if (learning != null) {
      counted = counted.withWarmUp(learning.longer(state.warmUpMillis()));
    }
    return failed >= counting.mostTrials()
        ? usedUp(counted)
        : failed(counted, Stage.INTER_PURGE, MessageKey.BOARD_TRIAL_FAILED);
  }

  private Move usedUp(BoardState counted) {
    return failed(counted, Stage.SOFT_LOCKOUT, MessageKey.BOARD_TRIALS_USED_UP);
  }

  private Move failed(BoardState counted, Stage next, MessageKey key) {
    return new Move(
        counted.to(next).withTrouble(StatusCode.NO_IGNITION),
        say(
            key,
            count(counted.failedTrials()),
            count(counting.mostTrials()),
            seconds(times.trialMillis())));
  }

  private @Nullable Move run() {
    if (!flame && state.quietMillis() >= settings.sensing().responseMillis()) {
      return flameLost();
    }
    boolean remembers = state.failedTrials() > 0 || state.trouble() != StatusCode.READY;
    return remembers && past(counting.clearAfterMillis())
        ? new Move(
            state.withCounts(0, state.losses()).withTrouble(StatusCode.READY),
            say(MessageKey.BOARD_COUNT_CLEARED, seconds(counting.clearAfterMillis())))
        : null;
  }

  private Move flameLost() {
    int losses = state.losses() + 1;
    boolean counts =
        switch (counting.lossCounts()) {
          case NEVER -> false;
          case EARLY -> !past(counting.clearAfterMillis());
          case ALWAYS -> true;
        };
    int failed = state.failedTrials() + (counts ? 1 : 0);
    boolean last =
        (counting.mostLosses() > 0 && losses >= counting.mostLosses())
            || failed >= counting.mostTrials();
    return new Move(
        state
            .withCounts(failed, losses)
            .to(last ? Stage.SOFT_LOCKOUT : Stage.INTER_PURGE)
            .withTrouble(StatusCode.FLAME_LOST),
        say(
            last ? MessageKey.BOARD_LOSSES_USED_UP : MessageKey.BOARD_FLAME_LOST,
            dropOut(),
            seconds(settings.sensing().responseMillis()),
            count(losses)));
  }

  private @Nullable Move blower() {
    if (stage == Stage.RUN && !state.blowerOn() && state.blowerMillis() >= times.blowerOnMillis()) {
      return new Move(
          state.withBlower(true), say(MessageKey.BOARD_BLOWER_ON, seconds(times.blowerOnMillis())));
    }
    return !stage.heats() && state.blowerOn() && state.blowerMillis() >= times.blowerOffMillis()
        ? new Move(
            state.withBlower(false),
            say(MessageKey.BOARD_BLOWER_OFF, seconds(times.blowerOffMillis())))
        : null;
  }

  private Stage ignite() {
    return settings.ignition().hotSurface() ? Stage.WARM_UP : Stage.TRIAL;
  }

  /** After a pause in which the call may have ended, and with it what was counted. */
  private Move again(Message cause) {
    Move move = resolved(in.call() ? Stage.SELF_CHECK : Stage.STANDBY, cause);
    return in.call() ? move : new Move(move.state().withCounts(0, 0), cause);
  }

  private boolean past(long limit) {
    return state.stageMillis() >= limit;
  }

  private Move to(Stage next, Message cause) {
    return new Move(state.to(next), cause);
  }

  private Move trouble(Stage next, StatusCode code, Message cause) {
    return new Move(state.to(next).withTrouble(code), cause);
  }

  private Move resolved(Stage next, Message cause) {
    boolean passing =
        switch (state.trouble()) {
          case PRESSURE_OPEN, PRESSURE_CLOSED, LIMIT_OPEN, LINE_REVERSED, FALSE_FLAME -> true;
          default -> false;
        };
    BoardState moved = state.to(next);
    return new Move(passing ? moved.withTrouble(StatusCode.READY) : moved, cause);
  }

  /** Says once what the board waits for. */
  private @Nullable Move waiting(StatusCode code, Message cause) {
    return state.trouble() == code ? null : new Move(state.withTrouble(code), cause);
  }

  private Argument dropOut() {
    return quantity(settings.sensing().dropOutAmps(), Dimension.CURRENT);
  }

  private static Argument seconds(long millis) {
    return quantity(millis / 1000.0, Dimension.TIME);
  }

  private static Message say(MessageKey key, Argument... arguments) {
    return Message.of(key, arguments);
  }
}
