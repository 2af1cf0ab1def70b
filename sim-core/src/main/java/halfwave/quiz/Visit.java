package halfwave.quiz;

import halfwave.bench.Bench;
import halfwave.bench.Condition;
import halfwave.bench.Disorder;
import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.Outcome;
import halfwave.evidence.Course;
import halfwave.evidence.HeatingCall;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import halfwave.work.Caution;
import halfwave.work.Repair;
import halfwave.work.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A learner at the furnace of a service call: a pure function of the furnace and of what was done.
 * Whoever does the same again finds the same; so an answer sheet needs to hold nothing but the
 * moves. Immutable.
 */
public final class Visit {

  /** To put a test signal in, or take it out, with the way to the board (min) [practice]. */
  private static final int SIGNAL_MINUTES = 6;

  private final Variant variant;
  private final Appearances appearances;
  private final boolean hints;
  private final Bench bench;
  private final Cause left;
  private final boolean power;
  private final boolean gas;
  private final boolean signal;
  private final int minutes;
  private final int partsUnits;
  private final int turns;
  private final @Nullable Ending ending;
  private final List<Done> log;

  private Visit(Draft d) {
    variant = d.variant;
    appearances = d.appearances;
    hints = d.hints;
    bench = d.bench;
    left = d.left;
    power = d.power;
    gas = d.gas;
    signal = d.signal;
    minutes = d.minutes;
    partsUnits = d.partsUnits;
    turns = d.turns;
    ending = d.ending;
    log = List.copyOf(d.log);
  }

  /**
   * Somebody comes to the furnace: power on, gas open.
   *
   * @param variant the furnace
   * @param appearances what is remembered of benches
   * @param hints whether hints are given
   */
  public static Visit begin(Variant variant, Appearances appearances, boolean hints) {
    return new Visit(new Draft(variant, appearances, hints));
  }

  /** Why this cannot be done now, or nothing. */
  public Optional<Refusal> refusal(Move move) {
    if (ending != null) {
      return Optional.of(Refusal.OVER);
    } else if (move instanceof Move.Checked checked) {
      return refusal(checked.check());
    } else if (move instanceof Move.Repaired repaired) {
      return refusal(repaired.repair());
    } else if (move instanceof Move.Power switched) {
      return already(switched.on() == power);
    } else if (move instanceof Move.Gas cock) {
      return already(cock.on() == gas);
    } else if (move instanceof Move.Signal put) {
      return already(put.on() == signal);
    }
    boolean refused = move instanceof Move.Hint && !hints;
    return refused ? Optional.of(Refusal.NO_HINTS) : Optional.empty();
  }

  private static Optional<Refusal> already(boolean so) {
    return so ? Optional.of(Refusal.ALREADY) : Optional.empty();
  }

  private Optional<Refusal> refusal(Check check) {
    if (!Check.all(variant.call().ignition()).contains(check)) {
      return Optional.of(Refusal.NO_SUCH_PART);
    } else if (!variant.call().open(check)) {
      return Optional.of(Refusal.CLOSED);
    } else if (!power && needsPower(check)) {
      return Optional.of(Refusal.NO_POWER);
    } else if (!gas && check.work().map(Work::needsFlame).orElse(false)) {
      return Optional.of(Refusal.NO_GAS);
    }
    boolean inTheWay = signal && !(check instanceof Check.Call || check instanceof Check.Light);
    return inTheWay ? Optional.of(Refusal.SIGNAL_THERE) : Optional.empty();
  }

  private static boolean needsPower(Check check) {
    return check.work().map(Work::needsPower).orElse(true);
  }

  private Optional<Refusal> refusal(Repair repair) {
    if (!repair.possibleAt(variant.call().ignition())) {
      return Optional.of(Refusal.NO_SUCH_PART);
    } else if (repair.needsPower() && !power) {
      return Optional.of(Refusal.NO_POWER);
    } else if (repair.needsFlame() && !gas) {
      return Optional.of(Refusal.NO_GAS);
    }
    return signal ? Optional.of(Refusal.SIGNAL_THERE) : Optional.empty();
  }

  /**
   * After a move.
   *
   * @throws IllegalArgumentException if it is refused
   */
  public Visit after(Move move) {
    refusal(move)
        .ifPresent(
            why -> {
              throw new IllegalArgumentException(move + ": " + why);
            });
    Draft next = new Draft(this);
    Outcome outcome = null;
    Caution danger = danger(move);
    if (danger != null) {
      next.ending = Ending.DANGER;
    } else if (move instanceof Move.Checked checked) {
      next.minutes += checked.check().minutes();
      outcome = found(checked.check());
    } else if (move instanceof Move.Repaired repaired) {
      next.mend(repaired.repair());
    } else if (move instanceof Move.Power switched) {
      next.power = switched.on();
    } else if (move instanceof Move.Gas cock) {
      next.gas = cock.on();
    } else if (move instanceof Move.Signal put) {
      next.signal = put.on();
      next.minutes += SIGNAL_MINUTES;
    }
    if (next.ending == null && next.minutes > variant.call().minutes()) {
      next.ending = Ending.TIME_UP;
    }
    next.log.add(new Done(move, next.minutes, outcome, danger));
    return new Visit(next);
  }

  /** What makes it dangerous as things stand, or null. */
  private @Nullable Caution danger(Move move) {
    if (move instanceof Move.Tempted tempted) {
      return tempted.temptation().caution();
    } else if (move instanceof Move.Signal) {
      return power || gas ? Caution.OFF_BEFORE_OPENING : null;
    } else if (move instanceof Move.Gas cock) {
      return cock.on() && signal ? Caution.NEVER_BYPASS : null;
    }
    Work work = work(move);
    boolean live = work != null && work.stillOn(power, gas).isPresent();
    return live ? Caution.OFF_BEFORE_OPENING : null;
  }

  private static @Nullable Work work(Move move) {
    if (move instanceof Move.Checked checked) {
      return checked.check().work().orElse(null);
    }
    return move instanceof Move.Repaired repaired ? repaired.repair() : null;
  }

  private Outcome found(Check check) {
    if (check.remembered()) {
      return new Outcome.Found(variant.since());
    }
    Outcome true_ =
        appearances.outcome(benchFor(check), variant.call().settings(), variant.seed(), check);
    return Scatter.of(true_, variant.seed(), turns, place(check));
  }

  private int place(Check check) {
    return Check.all(variant.call().ignition()).indexOf(check);
  }

  /**
   * The furnace as the check meets it: whoever measures with the gas shut does not mind the gas.
   */
  private Bench benchFor(Check check) {
    Bench now = signal ? withSignal(bench) : bench;
    boolean minds = check instanceof Check.Call || check instanceof Check.Light;
    boolean shut = minds && !gas;
    Condition c = now.condition();
    return shut ? now.with(c.withAppliance(c.appliance().with(Disorder.GAS_SHUT, true))) : now;
  }

  /** A test signal in the place of rod, lead and way back: board and supply alone are left. */
  private static Bench withSignal(Bench bench) {
    Condition c =
        bench
            .condition()
            .withConnector(0)
            .withLeadExtra(0)
            .withGroundExtra(0)
            .withLeakage(Double.POSITIVE_INFINITY)
            .withJumper(Double.POSITIVE_INFINITY);
    return Fault.typical(FaultKind.RECTIFYING_DEPOSIT).on(bench.with(c));
  }

  /** Whether the furnace is really whole: nothing is left wrong, and a call runs. */
  public boolean whole() {
    return left.healthy() && runs();
  }

  private boolean runs() {
    Check call = new Check.Call();
    Outcome course = appearances.outcome(bench, variant.call().settings(), variant.seed(), call);
    return course.equals(new Outcome.Found(Course.RUNS));
  }

  /** The furnace that was met. */
  public Variant variant() {
    return variant;
  }

  /** What is still wrong. */
  public Cause left() {
    return left;
  }

  /** The furnace with what is still wrong with it; without a test signal. */
  Bench bench() {
    return bench;
  }

  /** The same visit before anything was done. */
  Visit again() {
    return begin(variant, appearances, hints);
  }

  /** The heating call that a check looks at, from what is remembered. */
  HeatingCall heatingCall(Check check) {
    return appearances.call(benchFor(check), variant.call().settings(), variant.seed());
  }

  /** Whether the furnace switch is on. */
  public boolean power() {
    return power;
  }

  /** Whether the gas cock is open. */
  public boolean gas() {
    return gas;
  }

  /** Whether a test signal is there. */
  public boolean signal() {
    return signal;
  }

  /** Simulated minutes so far. */
  public int minutes() {
    return minutes;
  }

  /** What parts have cost so far (units). */
  public int partsUnits() {
    return partsUnits;
  }

  /** How it ended before its conclusion, if it did. */
  public Optional<Ending> ending() {
    return Optional.ofNullable(ending);
  }

  /** What was done, in order. */
  public List<Done> log() {
    return log;
  }

  /**
   * What was done last.
   *
   * @throws IndexOutOfBoundsException where nothing was done
   */
  public Done last() {
    return log.get(log.size() - 1);
  }

  /** Whether something was repaired. */
  public boolean repaired() {
    return lastRepair() >= 0;
  }

  /** What was done since the last repair, or all where nothing was repaired. */
  public List<Done> sinceRepair() {
    return log.subList(lastRepair() + 1, log.size());
  }

  private int lastRepair() {
    int last = log.size() - 1;
    while (last >= 0 && !(log.get(last).move() instanceof Move.Repaired)) {
      last--;
    }
    return last;
  }

  /** The components, to change some of them. */
  private static final class Draft {
    private final Variant variant;
    private final Appearances appearances;
    private final boolean hints;
    private Bench bench;
    private Cause left;
    private boolean power = true;
    private boolean gas = true;
    private boolean signal;
    private int minutes;
    private int partsUnits;
    private int turns;
    private @Nullable Ending ending;
    private final List<Done> log;

    private Draft(Variant variant, Appearances appearances, boolean hints) {
      this.variant = variant;
      this.appearances = appearances;
      this.hints = hints;
      bench = variant.asFound();
      left = variant.cause();
      log = new ArrayList<>();
    }

    private Draft(Visit from) {
      variant = from.variant;
      appearances = from.appearances;
      hints = from.hints;
      bench = from.bench;
      left = from.left;
      power = from.power;
      gas = from.gas;
      signal = from.signal;
      minutes = from.minutes;
      partsUnits = from.partsUnits;
      turns = from.turns;
      ending = from.ending;
      log = new ArrayList<>(from.log);
    }

    /** What a repair does not concern is left as it was: its residue shows in nothing. */
    private void mend(Repair repair) {
      minutes += repair.minutes();
      partsUnits += repair.costUnits();
      turns++;
      Cause after = left.after(repair);
      if (!after.equals(left)) {
        bench = repair.on(bench);
        left = after;
      }
    }
  }
}
