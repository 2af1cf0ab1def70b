package halfwave.board;

/**
 * A board whose times are a few units of one second, so that everything it can do is soon told. The
 * values are not those of any board; they are as short as each rule allows and differ enough that
 * one time is not mistaken for another.
 */
final class SmallBoard {

  static final long UNIT_MILLIS = 1000;

  String name = "small";
  Ignition ignition = Ignition.HOT_SURFACE;
  long restart = 0;
  long selfCheck = 1;
  long pressureProof = 1;
  long pressureRetry = 1;
  long prePurge = 2;
  long warmUp = 1;
  long retryWarmUp = 2;
  long activation = 1;
  long trial = 2;
  long proving = 1;
  long interPurge = 1;
  long postPurge = 1;
  long blowerOn = 0;
  long blowerOff = 0;
  long response = 1;
  long fade = 1;
  boolean checksLine = false;
  int mostTrials = 2;
  int mostLosses = 2;
  LossCount lossCounts = LossCount.NEVER;
  long clearAfter = 2;
  long lockout = 2;
  long callReset = 1;
  long powerReset = 2;
  long falseFlameClear = 1;
  long falseFlameLockout = 0;
  WarmUpLearning learning = null;

  static SmallBoard hotSurface() {
    SmallBoard b = new SmallBoard();
    b.name = "hot-surface";
    b.restart = 1;
    b.checksLine = true;
    b.blowerOn = 1;
    b.blowerOff = 1;
    return b;
  }

  static SmallBoard learning() {
    SmallBoard b = new SmallBoard();
    b.name = "learning";
    b.ignition = Ignition.HOT_SURFACE_NITRIDE;
    b.learning = new WarmUpLearning(UNIT_MILLIS, UNIT_MILLIS, 2 * UNIT_MILLIS);
    b.warmUp = 2;
    b.lossCounts = LossCount.EARLY;
    b.lockout = 0;
    b.callReset = 2;
    b.falseFlameLockout = 2;
    return b;
  }

  static SmallBoard spark() {
    SmallBoard b = new SmallBoard();
    b.name = "spark";
    b.ignition = Ignition.DIRECT_SPARK;
    b.pressureProof = 0;
    b.warmUp = 0;
    b.retryWarmUp = 0;
    b.interPurge = 2;
    b.prePurge = 1;
    b.lossCounts = LossCount.ALWAYS;
    b.mostLosses = 0;
    b.callReset = 0;
    b.response = 2;
    b.fade = 3;
    b.mostTrials = 3;
    return b;
  }

  static SmallBoard pilot() {
    SmallBoard b = new SmallBoard();
    b.name = "pilot";
    b.ignition = Ignition.INTERMITTENT_PILOT;
    b.pressureProof = 0;
    b.prePurge = 0;
    b.warmUp = 0;
    b.retryWarmUp = 0;
    b.postPurge = 0;
    b.trial = 3;
    b.activation = 3;
    b.interPurge = 2;
    b.mostLosses = 1;
    b.lockout = 0;
    b.callReset = 0;
    b.falseFlameLockout = 2;
    return b;
  }

  /** As much left out as may be left out. */
  static SmallBoard bare() {
    SmallBoard b = new SmallBoard();
    b.name = "bare";
    b.selfCheck = 0;
    b.prePurge = 0;
    b.retryWarmUp = 1;
    b.interPurge = 0;
    b.postPurge = 0;
    b.proving = 0;
    b.response = 0;
    b.fade = 0;
    b.mostTrials = 1;
    b.mostLosses = 0;
    b.clearAfter = 1;
    return b;
  }

  BoardSettings build() {
    Sensing sensing =
        new Sensing(0.8e-6, 0.5e-6, 1.5e-6, 20e-6, 0.2, ms(response), ms(fade), checksLine);
    Times times =
        new Times(
            ms(restart),
            ms(selfCheck),
            ms(pressureProof),
            ms(pressureRetry),
            ms(prePurge),
            ms(warmUp),
            ms(retryWarmUp),
            ms(activation),
            ms(trial),
            ms(proving),
            ms(interPurge),
            ms(postPurge),
            ms(blowerOn),
            ms(blowerOff));
    Counting counting =
        new Counting(
            mostTrials,
            mostLosses,
            lossCounts,
            ms(clearAfter),
            orNull(lockout),
            orNull(callReset),
            ms(powerReset),
            ms(falseFlameClear),
            orNull(falseFlameLockout));
    return new BoardSettings(name, ignition, sensing, times, counting, learning);
  }

  private static long ms(long units) {
    return units * UNIT_MILLIS;
  }

  private static Long orNull(long units) {
    return units == 0 ? null : ms(units);
  }
}
