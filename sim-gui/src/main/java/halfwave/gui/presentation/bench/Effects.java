package halfwave.gui.presentation.bench;

import halfwave.bench.Bench;
import halfwave.bench.BenchFlame;
import halfwave.bench.ProbeWire;
import halfwave.bench.Stages;
import halfwave.board.Ignition;
import halfwave.instrument.HookUp;
import halfwave.instrument.LeadEnd;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.ShippedMeters;
import halfwave.lesson.Stretch;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.RejectedValueException;
import halfwave.sequence.Act;
import halfwave.sequence.Deed;
import halfwave.sequence.Event;
import halfwave.sequence.Hooked;
import halfwave.sequence.Moment;
import halfwave.sequence.Playback;
import halfwave.sequence.Scenes;
import halfwave.sequence.Segment;
import halfwave.sequence.Sequence;
import halfwave.sequence.Subjects;
import halfwave.work.Caution;
import halfwave.work.Handling;
import halfwave.work.Look;
import halfwave.work.Repair;
import halfwave.work.Work;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What intents make of a state. Remembers currents and fields that were computed, and belongs to
 * one thread; a fresh one gives the same answers.
 */
final class Effects {

  /** A furnace is up and running so long after power came (ms). */
  private static final long UP_MILLIS = 150_000;

  private static final long CALL_MILLIS = 5000;

  /** An act takes no time, but what happens at its instant has to have happened (ms). */
  static final long INSTANT_MILLIS = 1;

  /** So far a step looks for the next thing to happen (ms). */
  private static final long FAR_MILLIS = 600_000;

  private static final long NEAR_MILLIS = 100;
  private static final long SEED = 1;

  private final Sequence sequence = new Sequence();
  private final Stages stages = new Stages();
  private final SealEffects seals = new SealEffects(this);

  /** A bench on which the furnace has been running for a while, with a meter in the sense lead. */
  State opened(Intent.Open open) {
    return running(open, true);
  }

  /** A furnace that was called for heat two minutes ago. */
  State running(Intent.Open open, boolean metered) {
    Meter meter = Meter.fresh(ShippedMeters.service());
    Moment cold = Moment.cold(open.bench(), open.board(), SEED);
    List<Act> acts = new ArrayList<>();
    // a meter on an electrode that sparks would not live to see the flame
    if (metered && open.bench().design().ignition() != Ignition.SPARK_AND_SENSE) {
      HookUp series = new HookUp.InSenseLead(LeadEnd.BOARD, true);
      acts.add(new Act(0, new Deed.HookOn(meter, MeterFunction.DC_MICROAMPS, series)));
    }
    acts.add(new Act(0, new Deed.Supply(true)));
    acts.add(new Act(CALL_MILLIS, new Deed.Call(true)));
    Segment start = sequence.advance(cold, UP_MILLIS, acts);
    Standing standing =
        new Standing(start.end(), meter, null, Recording.EMPTY.then(start), List.of())
            .at(start.end());
    return new State(
        standing,
        Readout.of(stages, start.end()),
        History.EMPTY,
        new State.Clock(true, 1),
        new State.Paper(open.file(), open.bench()),
        null,
        null,
        null);
  }

  /** The state after an intent. */
  State after(State state, Intent intent) {
    if (intent instanceof Intent.Pass pass) {
      long millis = Math.round(pass.wallMillis() * state.clock().timesReal());
      return state.clock().running() && millis > 0 ? passed(state, millis) : state;
    } else if (intent instanceof Intent.Play play) {
      return state.with(new State.Clock(play.on(), state.clock().timesReal()));
    } else if (intent instanceof Intent.Speed speed) {
      double within = Math.max(0.1, Math.min(1000, speed.timesReal()));
      return state.with(new State.Clock(state.clock().running(), within));
    } else if (intent instanceof Intent.StepOn step) {
      State standing = state.with(new State.Clock(false, state.clock().timesReal()));
      Long millis = step.millis();
      return millis == null ? toNextEvent(standing) : passed(standing, millis);
    } else if (intent instanceof Intent.Act act) {
      return acted(state, act.deeds(), act.gesture());
    } else if (intent instanceof Intent.Measure measure) {
      return measured(state, measure.function(), measure.placing());
    } else if (intent instanceof Intent.Turn turn) {
      return turned(state, turn.function());
    } else if (intent instanceof Intent.Lead lead) {
      MeterFunction dial = state.standing().dial();
      return measured(state, dial == null ? lead.usual() : dial, lead.placing());
    } else if (intent instanceof Intent.Labor labor) {
      return worked(state, labor.work());
    } else if (intent instanceof Intent.Undo) {
      return state.history().done().isEmpty() ? state : undone(state);
    } else if (intent instanceof Intent.Redo) {
      return state.history().undone().isEmpty() ? state : redone(state);
    } else if (intent instanceof Intent.Open open) {
      return opened(open).with(new State.Clock(true, state.clock().timesReal()));
    } else if (intent instanceof Intent.BringBack back) {
      State.Paper paper = new State.Paper(back.open().file(), back.saved());
      return after(state, back.open()).with(paper);
    } else if (intent instanceof Intent.Enter enter) {
      return entered(state, enter.moment());
    } else if (intent instanceof Intent.Show show) {
      return shown(state, show.stretch());
    } else if (intent instanceof Intent.Restore restore) {
      return restore.state();
    } else if (intent instanceof Intent.Saved saved) {
      return state.with(new State.Paper(saved.file(), saved.bench()));
    } else if (intent instanceof Intent.HandOver handOver) {
      return handedOver(state, handOver.meter());
    } else if (intent instanceof Intent.Sealing sealing) {
      return seals.after(state, sealing);
    }
    throw new IllegalStateException("no effect for " + intent);
  }

  private State passed(State state, long millis) {
    Stretch showing = state.showing();
    if (showing == null) {
      return at(state, later(state.standing(), millis, List.of()));
    }
    long now = state.moment().timeMillis();
    long until = Math.min(now + millis, showing.untilMillis());
    List<Act> due =
        showing.acts().stream()
            .filter(act -> act.timeMillis() >= now && act.timeMillis() < until)
            .toList();
    State played = now < until ? at(state, later(state.standing(), until - now, due)) : state;
    State after = played.with(own(played.moment()));
    return until < showing.untilMillis()
        ? after
        : after.with(new State.Clock(false, 1)).showing(null);
  }

  private State entered(State state, Moment moment) {
    Standing before = state.standing();
    Standing there =
        new Standing(moment, before.meter(), before.dial(), told(state, moment), List.of());
    // a demonstration is no place for a hidden fault: what was sealed ends
    return at(state.own(), there.at(moment))
        .with((Seal) null)
        .with(History.EMPTY)
        .with(new State.Clock(false, 1))
        .with(own(moment))
        .showing(null);
  }

  /**
   * What is told of the past at a moment of a demonstration. The rest of a play that was cut short
   * belongs to it; where time is missing, or the bench is another one, nothing is told.
   */
  private Recording told(State state, Moment moment) {
    if (!moment.bench().name().equals(state.moment().bench().name())) {
      return Recording.EMPTY;
    }
    State end = state;
    while (end.showing() != null && end.moment().timeMillis() < moment.timeMillis()) {
      end = passed(end, Playback.SLICE_MILLIS);
    }
    if (end.moment().equals(moment)) {
      return end.recording();
    }
    return state.moment().timeMillis() == moment.timeMillis() ? state.recording() : Recording.EMPTY;
  }

  /** What a demonstration does to its own bench is nobody's unsaved work. */
  static State.Paper own(Moment moment) {
    return new State.Paper(null, moment.bench());
  }

  /** The flame that a bench has when it burns. */
  BenchFlame flame(Bench bench) {
    return stages.flame(bench);
  }

  private State shown(State state, Stretch stretch) {
    State there = state.moment().equals(stretch.from()) ? state : entered(state, stretch.from());
    return there.with(new State.Clock(true, stretch.speedRatio())).showing(stretch);
  }

  private Standing later(Standing standing, long millis, List<Act> acts) {
    Moment now = standing.moment();
    Segment segment = sequence.advance(now, now.timeMillis() + millis, acts);
    return standing.with(standing.recording().then(segment)).at(segment.end());
  }

  /** To what whoever stands before the furnace sees next. */
  private State toNextEvent(State state) {
    Standing now = state.standing();
    Seen before = Seen.of(now.moment());
    long end = now.moment().timeMillis() + FAR_MILLIS;
    while (now.moment().timeMillis() < end && Seen.of(now.moment()).equals(before)) {
      now = later(now, NEAR_MILLIS, List.of());
    }
    return at(state, now);
  }

  private State acted(State state, List<Deed> deeds, long gesture) {
    History history = state.history();
    boolean goesOn = history.goesOn(gesture);
    Standing before = state.standing();
    int told = before.recording().events().size();
    if (goesOn) {
      told = history.last().standing().recording().events().size();
      before = before.with(before.recording().withoutActsFrom(told));
    }
    Done done;
    try {
      done = done(before, deeds);
    } catch (RejectedValueException e) {
      return refused(state, e);
    }
    Message said = said(done.after().recording(), told);
    History.Entry entry = new History.Entry(said, state.standing(), gesture, done.acts());
    return at(state, done.after())
        .with(goesOn ? history.longer(said, done.acts()) : history.after(entry));
  }

  /**
   * Deeds that were done.
   *
   * @param acts the deeds with their time
   * @param after what came of them
   */
  private record Done(List<Act> acts, Standing after) {}

  /**
   * Does deeds that belong together. On the way from one place to another the rod may meet metal by
   * one order of its movements and not by the other.
   */
  private Done done(Standing before, List<Deed> deeds) {
    long time = before.moment().timeMillis();
    List<Act> acts = new ArrayList<>();
    deeds.forEach(deed -> acts.add(new Act(time, deed)));
    try {
      return new Done(acts, later(before, INSTANT_MILLIS, acts));
    } catch (RejectedValueException e) {
      if (acts.size() < 2) {
        throw e;
      }
      Collections.reverse(acts);
      return new Done(acts, later(before, INSTANT_MILLIS, acts));
    }
  }

  private static Message said(Recording recording, int from) {
    List<Event> events = recording.events();
    return events.subList(Math.min(from, events.size()), events.size()).stream()
        .filter(e -> e.subject() == Event.Subject.ACT)
        .map(Event::message)
        .findFirst()
        .orElse(Message.of(MessageKey.ACT_BECOMES));
  }

  private State measured(State state, MeterFunction function, Placing placing) {
    HookUp hookUp =
        placing instanceof Placing.InFlame wire
            ? Subjects.wire(state.moment(), ProbeWire.IN_ROOT, wire.other())
            : ((Placing.At) placing).hookUp();
    Deed hook = new Deed.HookOn(state.standing().meter(), function, hookUp);
    return acted(state, List.of(hook), 0);
  }

  /** Beside the bench a dial turns and nothing else happens. */
  private State turned(State state, MeterFunction function) {
    Hooked on = state.moment().hooked();
    return on == null
        ? state.with(state.standing().with(function), state.readout())
        : measured(state, function, new Placing.At(on.hookUp()));
  }

  private State worked(State state, Work work) {
    Moment now = state.moment();
    Enum<?> found = work instanceof Look look ? look.at(Scenes.of(stages, now)) : null;
    State after = state;
    if (work instanceof Repair repair) {
      after = acted(state, List.of(new Deed.PutRight(repair)), 0);
    } else if (work instanceof Handling handling) {
      after = acted(state, List.of(new Deed.Mishandle(handling)), 0);
    }
    return after.refusal() == null ? noted(after, work, found, WorkDone.danger(work, now)) : after;
  }

  private static State noted(
      State state, Work work, @Nullable Enum<?> found, @Nullable Caution danger) {
    List<WorkDone> longer = new ArrayList<>(state.standing().work());
    longer.add(new WorkDone(state.moment().timeMillis(), work, found, danger));
    return state.with(state.standing().with(longer), state.readout());
  }

  private static State refused(State state, RejectedValueException reason) {
    Refusal last = state.refusal();
    return state.with(new Refusal(last == null ? 1 : last.number() + 1, reason));
  }

  private State undone(State state) {
    History.Entry last = state.history().last();
    History.Entry present = last.facing(state.standing());
    return at(state, last.standing()).with(state.history().undoneTo(present));
  }

  private State redone(State state) {
    History.Entry next = state.history().lastUndone();
    History.Entry present = next.facing(state.standing());
    return at(state, next.standing()).with(state.history().redoneFrom(present));
  }

  /** A meter that is on stays on: the other takes its place. */
  private State handedOver(State state, Meter meter) {
    Hooked on = state.moment().hooked();
    return on == null
        ? state.with(state.standing().with(meter), state.readout())
        : acted(state, List.of(new Deed.HookOn(meter, on.function(), on.hookUp())), 0);
  }

  State at(State state, Standing standing) {
    return state.with(standing, Readout.of(stages, standing.moment()));
  }
}
