package halfwave.lesson;

import halfwave.sequence.Moment;
import halfwave.sequence.Playback;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What comes of the steps of a demonstration, for whoever changes it meanwhile: what lies before
 * the change is not played again. Belongs to one thread.
 */
public final class StepMoments {

  private @Nullable Moment cold;

  /** What was played, the start first, and what came of it. */
  private final List<Play> plays = new ArrayList<>();

  private final List<Performance> performances = new ArrayList<>();

  /**
   * The moment at which a step begins.
   *
   * @param demonstration the demonstration as it is now
   * @param step which step; their number: where the last one ends
   * @param watch is handed what is played
   * @return nothing if it was given up
   */
  public Optional<Moment> begin(Demonstration demonstration, int step, Playback.Watch watch) {
    return performed(demonstration, step, watch).map(Performance::after);
  }

  /**
   * What comes of a step.
   *
   * @param demonstration the demonstration as it is now
   * @param step which step
   * @param watch is handed what is played
   * @return nothing if it was given up
   */
  public Optional<Performance> step(Demonstration demonstration, int step, Playback.Watch watch) {
    return performed(demonstration, step + 1, watch);
  }

  private Optional<Performance> performed(
      Demonstration demonstration, int index, Playback.Watch watch) {
    if (!(index >= 0 && index <= demonstration.steps().size())) {
      throw new IllegalArgumentException(
          "index = " + index + ": zero to " + demonstration.steps().size());
    }
    keepWhatHolds(demonstration);
    for (int k = performances.size(); k <= index; k++) {
      Play play = play(demonstration, k);
      Moment from = k == 0 ? demonstration.cold() : performances.get(k - 1).after();
      Optional<Performance> performed = play.from(from).performed(watch);
      if (performed.isEmpty()) {
        return Optional.empty();
      }
      plays.add(play);
      performances.add(performed.get());
    }
    return Optional.of(performances.get(index));
  }

  private void keepWhatHolds(Demonstration demonstration) {
    Moment now = demonstration.cold();
    int kept = 0;
    while (now.equals(cold)
        && kept < plays.size()
        && kept <= demonstration.steps().size()
        && plays.get(kept).equals(play(demonstration, kept))) {
      kept++;
    }
    cold = now;
    plays.subList(kept, plays.size()).clear();
    performances.subList(kept, performances.size()).clear();
  }

  private static Play play(Demonstration demonstration, int index) {
    return index == 0 ? demonstration.start() : demonstration.steps().get(index - 1).play();
  }
}
