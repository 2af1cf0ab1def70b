package halfwave.gui.presentation.desk;

import halfwave.bench.BenchFlame;
import halfwave.bench.Stages;
import halfwave.grading.CallMarks;
import halfwave.grading.Grader;
import halfwave.grading.SheetMarks;
import halfwave.gui.presentation.Inquiry;
import halfwave.gui.presentation.bench.Readout;
import halfwave.gui.presentation.bench.SeenBench;
import halfwave.picture.scene.Arrows;
import halfwave.quiz.Glimpse;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A call of a learner, played again: what was before him at each move.
 *
 * @param of the call with its marks
 * @param acts one for each of its moves, in order
 */
public record DeskReplay(CallMarks of, List<Act> acts) {

  /**
   * What was there at one move.
   *
   * @param glimpse the furnace and the meter
   * @param flame the flame of it
   * @param arrows the flame current each way; null where none flowed
   */
  public record Act(Glimpse glimpse, BenchFlame flame, @Nullable Arrows arrows) {}

  /** What is to be played again. */
  record Question(Grader grader, SheetMarks sheet, CallMarks call) {}

  /** Takes a copy. */
  public DeskReplay {
    acts = List.copyOf(acts);
  }

  /** The same as work for {@link Inquiry}. */
  static void answer(Question question, Inquiry.Hearing<DeskReplay> hearing) {
    Stages stages = new Stages();
    List<Act> acts = new ArrayList<>();
    List<Glimpse> glimpses =
        question
            .grader()
            .visit(question.call().call(), question.sheet().sheet())
            .map(Glimpse::of)
            .orElse(List.of());
    for (Glimpse glimpse : glimpses) {
      if (!hearing.wanted()) {
        return;
      }
      acts.add(act(stages, glimpse));
    }
    hearing.tell(new DeskReplay(question.call(), acts));
  }

  private static Act act(Stages stages, Glimpse glimpse) {
    Readout read = Readout.of(stages, glimpse.moment());
    return new Act(glimpse, read.flame(), SeenBench.arrows(read));
  }
}
