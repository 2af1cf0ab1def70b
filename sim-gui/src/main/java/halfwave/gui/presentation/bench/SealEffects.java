package halfwave.gui.presentation.bench;

import halfwave.bench.Bench;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import halfwave.quantity.RejectedValueException;
import halfwave.sequence.Moment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** What becomes of a bench that is hidden from a class. */
final class SealEffects {

  /** A signal that differs by less could be another healthy furnace (1). */
  private static final double NOTICED_RATIO = 0.2;

  /** So many kinds are tried until one is noticed. */
  private static final int MOST_TRIES = 12;

  private final Effects effects;

  SealEffects(Effects effects) {
    this.effects = effects;
  }

  State after(State state, Intent.Sealing intent) {
    Seal seal = state.seal();
    if (intent instanceof Intent.Hide) {
      return seal == null ? hidden(state) : state;
    } else if (seal == null) {
      return state;
    } else if (intent instanceof Intent.Draw draw) {
      return seal.closed() ? drawn(state, seal, draw.seed()) : state;
    } else if (intent instanceof Intent.Reveal reveal) {
      return seal.closed() ? revealed(state, seal, reveal.answer()) : state;
    } else if (intent instanceof Intent.LookBack back) {
      return lookedBack(state, seal, back.step());
    }
    return seal.before();
  }

  private State hidden(State state) {
    Bench known = state.paper().bench();
    Seal seal = new Seal(null, known, effects.flame(known), state, null);
    return fresh(state, state.standing().with(Recording.EMPTY), seal);
  }

  /** Nothing is told of what was done before, and undo does not lead there. */
  private static State fresh(State state, Standing standing, Seal seal) {
    return state
        .with(standing.with(List.of()), state.readout())
        .with(History.EMPTY)
        .with(Effects.own(standing.moment()))
        .showing(null)
        .with(seal);
  }

  private State drawn(State state, Seal seal, long seed) {
    State healthy = running(state, seal.known()).orElse(state);
    List<FaultKind> kinds = new ArrayList<>(Arrays.asList(FaultKind.values()));
    Collections.shuffle(kinds, new Random(seed));
    for (FaultKind kind : kinds.subList(0, Math.min(MOST_TRIES, kinds.size()))) {
      Fault fault = Fault.typical(kind);
      Optional<State> found = onBench(fault, seal.known()).flatMap(b -> running(state, b));
      if (found.isPresent() && noticed(healthy, found.get())) {
        Seal drawn = new Seal(fault, seal.known(), seal.flame(), seal.before(), null);
        State there = found.get().with(state.clock());
        return fresh(there, there.standing(), drawn);
      }
    }
    return state;
  }

  private static Optional<Bench> onBench(Fault fault, Bench bench) {
    try {
      return Optional.of(fault.on(bench));
    } catch (RejectedValueException e) {
      return Optional.empty();
    }
  }

  private Optional<State> running(State state, Bench bench) {
    try {
      return Optional.of(
          effects.running(new Intent.Open(bench, state.moment().settings(), null), false));
    } catch (RejectedValueException e) {
      return Optional.empty();
    }
  }

  private static boolean noticed(State healthy, State other) {
    Moment h = healthy.moment();
    Moment o = other.moment();
    double change = Math.abs(o.filter().meanAmps() - h.filter().meanAmps());
    return o.board().stage() != h.board().stage()
        || change > NOTICED_RATIO * Math.abs(h.filter().meanAmps());
  }

  private static State revealed(State state, Seal seal, @Nullable FaultKind answer) {
    List<PathStep> path = PathStep.of(state);
    Bench hidden = seal.drawn() == null ? seal.before().moment().bench() : first(state);
    var opening = new Seal.Opening(answer, hidden, path, path.size());
    return state.with(new State.Clock(false, 1)).with(seal.with(opening));
  }

  /** The bench before anything was done to it. */
  private static Bench first(State state) {
    List<History.Entry> done = state.history().done();
    Standing first = done.isEmpty() ? state.standing() : done.get(0).standing();
    return first.moment().bench();
  }

  private State lookedBack(State state, Seal seal, int step) {
    Seal.Opening opening = seal.opening();
    if (opening == null) {
      return state;
    }
    int at = Math.max(0, Math.min(opening.path().size(), step));
    List<PathStep> path = opening.path();
    Standing there =
        at < path.size()
            ? path.get(at).outcome()
            : path.isEmpty() ? state.standing() : path.get(path.size() - 1).outcome();
    var moved = new Seal.Opening(opening.answer(), opening.hidden(), path, at);
    return effects.at(state, there).with(new State.Clock(false, 1)).with(seal.with(moved));
  }
}
