package halfwave.board;

/** When the next of a board's clocks runs out. Says nothing about what then happens. */
final class Clocks {

  private final BoardSettings settings;
  private final BoardState state;
  private final BoardInputs inputs;
  private long due = Board.NEVER;

  Clocks(BoardSettings settings, BoardState state, BoardInputs inputs) {
    this.settings = settings;
    this.state = state;
    this.inputs = inputs;
  }

  long dueMillis() {
    stage();
    blower();
    if (!state.stage().gas()) {
      if (inputs.signal().proves()) {
        at(settings.sensing().fadeMillis(), state.valveMillis());
      }
    } else if (state.stage() != Stage.RUN) {
      // the end of lighting changes an output, though not the stage
      at(settings.times().ignitionActivationMillis(), state.valveMillis());
      at(settings.times().trialMillis(), state.valveMillis());
    }
    return due;
  }

  private void at(long limit, long clock) {
    if (limit > clock) {
      due = Math.min(due, limit - clock);
    }
  }

  private void stage() {
    Times times = settings.times();
    Counting counting = settings.counting();
    long clock = state.stageMillis();
    switch (state.stage()) {
      case OFF -> at(counting.powerResetMillis(), clock);
      case RESTART -> at(times.restartMillis(), clock);
      case SELF_CHECK -> at(times.selfCheckMillis(), clock);
      case PRESSURE_PROOF -> at(times.pressureProofMillis(), clock);
      case PRESSURE_FAULT -> at(times.pressureRetryMillis(), clock);
      case PRE_PURGE -> at(times.prePurgeMillis(), clock);
      case WARM_UP -> at(Rules.warmUpMillis(settings, state), clock);
      case PROVING -> at(times.provingMillis(), clock);
      case RUN -> {
        at(counting.clearAfterMillis(), clock);
        if (!inputs.signal().proves()) {
          at(settings.sensing().responseMillis(), state.quietMillis());
        }
      }
      case INTER_PURGE -> at(times.interPurgeMillis(), clock);
      case POST_PURGE -> at(times.postPurgeMillis(), clock);
      case FALSE_FLAME -> {
        Long limit = counting.falseFlameLockoutMillis();
        at(limit == null ? 0 : limit, clock);
        if (!inputs.signal().proves()) {
          at(counting.falseFlameClearMillis(), state.quietMillis());
        }
      }
      case SOFT_LOCKOUT -> {
        at(times.postPurgeMillis(), clock);
        Long limit = counting.lockoutMillis();
        at(limit == null ? 0 : limit, clock);
        Long reset = counting.callResetMillis();
        if (!inputs.call()) {
          at(reset == null ? 0 : reset, state.callOffMillis());
        }
      }
      case HARD_LOCKOUT -> at(times.postPurgeMillis(), clock);
      case STANDBY, TRIAL, LIMIT_OPEN -> {}
    }
  }

  private void blower() {
    if (state.stage() == Stage.RUN && !state.blowerOn()) {
      at(settings.times().blowerOnMillis(), state.blowerMillis());
    } else if (!state.stage().heats() && state.blowerOn()) {
      at(settings.times().blowerOffMillis(), state.blowerMillis());
    }
  }
}
