package halfwave.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import halfwave.board.Stage;
import halfwave.sequence.Act;
import halfwave.sequence.Moment;
import halfwave.sequence.Sequence;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a player may do with a demonstration, and that every step begins where it should. */
class PlaythroughTest {

  private static final Question QUESTION =
      new Question(
          Lessons.words("what?"),
          List.of(
              Lessons.answer(new Claim.At(Stage.RUN)),
              Lessons.answer(new Claim.Enters(Stage.INTER_PURGE, 1, 1))),
          1);

  private static final Demonstration DEMONSTRATION =
      Lessons.demonstration(
          Lessons.step(null, Play.NOTHING),
          Lessons.step(QUESTION, Lessons.pull()),
          Lessons.step(null, new Play(List.of(), 3000, 1)));

  private static final Playthrough BEGUN = Playthrough.begin(DEMONSTRATION);

  private static Moment piecewise(Stretch stretch) {
    Sequence sequence = new Sequence();
    Moment now = stretch.from();
    while (now.timeMillis() < stretch.untilMillis()) {
      long from = now.timeMillis();
      long until = Math.min(stretch.untilMillis(), from + 333);
      List<Act> due =
          stretch.acts().stream()
              .filter(a -> a.timeMillis() >= from && a.timeMillis() < until)
              .toList();
      now = sequence.advance(now, until, due).end();
    }
    return now;
  }

  @Test
  void beginsAfterTheStart() {
    assertThat(BEGUN.stepIndex()).isZero();
    assertThat(BEGUN.moment().timeMillis()).isEqualTo(Lessons.RUNNING_MILLIS);
    assertThat(BEGUN.moment().board().stage()).isEqualTo(Stage.RUN);
    assertThat(BEGUN.hasBack()).isFalse();
    assertThat(BEGUN.back()).isSameAs(BEGUN);
  }

  @Test
  void aStepThatHoldsNothingBackIsOutAtOnce() {
    assertThat(BEGUN.revealed()).isTrue();
    assertThat(BEGUN.takesVotes()).isFalse();
    assertThat(BEGUN.next().revealed()).isFalse();
  }

  @Test
  void votesAreCountedUntilTheReveal() {
    Playthrough asked = BEGUN.next();

    Playthrough voted = asked.vote(1).vote(0).vote(1);

    assertThat(asked.tally()).containsExactly(0, 0);
    assertThat(voted.tally()).containsExactly(1, 2);
    assertThat(voted.clearVotes().tally()).containsExactly(0, 0);
    assertThat(voted.reveal().tally()).containsExactly(1, 2);
    assertThat(voted.reveal().next().back().tally()).containsExactly(1, 2);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> voted.vote(2))
        .withMessage("answer = 2: zero to 1");
    assertThatExceptionOfType(IllegalStateException.class).isThrownBy(() -> voted.reveal().vote(0));
  }

  @Test
  void oneKeyGoesThroughAll() {
    Playthrough now = BEGUN.forward();
    assertThat(now.stepIndex()).isEqualTo(1);
    now = now.forward();
    assertThat(now.stepIndex()).isEqualTo(1);
    assertThat(now.revealed()).isTrue();
    now = now.forward().forward();
    assertThat(now.stepIndex()).isEqualTo(2);
    assertThat(now.hasNext()).isFalse();
    assertThat(now.forward()).isEqualTo(now);
  }

  @Test
  void theStretchHasTheActsOnTheFurnacesClock() {
    Stretch stretch = BEGUN.next().reveal().stretch();

    assertThat(stretch.from()).isEqualTo(BEGUN.next().moment());
    assertThat(stretch.untilMillis()).isEqualTo(Lessons.RUNNING_MILLIS + 10_000);
    assertThat(stretch.acts())
        .extracting(Act::timeMillis)
        .containsExactly(Lessons.RUNNING_MILLIS + 500);
    assertThat(stretch.speedRatio()).isEqualTo(2);
  }

  /** Whoever plays the stretches in pieces ends where the next step begins. */
  @Test
  void whatIsShownEndsWhereTheNextStepBegins() {
    Playthrough second = BEGUN.next();

    assertThat(piecewise(second.stretch())).isEqualTo(second.next().moment());
  }

  @Test
  void stepsBeginAtTheSameMomentHoweverOneGetsThere() {
    List<Moment> moments = Playthrough.moments(DEMONSTRATION);

    assertThat(moments).hasSize(4);
    assertThat(BEGUN.jump(2).moment()).isEqualTo(moments.get(2));
    assertThat(BEGUN.next().reveal().next().moment()).isEqualTo(moments.get(2));
    assertThat(BEGUN.jump(2).jump(1).moment()).isEqualTo(moments.get(1));
    assertThat(BEGUN.jump(2).jump(1).revealed()).isFalse();
    assertThat(BEGUN.jump(2).moments()).hasSize(3).isEqualTo(moments.subList(0, 3));
    assertThat(moments.get(3).timeMillis()).isEqualTo(Lessons.RUNNING_MILLIS + 13_000);
  }

  @Test
  void thereIsNoOtherStep() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> BEGUN.jump(3))
        .withMessage("step = 3: zero to 2");
    assertThatIllegalArgumentException().isThrownBy(() -> BEGUN.jump(-1));
  }
}
