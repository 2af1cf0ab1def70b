package halfwave.board;

import java.util.ArrayList;
import java.util.List;

/**
 * The board as a pure function of settings, state and inputs. Each transition is computed whole
 * from the state before it, and only then takes its place.
 */
public final class Board {

  /** Nothing is going to happen by itself. */
  public static final long NEVER = Long.MAX_VALUE;

  /** More transitions at one instant than there are stages would be a board that never rests. */
  private static final int MOST_AT_ONCE = 2 * Stage.values().length;

  private Board() {}

  /** Makes every transition that is due at this instant. */
  public static BoardStep settle(BoardSettings settings, BoardState state, BoardInputs inputs) {
    BoardState now = state;
    List<Transition> made = new ArrayList<>(0);
    for (int k = 0; k < MOST_AT_ONCE; k++) {
      Rules.Move move = new Rules(settings, now, inputs).next();
      if (move == null) {
        return new BoardStep(now, made);
      }
      made.add(new Transition(now.stage(), move.state().stage(), move.cause()));
      now = move.state();
    }
    throw new IllegalStateException("the board does not rest: " + made);
  }

  /**
   * How long a settled board stays as it is, as long as its inputs do.
   *
   * @return milliseconds, above zero, or {@link #NEVER}
   */
  public static long dueMillis(BoardSettings settings, BoardState state, BoardInputs inputs) {
    return new Clocks(settings, state, inputs).dueMillis();
  }

  /**
   * Lets time pass.
   *
   * @param millis zero or above, at most {@link #dueMillis}
   */
  public static BoardState after(
      BoardSettings settings, BoardState state, BoardInputs inputs, long millis) {
    return state.later(
        millis,
        settings.longestMillis(),
        !inputs.signal().proves(),
        state.stage() == Stage.SOFT_LOCKOUT && inputs.power() && !inputs.call());
  }

  /** What the board does in that state. */
  public static BoardOutputs outputs(BoardSettings settings, BoardState state) {
    Stage stage = state.stage();
    Times times = settings.times();
    boolean lighting =
        (stage == Stage.TRIAL || stage == Stage.PROVING)
            && state.valveMillis() < times.ignitionActivationMillis();
    boolean hot = settings.ignition().hotSurface();
    boolean pilot = settings.ignition() == Ignition.INTERMITTENT_PILOT;
    return new BoardOutputs(
        air(times, state) && (times.hasPressureSwitch() || times.prePurgeMillis() > 0),
        hot && (lighting || stage == Stage.WARM_UP),
        !hot && lighting,
        pilot && stage.gas(),
        pilot ? stage == Stage.RUN : stage.gas(),
        state.blowerOn() || stage == Stage.RESTART);
  }

  /** A lockout begins with the post-purge. */
  private static boolean air(Times times, BoardState state) {
    boolean purging = state.stage().lockout() && state.stageMillis() < times.postPurgeMillis();
    return state.stage().air() || purging;
  }

  /** What the status light says. */
  public static StatusCode code(BoardState state, FlameSignal signal) {
    return switch (state.stage()) {
      case OFF -> StatusCode.DARK;
      case SOFT_LOCKOUT -> StatusCode.SOFT_LOCKOUT;
      case HARD_LOCKOUT -> StatusCode.HARD_LOCKOUT;
      case FALSE_FLAME -> StatusCode.FALSE_FLAME;
      case LIMIT_OPEN -> StatusCode.LIMIT_OPEN;
      case RUN -> signal == FlameSignal.GOOD ? StatusCode.FLAME : StatusCode.WEAK_FLAME;
      default -> {
        if (signal == FlameSignal.SHORTED) {
          yield StatusCode.SENSE_SHORTED;
        }
        yield state.trouble() != StatusCode.READY || state.stage() == Stage.STANDBY
            ? state.trouble()
            : StatusCode.STARTING;
      }
    };
  }
}
