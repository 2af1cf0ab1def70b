package halfwave.lesson;

import halfwave.bench.Bench;
import halfwave.quantity.RejectedValueException;
import halfwave.sequence.Act;
import halfwave.sequence.Playback;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Does the acts of a draft in thought: steps that changed places may no longer follow. */
public final class DraftActs {

  private DraftActs() {}

  /**
   * An act that cannot be done where it stands.
   *
   * @param step in which step, or {@link DraftPlace#WHOLE} for the start
   * @param act which; null where already the bench cannot be
   * @param reason why
   */
  public record Blocked(int step, @Nullable Act act, RejectedValueException reason) {}

  /** The first act that cannot be done, or nothing. */
  public static Optional<Blocked> blocked(Draft draft) {
    List<Play> plays = new ArrayList<>(List.of(draft.start()));
    draft.steps().forEach(step -> plays.add(step.play()));
    Bench bench = draft.bench();
    for (int k = 0; k < plays.size(); k++) {
      Optional<Playback.Impossible> found = Playback.impossible(bench, plays.get(k).acts());
      if (found.isPresent()) {
        return Optional.of(new Blocked(k - 1, found.get().act(), found.get().reason()));
      }
      List<Act> ordered = new ArrayList<>(plays.get(k).acts());
      ordered.sort(Comparator.comparingLong(Act::timeMillis));
      for (Act act : ordered) {
        bench = Playback.done(bench, act.deed());
      }
    }
    return Optional.empty();
  }
}
