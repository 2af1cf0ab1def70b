package halfwave.board;

/**
 * All that a board remembers. Clocks stop at the longest time their board can tell, so that a board
 * at rest is a value at rest.
 *
 * @param stage what it is doing
 * @param stageMillis for how long (ms)
 * @param valveMillis time since the gas valve last opened or shut (ms)
 * @param quietMillis how long there has been no flame signal (ms)
 * @param callOffMillis how long there has been no call, in lockout (ms)
 * @param failedTrials trials that failed since a flame last held or a call last ended
 * @param losses flames lost since the call began
 * @param blowerOn whether the circulating blower runs
 * @param blowerMillis time since the furnace began or ceased to be heated (ms)
 * @param warmUpMillis warm-up of the next first trial (ms)
 * @param trouble the last thing that went wrong, or {@link StatusCode#READY}
 * @param locked the lockout it was in when the power failed, or {@link Stage#OFF}
 */
public record BoardState(
    Stage stage,
    long stageMillis,
    long valveMillis,
    long quietMillis,
    long callOffMillis,
    int failedTrials,
    int losses,
    boolean blowerOn,
    long blowerMillis,
    long warmUpMillis,
    StatusCode trouble,
    Stage locked) {

  /** A board that has lain without power for long. */
  public static BoardState unpowered(BoardSettings settings) {
    long rest = settings.longestMillis();
    return new BoardState(
        Stage.OFF,
        rest,
        rest,
        rest,
        0,
        0,
        0,
        false,
        rest,
        settings.times().warmUpMillis(),
        StatusCode.READY,
        Stage.OFF);
  }

  /** In another stage, whose clock starts; others start where what they count begins or ends. */
  BoardState to(Stage next) {
    return new BoardState(
        next,
        0,
        stage.gas() == next.gas() ? valveMillis : 0,
        quietMillis,
        0,
        failedTrials,
        losses,
        blowerOn,
        stage.heats() == next.heats() ? blowerMillis : 0,
        warmUpMillis,
        trouble,
        Stage.OFF);
  }

  BoardState withTrouble(StatusCode code) {
    return copy(failedTrials, losses, blowerOn, warmUpMillis, code, locked);
  }

  BoardState withCounts(int trials, int lost) {
    return copy(trials, lost, blowerOn, warmUpMillis, trouble, locked);
  }

  BoardState withBlower(boolean on) {
    return copy(failedTrials, losses, on, warmUpMillis, trouble, locked);
  }

  BoardState withWarmUp(long millis) {
    return copy(failedTrials, losses, blowerOn, millis, trouble, locked);
  }

  BoardState withLocked(Stage lockout) {
    return copy(failedTrials, losses, blowerOn, warmUpMillis, trouble, lockout);
  }

  private BoardState copy(
      int trials, int lost, boolean blower, long warmUp, StatusCode code, Stage lockout) {
    return new BoardState(
        stage,
        stageMillis,
        valveMillis,
        quietMillis,
        callOffMillis,
        trials,
        lost,
        blower,
        blowerMillis,
        warmUp,
        code,
        lockout);
  }

  /** The same after a time in which nothing happened. */
  BoardState later(long millis, long longest, boolean quiet, boolean callOff) {
    return new BoardState(
        stage,
        Math.min(longest, stageMillis + millis),
        Math.min(longest, valveMillis + millis),
        quiet ? Math.min(longest, quietMillis + millis) : 0,
        callOff ? Math.min(longest, callOffMillis + millis) : 0,
        failedTrials,
        losses,
        blowerOn,
        Math.min(longest, blowerMillis + millis),
        warmUpMillis,
        trouble,
        locked);
  }
}
