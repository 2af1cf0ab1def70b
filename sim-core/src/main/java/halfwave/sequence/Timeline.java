package halfwave.sequence;

import java.util.ArrayList;
import java.util.List;

/**
 * Segments, one after the other.
 *
 * @param start where it begins
 * @param segments the segments, each beginning where the one before ends
 */
public record Timeline(Moment start, List<Segment> segments) {

  /** Checks that there is no gap. */
  public Timeline {
    segments = List.copyOf(segments);
    Moment at = start;
    for (Segment segment : segments) {
      if (!segment.start().equals(at)) {
        throw new IllegalArgumentException("segments: one begins where the one before ends");
      }
      at = segment.end();
    }
  }

  /** Nothing has happened yet. */
  public static Timeline from(Moment start) {
    return new Timeline(start, List.of());
  }

  /** One segment longer. */
  public Timeline then(Segment segment) {
    List<Segment> longer = new ArrayList<>(segments);
    longer.add(segment);
    return new Timeline(start, longer);
  }

  /** Where it ends. */
  public Moment end() {
    return segments.isEmpty() ? start : segments.get(segments.size() - 1).end();
  }

  /** All events, in order. */
  public List<Event> events() {
    return segments.stream().flatMap(s -> s.events().stream()).toList();
  }

  /** All samples, in order. */
  public List<Sample> samples() {
    return segments.stream().flatMap(s -> s.samples().stream()).toList();
  }
}
