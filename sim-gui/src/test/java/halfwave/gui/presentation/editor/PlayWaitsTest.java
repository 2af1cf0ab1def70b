package halfwave.gui.presentation.editor;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.board.Stage;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.DirectBench;
import halfwave.gui.presentation.lesson.LessonModel;
import halfwave.lesson.Claim;
import halfwave.lesson.DraftStep;
import halfwave.lesson.Play;
import halfwave.sequence.Act;
import halfwave.sequence.Deed;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Waiting in what was recorded is cut, and nothing else changes. */
class PlayWaitsTest {

  private static final Deed ON = new Deed.Call(true);
  private static final Deed OFF = new Deed.Call(false);
  private static final Deed POWER = new Deed.Supply(true);

  /** Three minutes before the first act, none before the second, ten seconds before the third. */
  private static final Play RECORDED =
      new Play(
          List.of(new Act(180_000, ON), new Act(180_000, POWER), new Act(190_000, OFF)),
          195_500,
          10);

  private static final Wording WORDS = DirectBench.ENGLISH;

  private static List<Long> times(Play play) {
    return play.acts().stream().map(Act::timeMillis).toList();
  }

  private static Play with(Play play, int act, String typed) {
    return PlayWaits.with(play, act, typed, WORDS).orElseThrow();
  }

  @Test
  void eachWaitingIsSaid() {
    assertThat(Stream.of(0, 1, 2, 3).map(k -> PlayWaits.waitMillis(RECORDED, k)))
        .containsExactly(180_000L, 0L, 10_000L, 5500L);
    assertThat(PlayWaits.typed(RECORDED, 3, WORDS)).startsWith("5.5");
    assertThat(PlayWaits.typed(RECORDED, 3, DirectBench.SPANISH)).startsWith("5,5");
  }

  @Test
  void lessWaitingBringsAllThatIsLaterNearer() {
    Play cut = with(RECORDED, 0, "1.5");

    assertThat(times(cut)).containsExactly(1500L, 1500L, 11_500L);
    assertThat(cut.lengthMillis()).isEqualTo(17_000);
    assertThat(cut.acts().stream().map(Act::deed)).containsExactly(ON, POWER, OFF);
    assertThat(cut.speedRatio()).isEqualTo(10);
    assertThat(times(with(RECORDED, 2, "0"))).containsExactly(180_000L, 180_000L, 180_000L);
    assertThat(times(with(RECORDED, 2, "1 min"))).containsExactly(180_000L, 180_000L, 240_000L);
  }

  @Test
  void theEndComesAfterTheLastAct() {
    assertThat(with(RECORDED, 3, "0.2").lengthMillis()).isEqualTo(190_200);
    assertThat(PlayWaits.with(RECORDED, 3, "0", WORDS)).isEmpty();
    assertThat(PlayWaits.with(RECORDED, 0, "-1", WORDS)).isEmpty();
    assertThat(PlayWaits.with(RECORDED, 0, "soon", WORDS)).isEmpty();
    // a week, and all that comes after it
    assertThat(PlayWaits.with(RECORDED, 0, "604800", WORDS)).isEmpty();
  }

  @Test
  void actsInAnyOrderOfTimeKeepTheirPlaces() {
    Play mixed =
        new Play(List.of(new Act(9000, OFF), new Act(2000, ON), new Act(5000, POWER)), 10_000, 1);

    assertThat(PlayWaits.waitMillis(mixed, 0)).isEqualTo(4000);
    assertThat(times(with(mixed, 2, "1"))).containsExactly(7000L, 2000L, 3000L);
  }

  @Test
  void allLongWaitingBeforeActsIsCutAtOnce() {
    Play cut = PlayWaits.shortened(RECORDED);

    assertThat(times(cut)).containsExactly(2000L, 2000L, 4000L);
    assertThat(cut.lengthMillis()).as("what is seen afterwards stays").isEqualTo(9500);
    assertThat(PlayWaits.canShorten(RECORDED)).isTrue();
    assertThat(PlayWaits.canShorten(cut)).isFalse();
    assertThat(PlayWaits.canShorten(Play.NOTHING)).isFalse();
  }

  @Test
  void aClaimThatNeededTheWaitingIsDoubtedAndUndoBringsItBack() {
    DirectBench bench = DirectBench.standing();
    LessonModel lesson = new LessonModel(bench.workbench, Runnable::run, Runnable::run);
    EditorModel editor =
        new EditorModel(bench.workbench, lesson, Runnable::run, Runnable::run, bench.mistakes::add);
    editor.create();
    Play called = new Play(List.of(new Act(120_000, OFF), new Act(121_000, ON)), 181_000, 10);
    DraftStep step =
        editor.draft().steps().get(0).with(called).with(List.<Claim>of(new Claim.At(Stage.RUN)));
    editor.change(editor.draft().with(0, step), 0, null);
    editor.changeWaits(PlayWaits.shortened(called));

    assertThat(editor.draft().steps().get(0).play().lengthMillis()).isEqualTo(63_000);
    assertThat(doubts(editor)).as("a minute is enough to run").noneMatch(t -> t.startsWith("Not"));
    editor.changeWaits(with(editor.draft().steps().get(0).play(), 2, "5"));
    assertThat(doubts(editor)).anyMatch(t -> t.startsWith("Not so"));
    editor.undo();
    editor.undo();
    assertThat(editor.draft().steps().get(0).play()).isEqualTo(called);
    assertThat(bench.mistakes).isEmpty();
  }

  private static List<String> doubts(EditorModel editor) {
    return EditorWords.doubts(editor.draft(), editor.checked(), WORDS).stream()
        .map(EditorWords.Doubt::text)
        .toList();
  }
}
