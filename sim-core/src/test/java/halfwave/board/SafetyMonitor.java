package halfwave.board;

import java.util.function.Consumer;

/**
 * Watches a board from outside. It has its own clocks and counts, fed by inputs and outputs; of the
 * board's memory it reads nothing but the name of the stage. Clocks stop at the longest time they
 * have to tell, so that the pair of board and monitor has finitely many values.
 *
 * @param gas a valve is open
 * @param openFor since it opened (ms)
 * @param flameFor the flame signal has held (ms) since the valve opened, or -1
 * @param proved it has held for the proving time
 * @param heldFor since then (ms)
 * @param silentFor no flame signal (ms), valve open
 * @param air the air is proved, valve shut
 * @param airFor for how long (ms)
 * @param wantsPrePurge something came between that an inter-purge does not make good
 * @param warming the hot surface is on, valve shut
 * @param warmFor for how long (ms)
 * @param trials failed trials in a row
 * @param losses lost flames in one call
 * @param locked the lockout it is in, power or not, or {@link Stage#OFF}
 * @param lockedFor how long with power (ms)
 * @param callOffFor in lockout, power on, no call (ms)
 * @param darkFor no power (ms)
 */
record SafetyMonitor(
    boolean gas,
    long openFor,
    long flameFor,
    boolean proved,
    long heldFor,
    long silentFor,
    boolean air,
    long airFor,
    boolean wantsPrePurge,
    boolean warming,
    long warmFor,
    int trials,
    int losses,
    Stage locked,
    long lockedFor,
    long callOffFor,
    long darkFor) {

  /** Beside a board that has lain without power for long. */
  static SafetyMonitor unpowered(BoardSettings settings) {
    long dark = settings.counting().powerResetMillis();
    return new SafetyMonitor(
        false, 0, -1, false, 0, 0, false, 0, true, false, 0, 0, 0, Stage.OFF, 0, 0, dark);
  }

  /** After an instant at which the board settled. */
  SafetyMonitor settled(
      BoardSettings settings,
      BoardInputs in,
      BoardStep step,
      BoardOutputs out,
      Consumer<SafetyRule> broken) {
    return new Watch(settings, in, step, out, broken).instant();
  }

  /** After a time in which neither inputs nor outputs changed. */
  SafetyMonitor later(BoardSettings settings, BoardInputs in, long millis) {
    Times times = settings.times();
    Counting counting = settings.counting();
    boolean flame = in.signal().proves();
    boolean lockedOn = locked != Stage.OFF && in.power();
    return new SafetyMonitor(
        gas,
        gas ? Math.min(times.trialMillis(), openFor + millis) : 0,
        flameFor < 0 ? -1 : Math.min(times.provingMillis(), flameFor + millis),
        proved,
        proved ? Math.min(counting.clearAfterMillis(), heldFor + millis) : 0,
        gas && !flame ? Math.min(settings.sensing().responseMillis(), silentFor + millis) : 0,
        air,
        air ? Math.min(longestPurgeMillis(times), airFor + millis) : 0,
        wantsPrePurge,
        warming,
        warming ? Math.min(mostWarmMillis(settings), warmFor + millis) : 0,
        trials,
        losses,
        locked,
        lockedOn ? Math.min(orZero(counting.lockoutMillis()), lockedFor + millis) : 0,
        lockedOn && !in.call()
            ? Math.min(orZero(counting.callResetMillis()), callOffFor + millis)
            : 0,
        in.power() ? 0 : Math.min(counting.powerResetMillis(), darkFor + millis));
  }

  private static long longestPurgeMillis(Times times) {
    return Math.max(times.prePurgeMillis(), times.interPurgeMillis());
  }

  private static long mostWarmMillis(BoardSettings settings) {
    Times times = settings.times();
    return settings.learning() == null
        ? Math.max(times.warmUpMillis(), times.retryWarmUpMillis())
        : settings.learning().mostMillis();
  }

  private static long leastWarmMillis(BoardSettings settings) {
    Times times = settings.times();
    return settings.learning() == null
        ? Math.min(times.warmUpMillis(), times.retryWarmUpMillis())
        : settings.learning().leastMillis();
  }

  private static long orZero(Long millis) {
    return millis == null ? 0 : millis;
  }

  /** One instant. Fields begin as the monitor's and end as those of the next. */
  private final class Watch {

    private final BoardSettings settings;
    private final Times times;
    private final Counting counting;
    private final BoardInputs in;
    private final BoardStep step;
    private final BoardOutputs out;
    private final Consumer<SafetyRule> broken;
    private final Stage stage;
    private final boolean flame;
    private final boolean pressure;

    private long open = openFor;
    private long signal = flameFor;
    private boolean proof = proved;
    private long held = heldFor;
    private long silent = silentFor;
    private long purged;
    private boolean wants = wantsPrePurge;
    private int failed = trials;
    private int lost = losses;
    private Stage lock = locked;

    Watch(
        BoardSettings settings,
        BoardInputs in,
        BoardStep step,
        BoardOutputs out,
        Consumer<SafetyRule> broken) {
      this.settings = settings;
      this.times = settings.times();
      this.counting = settings.counting();
      this.in = in;
      this.step = step;
      this.out = out;
      this.broken = broken;
      this.stage = step.state().stage();
      this.flame = in.signal().proves();
      this.pressure = !times.hasPressureSwitch() || in.pressureClosed();
    }

    SafetyMonitor instant() {
      boolean airNow = !out.gas() && (noInducer() || (out.inducer() && pressure));
      boolean airThroughout = air && (noInducer() || (in.power() && pressure));
      purged = airThroughout ? airFor : 0;
      switches();
      lockout();
      forgets();
      signal();
      valve();
      gasStays();
      ignition();
      boolean warmingNow = out.igniter() && !out.gas();
      // time with the valve shut in which it neither purges between trials nor warms up
      boolean interrupted = !sound() || (stage != Stage.INTER_PURGE && stage != Stage.WARM_UP);
      return new SafetyMonitor(
          out.gas(),
          open,
          signal,
          proof,
          held,
          silent,
          airNow,
          airNow ? purged : 0,
          !out.gas() && (wants || interrupted),
          warmingNow,
          warmingNow && warming ? warmFor : 0,
          failed,
          lost,
          lock,
          lock == locked && in.power() ? lockedFor : 0,
          lock == locked && in.power() ? callOffFor : 0,
          in.power() ? 0 : darkFor);
    }

    /** A burner that draws its air by itself. */
    private boolean noInducer() {
      return !times.hasPressureSwitch() && times.prePurgeMillis() == 0;
    }

    private boolean sound() {
      return in.power() && in.call() && in.limitClosed() && pressure && in.selfTestPassed();
    }

    private void check(SafetyRule rule, boolean holds) {
      if (!holds) {
        broken.accept(rule);
      }
    }

    private void switches() {
      boolean idle = !(out.gas() || out.inducer() || out.igniter() || out.spark() || out.blower());
      check(SafetyRule.NOTHING_RUNS_WITHOUT_POWER, in.power() || idle);
      check(SafetyRule.GAS_NEEDS_CALL, !out.gas() || in.call());
      check(SafetyRule.GAS_NEEDS_CLOSED_LIMIT, !out.gas() || in.limitClosed());
      check(SafetyRule.GAS_NEEDS_AIR, !out.gas() || pressure);
      check(SafetyRule.GAS_NEEDS_A_SOUND_BOARD, !out.gas() || in.selfTestPassed());
    }

    /** Left by its time, by the call or by the power, at that instant and at no other. */
    private void lockout() {
      boolean soft = locked == Stage.SOFT_LOCKOUT;
      boolean byTime = soft && counting.lockoutMillis() != null && lockedFor >= lockoutMillis();
      boolean byCall = soft && counting.callResetMillis() != null && callOffFor >= callMillis();
      boolean over = byTime || byCall || darkFor >= counting.powerResetMillis();
      boolean wasLocked = locked != Stage.OFF;
      if (wasLocked && in.power()) {
        boolean harder = soft && !in.selfTestPassed();
        check(SafetyRule.LOCKOUT_LASTS, over || stage == locked || (harder && hard()));
        check(SafetyRule.LOCKOUT_ENDS, !over || !stage.lockout() || !in.selfTestPassed());
      }
      check(SafetyRule.GAS_NEEDS_A_SOUND_BOARD, !in.power() || in.selfTestPassed() || hard());
      if (in.power()) {
        lock = stage.lockout() ? stage : Stage.OFF;
      } else if (darkFor >= counting.powerResetMillis()) {
        lock = Stage.OFF;
      }
    }

    private long lockoutMillis() {
      return orZero(counting.lockoutMillis());
    }

    private long callMillis() {
      return orZero(counting.callResetMillis());
    }

    private boolean hard() {
      return stage == Stage.HARD_LOCKOUT;
    }

    /** The counts start anew with a call, after a lockout, and after long without power. */
    private void forgets() {
      boolean unlocked = locked != Stage.OFF && lock == Stage.OFF;
      boolean callOver = in.power() && !in.call() && lock == Stage.OFF;
      if (unlocked || callOver || darkFor >= counting.powerResetMillis()) {
        failed = 0;
        lost = 0;
      }
    }

    private void signal() {
      if (gas) {
        signal = flame ? Math.max(0, flameFor) : -1;
        silent = flame ? 0 : silentFor;
        proof = proved || (flame && signal >= times.provingMillis());
        if (proof && held >= counting.clearAfterMillis()) {
          failed = 0;
        }
      }
    }

    private void valve() {
      boolean shutOnTheWay = false;
      Stage at = null;
      for (Transition t : step.transitions()) {
        check(SafetyRule.TRANSITIONS_CONNECT, at == null || at == t.from());
        shutOnTheWay |= t.from().gas() && !t.to().gas();
        at = t.to();
      }
      check(SafetyRule.TRANSITIONS_CONNECT, at == null || at == stage);
      if (gas && (shutOnTheWay || !out.gas())) {
        shuts();
      }
      if (out.gas() && (shutOnTheWay || !gas)) {
        opens();
      }
    }

    private void shuts() {
      boolean loss = proof && !flame && silent >= settings.sensing().responseMillis() && sound();
      boolean early = counting.lossCounts() == LossCount.EARLY;
      boolean counts =
          counting.lossCounts() == LossCount.ALWAYS
              || (early && held < counting.clearAfterMillis());
      if (!in.call() && in.power()) {
        failed = 0;
      } else if (!proof || (loss && counts)) {
        failed = Math.min(counting.mostTrials(), failed + 1);
      }
      if (loss && counting.mostLosses() > 0) {
        lost = Math.min(counting.mostLosses(), lost + 1);
      }
      open = 0;
      signal = -1;
      proof = false;
      held = 0;
      silent = 0;
      wants = false;
      purged = 0;
    }

    private void opens() {
      boolean hot = settings.ignition().hotSurface();
      check(SafetyRule.NO_OPENING_ONTO_A_FLAME, !flame);
      check(SafetyRule.NO_OPENING_IN_LOCKOUT, lock == Stage.OFF);
      check(SafetyRule.NO_IGNITION_WITHOUT_PURGE, purged());
      check(
          SafetyRule.NO_GAS_WITHOUT_IGNITION,
          hot ? warming && warmFor >= leastWarmMillis(settings) : out.spark());
      check(SafetyRule.NO_MORE_TRIALS_THAN_SET, failed < counting.mostTrials());
      check(
          SafetyRule.NO_MORE_LOSSES_THAN_SET,
          counting.mostLosses() == 0 || lost < counting.mostLosses());
    }

    private boolean purged() {
      return purged >= (wants ? times.prePurgeMillis() : times.interPurgeMillis());
    }

    private void gasStays() {
      if (out.gas()) {
        check(SafetyRule.NO_OPENING_IN_LOCKOUT, !stage.lockout());
        check(SafetyRule.UNPROVED_GAS_ENDS_WITH_THE_TRIAL, proof || open < times.trialMillis());
        check(
            SafetyRule.UNANSWERED_GAS_ENDS_WITH_THE_RESPONSE_TIME,
            !proof || flame || silent < settings.sensing().responseMillis());
        boolean pilot = settings.ignition() == Ignition.INTERMITTENT_PILOT;
        check(SafetyRule.MAIN_GAS_NEEDS_A_PROVED_PILOT, !pilot || !out.mainValve() || proof);
      }
    }

    private void ignition() {
      boolean hot = settings.ignition().hotSurface();
      boolean lighting = out.gas() && !proof && open < times.ignitionActivationMillis();
      boolean glowing = !out.gas() && sound() && !overdue();
      check(SafetyRule.IGNITION_ONLY_TO_LIGHT, !out.spark() || (!hot && lighting));
      check(SafetyRule.IGNITION_ONLY_TO_LIGHT, !out.igniter() || (hot && (lighting || glowing)));
      boolean starts = out.igniter() && !out.gas() && !warming;
      check(SafetyRule.NO_IGNITION_WITHOUT_PURGE, !starts || purged());
    }

    /** The hot surface has been on for long enough, and no flame keeps the valve from opening. */
    private boolean overdue() {
      return warming && warmFor >= mostWarmMillis(settings) && !flame;
    }
  }
}
