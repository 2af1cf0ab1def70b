package halfwave.gui.presentation;

import halfwave.sequence.Event;
import halfwave.sequence.Sample;
import halfwave.sequence.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * What has happened up to the present, as far back as anyone looks.
 *
 * @param samples curves, in order of time
 * @param events in order of time
 */
public record Recording(List<Sample> samples, List<Event> events) {

  /** An hour at five samples a second. */
  private static final int MOST_SAMPLES = 18_000;

  private static final int MOST_EVENTS = 4000;

  /** Nothing yet. */
  public static final Recording EMPTY = new Recording(List.of(), List.of());

  /** One segment longer. */
  Recording then(Segment segment) {
    return new Recording(
        longer(samples, segment.samples(), MOST_SAMPLES),
        longer(events, segment.events(), MOST_EVENTS));
  }

  /** Without the acts of a gesture that is still going on: only its last one is told. */
  Recording withoutActsFrom(int eventCount) {
    List<Event> kept = new ArrayList<>(events);
    int k = Math.min(eventCount, kept.size());
    while (k < kept.size()) {
      if (kept.get(k).subject() == Event.Subject.ACT) {
        kept.remove(k);
      } else {
        k++;
      }
    }
    return new Recording(samples, kept);
  }

  private static <T> List<T> longer(List<T> old, List<T> more, int most) {
    if (more.isEmpty()) {
      return old;
    }
    int from = Math.max(0, old.size() + more.size() - most);
    List<T> all = new ArrayList<>(old.size() + more.size());
    all.addAll(old.subList(Math.min(from, old.size()), old.size()));
    all.addAll(more);
    return all;
  }
}
