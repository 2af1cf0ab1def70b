package halfwave.gui.presentation.editor;

import halfwave.gui.presentation.bench.State;
import halfwave.lesson.Performance;
import halfwave.sequence.Event;
import java.util.ArrayList;
import java.util.List;

/**
 * The bench as it was put somewhere in a demonstration.
 *
 * @param step of which step
 * @param begun what came of the step up to there
 * @param take what happens since
 */
record Placed(int step, Performance begun, Take take) {

  /** What happened from the beginning of the step up to a later state. */
  List<Event> events(State now) {
    List<Event> events = new ArrayList<>(begun.events());
    now.recording().events().stream()
        .filter(e -> e.timeMillis() >= take.start().timeMillis())
        .forEach(events::add);
    return events;
  }
}
