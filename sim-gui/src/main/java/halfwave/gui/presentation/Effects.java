package halfwave.gui.presentation;

import halfwave.bench.Stages;
import halfwave.board.Ignition;
import halfwave.instrument.HookUp;
import halfwave.instrument.LeadEnd;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.ShippedMeters;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.RejectedValueException;
import halfwave.sequence.Act;
import halfwave.sequence.Deed;
import halfwave.sequence.Event;
import halfwave.sequence.Hooked;
import halfwave.sequence.Moment;
import halfwave.sequence.Segment;
import halfwave.sequence.Sequence;
import java.util.ArrayList;
import java.util.List;

/**
 * What intents make of a state. Remembers currents and fields that were computed, and belongs to
 * one thread; a fresh one gives the same answers.
 */
final class Effects {

  /** A furnace is up and running so long after a call (ms). */
  private static final long UP_MILLIS = 150_000;

  /** An act takes no time, but what happens at its instant has to have happened (ms). */
  private static final long INSTANT_MILLIS = 1;

  /** So far a step looks for the next thing to happen (ms). */
  private static final long FAR_MILLIS = 600_000;

  private static final long NEAR_MILLIS = 100;
  private static final long SEED = 1;

  private final Sequence sequence = new Sequence();
  private final Stages stages = new Stages();

  /** A bench on which the furnace has been running for a while, with a meter in the sense lead. */
  State opened(Intent.Open open) {
    Meter meter = Meter.fresh(ShippedMeters.service());
    Moment cold = Moment.cold(open.bench(), open.board(), SEED);
    List<Act> acts = new ArrayList<>();
    // a meter on an electrode that sparks would not live to see the flame
    if (open.bench().design().ignition() != Ignition.SPARK_AND_SENSE) {
      HookUp series = new HookUp.InSenseLead(LeadEnd.BOARD, true);
      acts.add(new Act(0, new Deed.HookOn(meter, MeterFunction.DC_MICROAMPS, series)));
    }
    acts.add(new Act(0, new Deed.Supply(true)));
    acts.add(new Act(5000, new Deed.Call(true)));
    Segment start = sequence.advance(cold, UP_MILLIS, acts);
    return new State(
        start.end(),
        Readout.of(stages, start.end()),
        Recording.EMPTY.then(start),
        History.EMPTY,
        inHand(start.end(), meter),
        true,
        1,
        open.file(),
        open.bench(),
        null);
  }

  /** The state after an intent. */
  State after(State state, Intent intent) {
    if (intent instanceof Intent.Pass pass) {
      long millis = Math.round(pass.wallMillis() * state.timesReal());
      return state.playing() && millis > 0 ? passed(state, millis) : state;
    } else if (intent instanceof Intent.Play play) {
      return state.with(d -> d.playing = play.on());
    } else if (intent instanceof Intent.Speed speed) {
      return state.with(d -> d.timesReal = Math.max(0.1, Math.min(1000, speed.timesReal())));
    } else if (intent instanceof Intent.StepOn step) {
      State standing = state.with(d -> d.playing = false);
      Long millis = step.millis();
      return millis == null ? toNextEvent(standing) : passed(standing, millis);
    } else if (intent instanceof Intent.Act act) {
      return acted(state, act);
    } else if (intent instanceof Intent.Undo) {
      return state.history().done().isEmpty() ? state : undone(state);
    } else if (intent instanceof Intent.Redo) {
      return state.history().undone().isEmpty() ? state : redone(state);
    } else if (intent instanceof Intent.Open open) {
      return opened(open).with(d -> d.timesReal = state.timesReal());
    } else if (intent instanceof Intent.Enter enter) {
      return at(
          state.with(
              d -> {
                d.recording = Recording.EMPTY;
                d.history = History.EMPTY;
                d.meter = inHand(enter.moment(), state.meter());
              }),
          enter.moment());
    } else if (intent instanceof Intent.Saved saved) {
      return state.with(
          d -> {
            d.saved = saved.bench();
            d.file = saved.file();
          });
    } else if (intent instanceof Intent.HandOver handOver) {
      return handedOver(state, handOver.meter());
    }
    throw new IllegalStateException("no effect for " + intent);
  }

  private State passed(State state, long millis) {
    Moment now = state.moment();
    Segment segment = sequence.advance(now, now.timeMillis() + millis, List.of());
    return at(grown(state, segment), segment.end());
  }

  private State toNextEvent(State state) {
    State now = state;
    int before = state.recording().events().size();
    long end = state.moment().timeMillis() + FAR_MILLIS;
    while (now.moment().timeMillis() < end) {
      Segment segment =
          sequence.advance(now.moment(), now.moment().timeMillis() + NEAR_MILLIS, List.of());
      now = grown(now, segment).with(d -> d.moment = segment.end());
      if (now.recording().events().size() != before) {
        break;
      }
    }
    return at(now, now.moment());
  }

  private State acted(State state, Intent.Act act) {
    Moment before = state.moment();
    long time = before.timeMillis();
    List<Act> acts = act.deeds().stream().map(deed -> new Act(time, deed)).toList();
    Segment segment;
    try {
      segment = sequence.advance(before, time + INSTANT_MILLIS, acts);
    } catch (RejectedValueException e) {
      return refused(state, e);
    }
    Message said =
        segment.events().stream()
            .filter(e -> e.subject() == Event.Subject.ACT)
            .map(Event::message)
            .findFirst()
            .orElse(Message.of(MessageKey.ACT_BECOMES));
    boolean goesOn = act.gesture() != 0 && state.history().goesOn(act.gesture());
    Recording told =
        goesOn
            ? state.recording().withoutActsFrom(state.history().last().recording().events().size())
            : state.recording();
    History history =
        goesOn
            ? state.history().renamed(said)
            : state
                .history()
                .after(
                    new History.Entry(
                        said, before, state.meter(), state.recording(), act.gesture()));
    return at(
        state.with(
            d -> {
              d.recording = told.then(segment);
              d.history = history;
              d.meter = inHand(segment.end(), state.meter());
              d.refusal = null;
            }),
        segment.end());
  }

  private static State refused(State state, RejectedValueException reason) {
    Refusal last = state.refusal();
    long number = last == null ? 1 : last.number() + 1;
    return state.with(d -> d.refusal = new Refusal(number, reason));
  }

  private State undone(State state) {
    History.Entry last = state.history().last();
    return returned(
        state, last, state.history().undoneTo(presentAs(state, last.said(), last.gesture())));
  }

  private State redone(State state) {
    History.Entry next = state.history().lastUndone();
    return returned(
        state, next, state.history().redoneFrom(presentAs(state, next.said(), next.gesture())));
  }

  private static History.Entry presentAs(State state, Message said, long gesture) {
    return new History.Entry(said, state.moment(), state.meter(), state.recording(), gesture);
  }

  private State returned(State state, History.Entry to, History history) {
    return at(
        state.with(
            d -> {
              d.recording = to.recording();
              d.history = history;
              d.meter = to.meter();
              d.refusal = null;
            }),
        to.moment());
  }

  /** A meter that is on stays on: the other takes its place. */
  private State handedOver(State state, Meter meter) {
    Hooked on = state.moment().hooked();
    if (on == null) {
      return state.with(d -> d.meter = meter);
    }
    Deed swap = new Deed.HookOn(meter, on.function(), on.hookUp());
    return acted(state, new Intent.Act(List.of(swap), 0));
  }

  private static State grown(State state, Segment segment) {
    return state.with(
        d -> {
          d.recording = state.recording().then(segment);
          d.meter = inHand(segment.end(), state.meter());
        });
  }

  private State at(State state, Moment moment) {
    return state.with(
        d -> {
          d.moment = moment;
          d.readout = Readout.of(stages, moment);
        });
  }

  private static Meter inHand(Moment moment, Meter before) {
    Hooked hooked = moment.hooked();
    return hooked == null ? before : hooked.meter();
  }
}
