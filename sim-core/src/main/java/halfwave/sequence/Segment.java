package halfwave.sequence;

import java.util.List;

/**
 * A stretch of time.
 *
 * @param start the moment it began
 * @param events what happened, in order
 * @param samples what the curves show: five times a second while anything moves, and at every event
 * @param end the moment it ended; what happens at that very instant belongs to the next segment
 */
public record Segment(Moment start, List<Event> events, List<Sample> samples, Moment end) {

  /** Takes copies. */
  public Segment {
    events = List.copyOf(events);
    samples = List.copyOf(samples);
  }
}
