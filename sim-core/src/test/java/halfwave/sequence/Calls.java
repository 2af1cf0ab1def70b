package halfwave.sequence;

import halfwave.bench.Bench;
import halfwave.bench.Change;
import halfwave.bench.Disorder;
import halfwave.bench.Parameter;
import halfwave.bench.ShippedBenches;
import halfwave.board.BoardSettings;
import halfwave.board.ShippedBoards;
import halfwave.board.Stage;
import java.util.ArrayList;
import java.util.List;

/** Heating calls for tests, and questions to what came of them. */
final class Calls {

  static final long SECOND = 1000;
  static final long MINUTE = 60 * SECOND;
  static final long HOUR = 60 * MINUTE;

  /** When the call begins in {@link #play} (ms). */
  static final long CALL_MILLIS = SECOND;

  private Calls() {}

  static Bench benchFor(BoardSettings settings) {
    return ShippedBenches.all().stream()
        .filter(b -> b.design().ignition() == settings.ignition())
        .findFirst()
        .orElseThrow();
  }

  static BoardSettings board(String name) {
    return ShippedBoards.named(name).orElseThrow();
  }

  /** Power at once, a call after a second, and whatever else. */
  static Segment play(Bench bench, BoardSettings settings, long untilMillis, Act... more) {
    List<Act> acts = new ArrayList<>();
    acts.add(new Act(0, new Deed.Supply(true)));
    acts.add(new Act(CALL_MILLIS, new Deed.Call(true)));
    acts.addAll(List.of(more));
    return new Sequence().advance(Moment.cold(bench, settings, 1), untilMillis, acts);
  }

  static Act set(long millis, Parameter parameter, double si) {
    return new Act(millis, new Deed.Alter(Change.Turned.to(parameter, si)));
  }

  static Act upset(long millis, Disorder disorder, boolean present) {
    return new Act(millis, new Deed.Alter(new Change.Upset(disorder, present)));
  }

  /** Times at which a stage was entered from another (ms). */
  static List<Long> entries(Segment segment, Stage stage) {
    return segment.events().stream().filter(e -> e.enters(stage)).map(Event::timeMillis).toList();
  }

  /** Stages in the order of entering. */
  static List<Stage> stages(Segment segment) {
    return segment.events().stream()
        .filter(e -> e.transition() != null)
        .filter(e -> e.transition().to() != e.transition().from())
        .map(e -> e.transition().to())
        .toList();
  }

  /** Largest filtered DC (A) between two times. */
  static double largestAmps(Segment segment, long from, long to) {
    return segment.samples().stream()
        .filter(s -> s.timeMillis() >= from && s.timeMillis() < to)
        .mapToDouble(Sample::filteredAmps)
        .max()
        .orElseThrow();
  }
}
