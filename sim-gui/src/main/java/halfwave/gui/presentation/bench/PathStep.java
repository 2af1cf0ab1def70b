package halfwave.gui.presentation.bench;

import halfwave.message.Message;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something that was done on the way to a diagnosis.
 *
 * @param timeMillis when, on the clock of the bench (ms)
 * @param said what was done, or null: it is work
 * @param work what was looked at, repaired or mishandled, or null
 * @param outcome the bench just before the next step
 */
public record PathStep(
    long timeMillis, @Nullable Message said, @Nullable WorkDone work, Standing outcome) {

  /** Everything that was done up to a state, in order; repairs and mishaps are told once. */
  static List<PathStep> of(State state) {
    List<PathStep> path = new ArrayList<>();
    History history = state.history();
    List<History.Entry> done = history.done();
    List<WorkDone> work = state.standing().work();
    for (int k = 0; k < done.size(); k++) {
      long time = done.get(k).standing().moment().timeMillis();
      boolean told = work.stream().anyMatch(w -> acted(w, time));
      if (!told) {
        path.add(
            new PathStep(time, done.get(k).said(), null, history.outcome(k, state.standing())));
      }
    }
    for (WorkDone w : work) {
      path.add(
          new PathStep(
              w.timeMillis(),
              null,
              w,
              history.outcome(last(done, w.timeMillis()), state.standing())));
    }
    path.sort(Comparator.comparingLong(PathStep::timeMillis));
    return path;
  }

  /** A repair is an act of an instant, and noted at the end of it. */
  private static boolean acted(WorkDone work, long millis) {
    return work.found() == null && work.timeMillis() == millis + Effects.INSTANT_MILLIS;
  }

  private static int last(List<History.Entry> done, long millis) {
    int last = -1;
    for (int k = 0; k < done.size(); k++) {
      last = done.get(k).standing().moment().timeMillis() <= millis ? k : last;
    }
    return last;
  }
}
