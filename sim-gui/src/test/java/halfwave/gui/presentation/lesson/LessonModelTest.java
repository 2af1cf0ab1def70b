package halfwave.gui.presentation.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.board.Stage;
import halfwave.gui.presentation.ManualExecutor;
import halfwave.gui.presentation.bench.DirectBench;
import halfwave.gui.presentation.bench.History;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.Recording;
import halfwave.io.lesson.ShippedDemonstrations;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Playthrough;
import halfwave.sequence.Deed;
import halfwave.sequence.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** A demonstration brings the bench to the very moments that its script says. */
class LessonModelTest {

  private static final Demonstration SHOWN =
      ShippedDemonstrations.named("a-dirty-rod").orElseThrow();

  /** The moments at which the steps begin, and the one at which the last ends. */
  private static final List<Moment> MOMENTS = Playthrough.moments(SHOWN);

  private final DirectBench bench = DirectBench.standing();
  private final LessonModel lesson = new LessonModel(bench.workbench, Runnable::run, Runnable::run);

  private Playthrough at() {
    return Objects.requireNonNull(lesson.at());
  }

  /** The audience watches until the stretch is over; more is a mistake of the program. */
  private void watch() {
    for (int k = 0; k < 100_000 && bench.shown().showing() != null; k++) {
      bench.want(new Intent.Pass(100));
    }
    assertThat(bench.shown().showing()).as("the stretch has an end").isNull();
  }

  @Test
  void beginsWhereTheFirstStepBegins() {
    lesson.begin(SHOWN);
    assertThat(at().stepIndex()).isZero();
    assertThat(bench.moment()).isEqualTo(MOMENTS.get(0));
    assertThat(bench.shown().clock().running()).isFalse();
    assertThat(bench.shown().history()).isEqualTo(History.EMPTY);
  }

  @Test
  void goesThroughAllStepsAndEveryStretchEndsWhereTheNextStepBegins() {
    lesson.begin(SHOWN);
    int steps = 0;
    while (true) {
      int index = at().stepIndex();
      assertThat(bench.moment()).as("step %s", index).isEqualTo(MOMENTS.get(index));
      if (!at().revealed()) {
        lesson.forward();
        assertThat(at().revealed()).isTrue();
        watch();
      }
      assertThat(bench.moment()).as("end of step %s", index).isEqualTo(MOMENTS.get(index + 1));
      assertThat(bench.shown().clock().running()).isFalse();
      steps++;
      if (!at().hasNext()) {
        break;
      }
      lesson.forward();
      assertThat(at().stepIndex()).isEqualTo(index + 1);
    }
    assertThat(steps).isEqualTo(SHOWN.steps().size());
    lesson.forward();
    assertThat(at().stepIndex()).as("behind the last step there is none").isEqualTo(steps - 1);
    assertThat(bench.mistakes).isEmpty();
  }

  @Test
  void jumpsAndGoesBackToMomentsAskedAnew() {
    lesson.begin(SHOWN);
    lesson.jump(3);
    assertThat(bench.moment()).isEqualTo(MOMENTS.get(3));
    lesson.back();
    assertThat(at().stepIndex()).isEqualTo(2);
    assertThat(bench.moment()).isEqualTo(MOMENTS.get(2));
    lesson.jump(0);
    lesson.back();
    assertThat(at().stepIndex()).as("before the first step there is none").isZero();
  }

  /** The timeline tells what nobody watched, or begins anew where nothing was played. */
  @Test
  void recordsTheRestOfWhatWasCutShort() {
    lesson.begin(SHOWN);
    lesson.jump(5);
    lesson.forward();
    bench.want(new Intent.Pass(500));
    lesson.forward();
    assertThat(at().stepIndex()).isEqualTo(6);
    assertThat(bench.moment()).isEqualTo(MOMENTS.get(6));
    assertThat(bench.shown().recording().samples())
        .anyMatch(s -> s.stage() == Stage.SOFT_LOCKOUT)
        .noneMatch(s -> s.timeMillis() > MOMENTS.get(6).timeMillis());
    lesson.jump(9);
    assertThat(bench.shown().recording()).isEqualTo(Recording.EMPTY);
  }

  @Test
  void goesBackFromAnAnswerToItsQuestionAndKeepsTheVotes() {
    lesson.begin(SHOWN);
    lesson.jump(1);
    lesson.vote(2);
    lesson.forward();
    bench.want(new Intent.Pass(500));
    lesson.back();
    assertThat(at().stepIndex()).isEqualTo(1);
    assertThat(at().revealed()).isFalse();
    assertThat(at().tally().get(2)).isEqualTo(1);
    assertThat(bench.moment()).isEqualTo(MOMENTS.get(1));
    lesson.back();
    assertThat(at().stepIndex()).isZero();
  }

  @Test
  void countsVotesUntilTheAnswerIsOut() {
    lesson.begin(SHOWN);
    lesson.jump(1);
    lesson.vote(0);
    lesson.vote(1);
    lesson.vote(1);
    lesson.vote(99);
    assertThat(at().tally().subList(0, 2)).containsExactly(1, 2);
    lesson.takeBackVote(0);
    lesson.takeBackVote(0);
    lesson.takeBackVote(99);
    assertThat(at().tally().get(0)).as("never below zero").isZero();
    lesson.vote(0);
    lesson.forward();
    lesson.vote(0);
    assertThat(at().tally().get(0)).as("the answer is out").isEqualTo(1);
    lesson.jump(0);
    lesson.jump(1);
    assertThat(at().tally().get(1)).as("votes stay").isEqualTo(2);
    lesson.clearVotes();
    assertThat(at().tally()).containsOnly(0);
  }

  @Test
  void comesBackFromAnExcursion() {
    lesson.begin(SHOWN);
    lesson.jump(1);
    bench.want(DirectBench.act(new Deed.Supply(false)), new Intent.StepOn(5000L));
    assertThat(bench.moment()).isNotEqualTo(MOMENTS.get(1));
    lesson.comeBack();
    assertThat(bench.moment()).isEqualTo(MOMENTS.get(1));
  }

  @Test
  void endsAndBringsBackTheBenchThatWasThere() {
    Moment before = bench.moment();
    lesson.begin(SHOWN);
    assertThat(bench.moment()).isEqualTo(MOMENTS.get(0));
    lesson.end();
    assertThat(lesson.at() == null).isTrue();
    assertThat(bench.moment()).isEqualTo(before);
    lesson.forward();
    lesson.back();
    lesson.vote(0);
    lesson.comeBack();
    assertThat(lesson.at() == null).isTrue();
  }

  @Test
  void takesNothingWhileAStepIsBeingPreparedAndTellsSo() {
    ManualExecutor engine = new ManualExecutor();
    LessonModel slow = new LessonModel(bench.workbench, engine, Runnable::run);
    List<Boolean> told = new ArrayList<>();
    slow.subscribe(() -> told.add(slow.preparing()));
    slow.begin(SHOWN);
    engine.run();
    slow.forward();
    slow.forward();
    assertThat(slow.preparing()).isTrue();
    slow.forward();
    slow.jump(4);
    engine.run();
    assertThat(slow.preparing()).isFalse();
    assertThat(Objects.requireNonNull(slow.at()).stepIndex()).isEqualTo(1);
    assertThat(told).startsWith(false, true, false);
  }

  @Test
  void whatWasEndedWhileItWasPreparedDoesNotComeBack() {
    ManualExecutor engine = new ManualExecutor();
    LessonModel slow = new LessonModel(bench.workbench, engine, Runnable::run);
    Moment before = bench.moment();
    slow.begin(SHOWN);
    slow.end();
    engine.run();
    assertThat(slow.at() == null).isTrue();
    assertThat(slow.preparing()).isFalse();
    assertThat(bench.moment()).isEqualTo(before);
  }
}
