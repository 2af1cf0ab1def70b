package halfwave.gui.presentation.charts;

import halfwave.bench.Bench;
import halfwave.bench.Parameter;
import halfwave.bench.RodPosition;
import halfwave.explain.Axis;
import halfwave.explain.Sweep;
import halfwave.gui.presentation.Inquiry;
import halfwave.gui.presentation.bench.State;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the meter would show with the rod elsewhere: along the burner's axis and sideways. Belongs
 * to one thread; keeps the last map, so that moving the rod within it moves only the mark.
 */
public final class RodMap implements Inquiry.Worker<RodMap.Question, RodMap.Answer> {

  /** The map reaches so far from where the rod was fitted (m): the flame and a little more. */
  static final double ALONG_FROM = -0.02;

  static final double ALONG_TO = 0.06;
  static final double ACROSS = 0.03;

  /**
   * What is asked.
   *
   * @param bench the present bench
   * @param healthy the healthy bench
   */
  public record Question(Bench bench, Bench healthy) {

    /** The question of a state. */
    public static Question of(State state) {
      return new Question(state.moment().benchNow(), Healthy.bench(state));
    }

    /** The bench with its rod back where the map is counted from. */
    Bench counted() {
      RodPosition p = bench.condition().rodPosition().withAlong(0).withAcross(0);
      return bench.with(bench.condition().withRodPosition(p));
    }
  }

  /**
   * What is answered.
   *
   * @param question the question
   * @param map the present bench, along then across
   * @param healthy the healthy bench, or null where that is not known
   */
  public record Answer(Question question, Sweep map, @Nullable Sweep healthy) {}

  /** Columns and lines of each pass. */
  private static final int[][] PASSES = {{9, 7}, {17, 13}, {33, 25}};

  /** The healthy bench gets the middle one: of it only one line is shown. */
  private static final int GHOST = 1;

  private @Nullable Bench known;
  private @Nullable Bench knownHealthy;
  private @Nullable Sweep map;
  private @Nullable Sweep ghost;

  @Override
  public void answer(Question question, Inquiry.Hearing<Answer> hearing) {
    Bench counted = question.counted();
    if (!counted.equals(known) || map == null) {
      known = null;
      int all = 0;
      for (int[] pass : PASSES) {
        all += pass[0] * pass[1];
      }
      int done = 0;
      for (int[] pass : PASSES) {
        Optional<Sweep> finer = swept(counted, pass, done, all, hearing);
        if (finer.isEmpty()) {
          return;
        }
        map = finer.get();
        hearing.tell(new Answer(question, map, null));
        done += pass[0] * pass[1];
      }
      known = counted;
    }
    if (!question.healthy.equals(knownHealthy)) {
      ghost = null;
      knownHealthy = null;
      if (!counted.equals(question.healthy)) {
        ghost = swept(question.healthy, PASSES[GHOST], 0, 0, hearing).orElse(null);
        if (ghost == null) {
          return;
        }
        knownHealthy = question.healthy;
      }
    }
    if (map != null) {
      hearing.tell(new Answer(question, map, counted.equals(question.healthy) ? null : ghost));
    }
  }

  private static Optional<Sweep> swept(
      Bench bench, int[] pass, int before, int all, Inquiry.Hearing<Answer> hearing) {
    List<Axis> axes =
        List.of(
            Axis.linear(Parameter.ROD_ALONG, ALONG_FROM, ALONG_TO, pass[0]),
            Axis.linear(Parameter.ROD_ACROSS, -ACROSS, ACROSS, pass[1]));
    return Sweep.of(
        bench,
        axes,
        (done, of) -> {
          if (all > 0) {
            hearing.done((double) (before + done) / all);
          }
          return hearing.wanted();
        });
  }
}
