package halfwave.gui.presentation.charts;

import halfwave.bench.Bench;
import halfwave.bench.Parameter;
import halfwave.bench.Stages;
import halfwave.explain.Sweep;
import halfwave.explain.SweepRow.Taken;
import halfwave.gui.presentation.Inquiry;
import halfwave.gui.presentation.bench.State;
import halfwave.instrument.MeterReading;
import halfwave.instrument.Microammeter;
import halfwave.quantity.RejectedValueException;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the meter would show if one number of the bench were another. Belongs to one thread; keeps
 * the last curves, so that turning that very number moves only the mark on them.
 */
public final class WhatIf implements Inquiry.Worker<WhatIf.Question, WhatIf.Answer> {

  /**
   * What is asked.
   *
   * @param bench the present bench
   * @param healthy the healthy bench
   * @param parameter the number
   * @param full whether all the way it can be turned
   */
  public record Question(Bench bench, Bench healthy, Parameter parameter, boolean full) {

    /** The question of a state. */
    public static Question of(State state, Parameter parameter, boolean full) {
      return new Question(state.moment().benchNow(), Healthy.bench(state), parameter, full);
    }

    WhatIfRange range() {
      return WhatIfRange.of(parameter, bench, healthy, full);
    }
  }

  /**
   * What is answered.
   *
   * @param question the question
   * @param sweep the present bench through the range
   * @param healthy the healthy bench through the same, or null where that is not known
   * @param microamps the reading as the bench is, or null where there is none
   */
  public record Answer(
      Question question, Sweep sweep, @Nullable Sweep healthy, @Nullable Taken microamps) {}

  /** Each pass has twice the steps of the one before. */
  private static final List<Integer> PASSES = List.of(9, 17, 33, 65);

  /** What a pair of curves depends on. */
  private record Key(Bench bench, Parameter parameter, WhatIfRange range) {}

  private @Nullable Key known;
  private @Nullable Sweep sweep;
  private @Nullable Sweep ghost;

  @Override
  public void answer(Question question, Inquiry.Hearing<Answer> hearing) {
    Key key = key(question);
    Taken here = here(question.bench);
    if (!key.equals(known)) {
      known = null;
      sweep = null;
      ghost = null;
      int last = PASSES.get(PASSES.size() - 1);
      int all = last + PASSES.stream().mapToInt(n -> n).sum();
      int done = 0;
      for (int count : PASSES) {
        Optional<Sweep> finer = swept(question.bench, question, count, done, all, hearing);
        if (finer.isEmpty()) {
          return;
        }
        sweep = finer.get();
        hearing.tell(new Answer(question, sweep, null, here));
        done += count;
      }
      // the ghost is not hurried: it comes once, when the curve is there
      ghost =
          key.bench.equals(question.healthy)
              ? sweep
              : swept(question.healthy, question, last, done, all, hearing).orElse(null);
      if (ghost == null) {
        return;
      }
      known = key;
    }
    if (sweep != null) {
      hearing.tell(new Answer(question, sweep, ghost, here));
    }
  }

  private static Key key(Question q) {
    Bench neutral;
    try {
      neutral = q.parameter.with(q.bench, q.parameter.of(q.healthy));
    } catch (RejectedValueException impossible) {
      // a bent rod may not fit where a straight one does
      neutral = q.bench;
    }
    return new Key(neutral, q.parameter, q.range());
  }

  private static Optional<Sweep> swept(
      Bench bench, Question q, int count, int before, int all, Inquiry.Hearing<Answer> hearing) {
    return Sweep.of(
        bench,
        List.of(q.range().axis(q.parameter, count)),
        (done, of) -> {
          hearing.done((double) (before + done) / all);
          return hearing.wanted();
        });
  }

  /** As a meter in the opened sense lead reads it; the third number of a row is not asked for. */
  private static @Nullable Taken here(Bench bench) {
    MeterReading reading = Microammeter.SERVICE.read(new Stages().circuit(bench));
    return reading instanceof MeterReading.Amps amps
        ? new Taken(amps.meanAmps(), amps.alternatingRmsAmps(), Double.NaN)
        : null;
  }
}
