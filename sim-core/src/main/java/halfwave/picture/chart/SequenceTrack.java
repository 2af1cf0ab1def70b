package halfwave.picture.chart;

import halfwave.board.Stage;
import halfwave.sequence.Sample;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** What one lane of a timeline shows: stretches in which something stays as it is. */
final class SequenceTrack {

  /**
   * One stretch.
   *
   * @param fromMillis its beginning (ms)
   * @param untilMillis its end (ms)
   * @param stage stage of the board
   * @param levelRatio how much of it is on (1); zero is off
   */
  record Span(long fromMillis, long untilMillis, Stage stage, double levelRatio) {}

  private final ToDoubleFunction<Sample> level;
  private final boolean byStage;
  private final List<Span> spans = new ArrayList<>();

  private SequenceTrack(ToDoubleFunction<Sample> level, boolean byStage) {
    this.level = level;
    this.byStage = byStage;
  }

  /** Stretches of one stage each. */
  static SequenceTrack ofStages() {
    return new SequenceTrack(sample -> 1, true);
  }

  /** Stretches of one level each. */
  static SequenceTrack of(ToDoubleFunction<Sample> level) {
    return new SequenceTrack(level, false);
  }

  /**
   * Whatever changes is sampled when it does; so each stretch ends where the next sample differs.
   */
  void add(Sample sample) {
    Span next =
        new Span(sample.timeMillis(), Long.MAX_VALUE, sample.stage(), level.applyAsDouble(sample));
    if (!spans.isEmpty()) {
      Span last = spans.get(spans.size() - 1);
      boolean same = byStage ? last.stage == next.stage : last.levelRatio == next.levelRatio;
      if (same) {
        return;
      }
      spans.set(
          spans.size() - 1,
          new Span(last.fromMillis, sample.timeMillis(), last.stage, last.levelRatio));
    }
    spans.add(next);
  }

  /** All of them; the last one ends with the picture. */
  List<Span> spans() {
    return List.copyOf(spans);
  }
}
