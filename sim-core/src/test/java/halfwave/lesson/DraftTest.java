package halfwave.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import halfwave.bench.Change;
import halfwave.bench.Parameter;
import halfwave.board.Stage;
import halfwave.lesson.DraftPlace.Field;
import halfwave.sequence.Act;
import halfwave.sequence.Deed;
import halfwave.sequence.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A draft tells what it lacks, can be played all the same, and never passes for a proved one. */
class DraftTest {

  private static final Draft SHORT =
      Draft.of(Lessons.demonstration(Lessons.step(null, Lessons.pull(), new Claim.At(Stage.RUN))));

  @Test
  void whoWritesInOneOtherTongueFindsEnglishEmptyAgain() {
    DraftText text = DraftText.EMPTY.with("es", "hola");
    assertThat(text.words().orElseThrow().texts()).isEqualTo(Map.of("en", "hola", "es", "hola"));
    assertThat(DraftText.of(text.words().orElseThrow())).isEqualTo(text);
    assertThat(DraftText.EMPTY.with("es", "  ").words()).isEmpty();
    assertThat(text.with("es", "").blank()).isTrue();
    assertThatIllegalArgumentException().isThrownBy(() -> text.with("no tag", "x"));
  }

  @Test
  void gapsAreToldInTheOrderInWhichTheyAreRead() {
    DraftStep asked = DraftStep.EMPTY.with(DraftQuestion.EMPTY);
    List<DraftGap> gaps = SHORT.inserted(1, asked).gaps();
    assertThat(gaps)
        .extracting(g -> g.place().field())
        .containsExactly(
            Field.HEADING, Field.SAY, Field.ASK, Field.ANSWER, Field.ANSWER, Field.ANSWER);
    assertThat(gaps.get(5)).isEqualTo(new DraftGap(DraftPlace.answer(1, 0), DraftGap.Kind.PROOF));
  }

  @Test
  void anUnprovedAnswerIsDoubtedAlsoByWhoeverKnowsNoDrafts() {
    Draft draft = SHORT.with(0, SHORT.steps().get(0).with(DraftQuestion.EMPTY));
    List<Rehearsal.Doubt> doubts = Rehearsal.of(draft.demonstration()).doubts();
    assertThat(doubts).extracting(Rehearsal.Doubt::answerIndex).containsExactly(null, 0);
    assertThat(doubts).extracting(Draft::unproved).containsExactly(false, true);
  }

  @Test
  void stepsKeepTheirOrderUnlessTheyAreMoved() {
    Draft two = SHORT.inserted(1, DraftStep.EMPTY);
    assertThat(two.moved(0, 1).steps()).containsExactly(DraftStep.EMPTY, SHORT.steps().get(0));
    assertThat(two.duplicated(0).steps()).hasSize(3);
    assertThat(SHORT.removed(0).steps()).containsExactly(DraftStep.EMPTY);
  }

  @Test
  void theRightAnswerStaysTheRightOne() {
    DraftQuestion three = DraftQuestion.EMPTY.grown().withRight(2);
    assertThat(three.without(0).right()).isEqualTo(1);
    assertThat(three.without(2).right()).isEqualTo(1);
    assertThat(three.moved(2, 0).right()).isZero();
    assertThat(three.moved(0, 2).right()).isEqualTo(1);
    assertThatIllegalArgumentException().isThrownBy(() -> three.without(0).without(0));
  }

  @Test
  void anActThatCannotBeDoneIsNamed() {
    // into the burner
    Act pushed = new Act(0, new Deed.Alter(Change.Turned.to(Parameter.ROD_ALONG, -0.1)));
    Play play = new Play(List.of(pushed), 100, 1);
    assertThat(DraftActs.blocked(SHORT)).isEmpty();
    DraftActs.Blocked blocked =
        DraftActs.blocked(SHORT.with(0, SHORT.steps().get(0).with(play))).orElseThrow();
    assertThat(blocked.step()).isZero();
    assertThat(blocked.act()).isEqualTo(pushed);
  }

  @Test
  void momentsAreThoseOfThePlayerAndOnlyWhatChangedIsPlayedAgain() {
    Draft two = SHORT.inserted(1, SHORT.steps().get(0));
    List<Moment> expected = Playthrough.moments(two.demonstration());
    StepMoments moments = new StepMoments();
    List<Long> played = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      assertThat(moments.begin(two.demonstration(), k, slice -> true)).contains(expected.get(k));
    }
    Draft changed = two.with(1, two.steps().get(1).with(Play.NOTHING));
    moments.step(changed.demonstration(), 1, slice -> played.add(slice.end().timeMillis()));
    assertThat(played).as("nothing before the change").isEmpty();
    assertThat(moments.begin(two.demonstration(), 2, slice -> false)).isEmpty();
    assertThat(moments.begin(two.demonstration(), 2, slice -> true)).contains(expected.get(2));
  }

  @Test
  void aRehearsalCanBeGivenUp() {
    List<Double> told = new ArrayList<>();
    assertThat(
            Rehearsal.of(
                SHORT.demonstration(),
                doneRatio -> {
                  told.add(doneRatio);
                  return told.size() < 2;
                }))
        .isEmpty();
    assertThat(told.get(0)).isBetween(0.0, 1.0);
    assertThat(told.get(1)).isEqualTo(1.0);
  }
}
