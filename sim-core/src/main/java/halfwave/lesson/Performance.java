package halfwave.lesson;

import halfwave.sequence.Event;
import halfwave.sequence.Moment;
import java.util.List;

/**
 * What came of a play: the ground on which claims are judged.
 *
 * @param before the moment at its beginning
 * @param events what happened, in order
 * @param after the moment at its end
 */
public record Performance(Moment before, List<Event> events, Moment after) {

  /** Takes a copy. */
  public Performance {
    events = List.copyOf(events);
  }
}
