package halfwave.lesson;

import halfwave.sequence.Act;
import halfwave.sequence.Event;
import halfwave.sequence.Moment;
import halfwave.sequence.Playback;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A play with its beginning: what a player hands to {@code Sequence.advance}, in one piece or in
 * many.
 *
 * @param from where it begins
 * @param untilMillis where it ends (ms)
 * @param acts what is done meanwhile, at times of the furnace's clock
 * @param speedRatio seconds of the furnace in a second of the audience (1)
 */
public record Stretch(Moment from, long untilMillis, List<Act> acts, double speedRatio) {

  /** Takes a copy. */
  public Stretch {
    acts = List.copyOf(acts);
  }

  /** Plays it at once. */
  public Performance performed() {
    return performed(slice -> true).orElseThrow();
  }

  /**
   * The same for whoever may give it up.
   *
   * @param watch is handed each slice
   * @return nothing if it was given up
   */
  public Optional<Performance> performed(Playback.Watch watch) {
    List<Event> events = new ArrayList<>();
    return Playback.play(
            from,
            untilMillis,
            acts,
            slice -> {
              events.addAll(slice.events());
              return watch.goOn(slice);
            })
        .map(end -> new Performance(from, events, end));
  }
}
