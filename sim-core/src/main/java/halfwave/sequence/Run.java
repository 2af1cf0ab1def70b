package halfwave.sequence;

import halfwave.bench.Bench;
import halfwave.bench.Condition;
import halfwave.bench.Intermittent;
import halfwave.bench.Trigger;
import halfwave.board.Board;
import halfwave.board.BoardInputs;
import halfwave.board.BoardOutputs;
import halfwave.board.BoardStep;
import halfwave.board.FlameSignal;
import halfwave.board.Ignition;
import halfwave.board.SenseFilter;
import halfwave.board.Stage;
import halfwave.board.Transition;
import halfwave.circuit.SteadyState.Failed;
import halfwave.flame.Flicker;
import halfwave.instrument.Measurement;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import halfwave.quantity.RejectedValueException;
import halfwave.sequence.Event.Subject;
import halfwave.work.Handling;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.apache.commons.math3.util.FastMath;
import org.jspecify.annotations.Nullable;

/**
 * One stretch of time on its way. At each instant, in this order: what is physical moves to it,
 * people act, what comes and goes comes or goes, the board decides.
 */
final class Run {

  private static final long SAMPLE_MILLIS = 200;

  /** A tug at a lead shakes it for so long (ms) [practice]. */
  private static final long TUG_MILLIS = 2000;

  /**
   * Time in flame after which the film on the rod is made thicker (ms): all of an hour at once, as
   * a new film is a new circuit to solve.
   */
  private static final long FILM_MILLIS = 3_600_000;

  private final SenseCurrents currents;
  private final Moment start;
  private final List<Event> events = new ArrayList<>();
  private final List<Sample> samples = new ArrayList<>();

  private Moment now;
  private Bench bench;
  private SenseCurrents.Flame flame;
  private @Nullable Hooked load;
  private BoardInputs inputs;
  private boolean changed;

  /** Whether the film on the rod has just grown. */
  private boolean grown;

  /** Until when the board stays as it is, as long as its inputs do (ms). */
  private long boardDueMillis;

  Run(SenseCurrents currents, Moment from) {
    this.currents = currents;
    start = from;
    now = from;
    bench = from.benchNow();
    load = from.hooked();
    flame = currents.of(bench, load);
    inputs = from.inputs(bench);
    boardDueMillis = from.timeMillis();
  }

  Segment until(long end, List<Act> acts) {
    int next = 0;
    while (now.timeMillis() < end) {
      int first = next;
      while (next < acts.size() && acts.get(next).timeMillis() == now.timeMillis()) {
        next++;
      }
      instant(acts.subList(first, next));
      long until = next < acts.size() ? acts.get(next).timeMillis() : end;
      pass(Math.min(until, due()));
    }
    return new Segment(start, events, samples, now);
  }

  private void instant(List<Act> acts) {
    changed = false;
    boolean moved = onGrid(Sequence.PACE_MILLIS) && !now.furnace().resting();
    if (moved) {
      pace();
    }
    acts.forEach(this::act);
    look();
    decide();
    if (changed || (moved && onGrid(SAMPLE_MILLIS))) {
      sample();
    }
  }

  private boolean onGrid(long grid) {
    return now.timeMillis() % grid == 0;
  }

  /** The next instant at which something may happen by itself. */
  private long due() {
    return now.furnace().resting()
        ? boardDueMillis
        : Math.min(
            boardDueMillis, (now.timeMillis() / Sequence.PACE_MILLIS + 1) * Sequence.PACE_MILLIS);
  }

  private void pass(long then) {
    long millis = then - now.timeMillis();
    now = now.at(then, Board.after(now.settings(), now.board(), inputs, millis));
  }

  private void pace() {
    Furnace before = now.furnace();
    Furnace after = Plant.paced(before, bench, flame, now.outputs(), now.seed(), now.timeMillis());
    tellFlame(before.litCount(), after.litCount());
    if (after.filmMillis() >= FILM_MILLIS) {
      after = after.filmed(FILM_MILLIS);
      now = now.with(withGrownFilm(now.bench()));
      grown = true;
    }
    now = now.with(now.filter(), after);
    SenseCurrent sense = sense();
    SenseFilter filter =
        now.filter()
            .after(
                now.settings().sensing(),
                sense.meanAmps() + offsetAmps(),
                sense.alternatingRmsAmps(),
                Sequence.PACE_MILLIS / 1000.0);
    boolean rests =
        filter.equals(now.filter())
            && after.equals(before.awake())
            && !now.trembles()
            && !opening();
    now = now.with(filter, rests ? after.asleep() : after);
  }

  private static Bench withGrownFilm(Bench bench) {
    Condition c = bench.condition();
    double silicon = bench.design().siliconKilogramsPerCubicMeter();
    Bench filmed = bench.with(c.withRodCoat(c.rodCoat().grown(silicon, FILM_MILLIS / 1000.0)));
    try {
      Playback.everyState(filmed);
      return filmed;
    } catch (RejectedValueException e) {
      // with what comes and goes it would be thicker than the model can say
      return bench;
    }
  }

  private boolean opening() {
    Hooked hooked = now.hooked();
    return hooked != null && hooked.opening();
  }

  /** What the amplifier adds, as long as it has power. */
  private double offsetAmps() {
    return inputs.power() ? bench.condition().appliance().inputOffsetAmps() : 0;
  }

  /** The current towards the rod just now. */
  private SenseCurrent sense() {
    Furnace f = now.furnace();
    boolean blind =
        now.outputs().spark() && now.bench().design().ignition() == Ignition.SPARK_AND_SENSE;
    if (!inputs.power() || blind) {
      return SenseCurrent.NONE;
    }
    if (f.growthRatio() == 0) {
      return flame.dark();
    }
    double flicker =
        FastMath.exp(f.flickerRatio() - 0.5 * Flicker.SOURCE_RATIO * Flicker.SOURCE_RATIO);
    return flame.at(f.rodKelvin(), f.growthRatio() * flicker);
  }

  private void act(Act act) {
    Deed deed = act.deed();
    if (deed instanceof Deed.Call call) {
      now = now.with(now.supply(), call.on(), now.damp());
    } else if (deed instanceof Deed.Supply supply) {
      now = now.with(supply.on(), now.call(), now.damp());
    } else if (deed instanceof Deed.Damp damp) {
      now = now.with(now.supply(), now.call(), damp.on());
    } else if (deed instanceof Deed.Touch) {
      now = now.with(now.furnace().shaken(TUG_MILLIS));
    } else if (deed instanceof Deed.TakeOff) {
      now = now.with((Hooked) null);
    } else if (deed instanceof Deed.HookOn hook) {
      hookOn(hook);
      return;
    } else if (deed instanceof Deed.Mishandle wrong) {
      mishandle(wrong.handling());
      return;
    } else {
      now = now.with(Playback.done(now.bench(), deed));
    }
    tell(Subject.ACT, Deeds.said(deed));
  }

  private void mishandle(Handling handling) {
    Bench after = Playback.done(now.bench(), new Deed.Mishandle(handling));
    boolean changes = !after.equals(now.bench());
    now = now.with(after);
    tell(Subject.ACT, Deeds.said(new Deed.Mishandle(handling)));
    if (changes) {
      tell(
          Subject.ACT,
          handling
              .trigger()
              .map(
                  t ->
                      Message.of(
                          MessageKey.ACT_LURKS,
                          Argument.name(t),
                          Argument.nested(Changes.named(handling.change()))))
              .orElseGet(() -> Changes.said(handling.change())));
    }
  }

  /**
   * What a wrong use does to the meter is done at once; what it does to the board takes its time.
   */
  private void hookOn(Deed.HookOn hook) {
    Hooked hooked =
        Hooked.at(now.timeMillis(), hook.meter(), hook.function(), hook.hookUp(), now.hooked());
    Measurement measured = MeterDisplay.of(now.with(hooked));
    now = now.with(hooked.with(measured.meter()));
    tell(Subject.ACT, Deeds.said(hook));
    measured.cautions().forEach(caution -> tell(Subject.ACT, caution));
  }

  /** Sees to it that bench and inputs are those of this instant. */
  private void look() {
    Hooked hooked = now.hooked();
    if (hooked != null
        && hooked.opening()
        && now.timeMillis() >= hooked.sinceMillis() + Hooked.OPENING_MILLIS) {
      now = now.with(hooked.inPlace());
      tell(Subject.ACT, MessageKey.ACT_IN_SERIES);
    }
    boolean rewired = !Objects.equals(now.hooked(), load);
    Set<Trigger> there = now.triggersNow();
    if (!there.equals(now.triggers()) || changed || rewired || grown) {
      grown = false;
      tellFaults(now.triggers(), there);
      now = now.with(there);
      Bench under = now.benchNow();
      if (!under.equals(bench) || rewired) {
        bench = under;
        load = now.hooked();
        flame = currents.of(bench, load);
        tellUnsolved(flame.dark().unsolved());
        now = now.with(now.furnace().awake());
      }
    }
    BoardInputs seen = now.inputs(bench);
    if (!seen.equals(inputs)) {
      tellSignal(inputs.signal(), seen.signal());
      inputs = seen;
      boardDueMillis = now.timeMillis();
      now = now.with(now.furnace().awake());
    }
  }

  private void decide() {
    if (now.timeMillis() < boardDueMillis) {
      return;
    }
    BoardStep step = Board.settle(now.settings(), now.board(), inputs);
    for (Transition transition : step.transitions()) {
      changed = true;
      events.add(new Event(now.timeMillis(), Subject.BOARD, transition.cause(), transition));
    }
    BoardOutputs outputs = Board.outputs(now.settings(), step.state());
    if (!outputs.equals(now.outputs())) {
      if (step.transitions().isEmpty()) {
        tellOutputs(now.outputs(), outputs);
      }
      changed = true;
      now = now.with(now.furnace().awake());
    }
    now = now.with(step.state(), outputs);
    long rest = Board.dueMillis(now.settings(), now.board(), inputs);
    boardDueMillis = rest == Board.NEVER ? Long.MAX_VALUE : now.timeMillis() + rest;
  }

  /** What changes though the stage does not. */
  private void tellOutputs(BoardOutputs before, BoardOutputs after) {
    if (before.igniter() && !after.igniter()) {
      tell(Subject.IGNITER, MessageKey.IGNITER_OFF);
    }
    if (before.spark() && !after.spark()) {
      tell(Subject.IGNITER, MessageKey.SPARK_OFF);
    }
    if (before.inducer() && !after.inducer()) {
      tell(Subject.BOARD, MessageKey.BOARD_LOCKOUT_PURGED);
    }
  }

  /** What the board makes of its signal, where that means something to a person. */
  private void tellSignal(FlameSignal before, FlameSignal after) {
    boolean runs = now.board().stage() == Stage.RUN;
    if (after == FlameSignal.SHORTED) {
      tell(
          Subject.BOARD,
          MessageKey.SIGNAL_SHORTED,
          Argument.quantity(now.filter().alternatingRmsAmps(), Dimension.CURRENT));
    } else if (runs && before == FlameSignal.GOOD && after == FlameSignal.WEAK) {
      tell(
          Subject.BOARD,
          MessageKey.SIGNAL_WEAK,
          Argument.quantity(now.settings().sensing().warningAmps(), Dimension.CURRENT));
    } else if (runs && before == FlameSignal.WEAK && after == FlameSignal.GOOD) {
      tell(Subject.BOARD, MessageKey.SIGNAL_GOOD);
    }
  }

  private void tellFaults(Set<Trigger> before, Set<Trigger> after) {
    for (Intermittent i : now.bench().condition().appliance().intermittents()) {
      boolean comes = after.contains(i.trigger());
      if (comes != before.contains(i.trigger())) {
        tell(
            Subject.FAULT,
            comes ? MessageKey.FAULT_COMES : MessageKey.FAULT_GOES,
            Argument.name(i.trigger()),
            Argument.nested(Changes.named(i.change())));
      }
    }
  }

  private void tellFlame(int before, int after) {
    int count = now.bench().design().burnerCount();
    if (before == 0 && after > 0) {
      tell(Subject.FLAME, MessageKey.FLAME_LIGHTS);
    }
    if (count > 1 && after == count && before < count) {
      tell(Subject.FLAME, MessageKey.FLAME_ARRIVES, Argument.count(count));
    }
    if (before > 0 && after == 0) {
      tell(Subject.FLAME, MessageKey.FLAME_GOES_OUT);
    }
  }

  private void tellUnsolved(@Nullable Failed failed) {
    if (failed != null) {
      tell(
          Subject.FAULT,
          MessageKey.ACCOUNT_UNSOLVED,
          Argument.name(failed.failure()),
          Argument.name(failed.part()));
    }
  }

  private void tell(Subject subject, MessageKey key, Argument... arguments) {
    tell(subject, Message.of(key, arguments));
  }

  private void tell(Subject subject, Message message) {
    changed = true;
    events.add(new Event(now.timeMillis(), subject, message, null));
  }

  private void sample() {
    Furnace f = now.furnace();
    samples.add(
        new Sample(
            now.timeMillis(),
            now.board().stage(),
            Board.code(now.board(), inputs.signal()),
            now.outputs(),
            inputs.signal(),
            now.filter().meanAmps(),
            sense(),
            f.litCount(),
            f.growthRatio(),
            f.rodKelvin(),
            f.igniterKelvin()));
  }
}
