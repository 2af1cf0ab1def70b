package halfwave.gui.presentation.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.explain.MomentAccount;
import halfwave.gui.presentation.bench.Benches;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.Readout;
import halfwave.gui.presentation.bench.State;
import halfwave.message.Message;
import halfwave.sequence.Deed;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Queue;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Explanations are made one at a time, of the newest question, and not too often. */
class WhyModelTest {

  private static final State A = Benches.opened();
  private static final State B = Benches.after(A, new Deed.Supply(false));
  private static final State C = Benches.after(A, new Deed.TakeOff());

  private final Queue<Runnable> background = new ArrayDeque<>();
  private final List<WhyQuestion> explained = new ArrayList<>();
  private final WhyModel model = model(this::quickly);

  private WhyModel model(Function<WhyQuestion, WhyAnswer> explain) {
    return new WhyModel(background::add, Runnable::run, explain);
  }

  private WhyAnswer quickly(WhyQuestion question) {
    explained.add(question);
    List<Message> none = List.of();
    return new WhyAnswer(
        question, Optional.empty(), new MomentAccount(none, none, none, none, none, none));
  }

  private void finish() {
    Objects.requireNonNull(background.poll()).run();
  }

  private static boolean about(WhyQuestion question, State state) {
    return question.sameAs(WhyQuestion.of(state));
  }

  @Test
  void newestOfThoseThatWaitWins() {
    model.want(A);
    model.tick(0);
    model.want(B);
    model.want(C);
    finish();
    model.tick(WhyModel.PACE_MILLIS);
    finish();

    assertThat(explained).hasSize(2);
    assertThat(about(explained.get(1), C)).isTrue();
    assertThat(Objects.requireNonNull(model.answer()).question()).isEqualTo(explained.get(1));
  }

  @Test
  void anAnswerThatStillServesFollowsTheMeter() {
    State later = Benches.after(A, new Intent.StepOn(5L));
    model.want(A);
    model.tick(0);
    finish();
    assertThat(Objects.requireNonNull(model.answer()).measured()).isEqualTo(A.readout().measured());
    State other =
        new State(
            later.standing(),
            new Readout(
                later.readout().flame(),
                later.readout().steady(),
                Optional.empty(),
                later.readout().code(),
                0,
                0),
            later.history(),
            later.clock(),
            later.paper(),
            later.showing(),
            later.refusal(),
            later.seal());
    model.want(other);

    assertThat(Objects.requireNonNull(model.answer()).measured()).isEmpty();
    assertThat(explained).hasSize(1);
  }

  @Test
  void beginsOneAtATimeAndAtMostTwiceASecond() {
    model.want(A);
    model.tick(0);
    model.want(B);
    model.tick(10 * WhyModel.PACE_MILLIS);
    assertThat(background).as("one is in the making").hasSize(1);

    finish();
    model.tick(10 * WhyModel.PACE_MILLIS);
    finish();
    model.want(C);
    model.tick(11 * WhyModel.PACE_MILLIS - 1);
    assertThat(background).as("too soon").isEmpty();

    model.tick(11 * WhyModel.PACE_MILLIS);
    assertThat(background).hasSize(1);
  }

  @Test
  void whatIsAnsweredIsNotAskedAgain() {
    model.want(A);
    model.tick(0);
    finish();
    model.want(Benches.later(A));
    model.tick(WhyModel.PACE_MILLIS);

    assertThat(background).isEmpty();
  }

  @Test
  void oldAnswerStandsAndOnlyALongWaitIsTold() {
    model.want(A);
    model.tick(0);
    finish();
    WhyAnswer old = model.answer();
    model.want(B);
    model.tick(WhyModel.PACE_MILLIS);
    model.tick(WhyModel.PACE_MILLIS + WhyModel.PATIENCE_MILLIS);
    assertThat(model.slow()).isFalse();

    model.tick(WhyModel.PACE_MILLIS + WhyModel.PATIENCE_MILLIS + 1);
    assertThat(model.slow()).isTrue();
    assertThat(model.answer()).isSameAs(old);

    finish();
    assertThat(model.slow()).isFalse();
    assertThat(model.answer()).isNotSameAs(old);
  }

  @Test
  void whoDoesNotLookAsksNothing() {
    model.want(A);
    model.rest();
    model.tick(0);

    assertThat(background).isEmpty();
  }

  @Test
  void aFailureIsToldAndTheNextQuestionTaken() {
    WhyModel failing =
        model(
            q -> {
              if (about(q, A)) {
                throw new IllegalStateException("no");
              }
              return quickly(q);
            });
    failing.want(A);
    failing.tick(0);
    finish();
    assertThat(failing.failed()).isTrue();

    failing.want(B);
    failing.tick(WhyModel.PACE_MILLIS);
    finish();
    assertThat(failing.failed()).isFalse();
    assertThat(failing.answer()).isNotNull();
  }
}
