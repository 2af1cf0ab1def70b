package halfwave.gui.presentation.bench;

import halfwave.sequence.Event;
import halfwave.sequence.Sample;
import halfwave.sequence.Segment;
import java.util.List;

/**
 * What has happened up to the present, as far back as anyone looks. It grows by sharing what was
 * recorded before: each of hundreds of steps of undo holds one.
 *
 * @param samples curves, in order of time
 * @param events in order of time
 */
public record Recording(List<Sample> samples, List<Event> events) {

  /** An hour at five samples a second. */
  static final int MOST_SAMPLES = 18_000;

  static final int MOST_EVENTS = 4000;

  /** Nothing yet. */
  public static final Recording EMPTY = new Recording(List.of(), List.of());

  /** Takes copies, unless they share already. */
  public Recording {
    samples = Tape.of(samples);
    events = Tape.of(events);
  }

  /** One segment longer. */
  Recording then(Segment segment) {
    return new Recording(
        Tape.of(samples).then(segment.samples()).last(MOST_SAMPLES),
        Tape.of(events).then(segment.events()).last(MOST_EVENTS));
  }

  /**
   * Without what the other one has forgotten, except for its end. At a thousand times real time
   * each step of undo has an hour of its own, and hundreds of hours are more than there is room
   * for; what both have is shared and costs nothing.
   */
  Recording sharedWith(Recording other) {
    if (other.samples.isEmpty() || samples.isEmpty()) {
      return this;
    }
    long since = other.samples.get(0).timeMillis();
    if (samples.get(0).timeMillis() >= since) {
      return this;
    }
    return new Recording(
        Tape.of(samples).last(countSince(since)), Tape.of(events).last(Tape.PIECE));
  }

  /** How many samples are of that time or later, but not less than a piece. */
  private int countSince(long millis) {
    int before = 0;
    int after = samples.size();
    while (before < after) {
      int middle = (before + after) / 2;
      if (samples.get(middle).timeMillis() < millis) {
        before = middle + 1;
      } else {
        after = middle;
      }
    }
    return Math.max(Tape.PIECE, samples.size() - before);
  }

  /** Without the acts of a gesture that is still going on: only its last one is told. */
  Recording withoutActsFrom(int eventCount) {
    int kept = Math.min(eventCount, events.size());
    List<Event> others =
        events.subList(kept, events.size()).stream()
            .filter(e -> e.subject() != Event.Subject.ACT)
            .toList();
    return new Recording(samples, Tape.of(events).first(kept).then(others));
  }
}
