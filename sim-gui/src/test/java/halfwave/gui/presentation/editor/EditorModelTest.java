package halfwave.gui.presentation.editor;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Parameter;
import halfwave.board.Stage;
import halfwave.gui.presentation.ManualExecutor;
import halfwave.gui.presentation.bench.DirectBench;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.lesson.LessonModel;
import halfwave.io.lesson.ShippedDemonstrations;
import halfwave.lesson.Claim;
import halfwave.lesson.Draft;
import halfwave.lesson.DraftPlace;
import halfwave.lesson.DraftQuestion;
import halfwave.lesson.DraftStep;
import halfwave.lesson.DraftText;
import halfwave.lesson.Play;
import halfwave.lesson.Playthrough;
import halfwave.sequence.Act;
import halfwave.sequence.Deed;
import halfwave.sequence.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A demonstration is recorded from the bench, checked and tried. */
class EditorModelTest {

  private final DirectBench bench = DirectBench.standing();
  private final LessonModel lesson = new LessonModel(bench.workbench, Runnable::run, Runnable::run);
  private final EditorModel editor =
      new EditorModel(bench.workbench, lesson, Runnable::run, Runnable::run, bench.mistakes::add);

  private DraftStep step() {
    return editor.draft().steps().get(editor.step());
  }

  private void change(DraftStep step) {
    editor.change(editor.draft().with(editor.step(), step), editor.step(), null);
  }

  /**
   * A question whose right answer says the board runs at the end, and a wrong one that it waits.
   */
  private void ask(Stage right, Stage wrong) {
    DraftQuestion asked = DraftQuestion.EMPTY;
    asked = asked.with(0, asked.answers().get(0).with(List.of(new Claim.At(right))));
    asked = asked.with(1, asked.answers().get(1).with(List.of(new Claim.At(wrong))));
    change(step().with(asked));
  }

  private List<EditorWords.Doubt> doubts() {
    return EditorWords.doubts(editor.draft(), editor.checked(), DirectBench.ENGLISH);
  }

  private Stream<String> texts() {
    return doubts().stream().map(EditorWords.Doubt::text);
  }

  @Test
  void aNewOneBeginsWithTheBenchAsItStands() {
    bench.want(
        DirectBench.act(DirectBench.turn(Parameter.GROUND, 1e6)),
        DirectBench.act(new Deed.Call(false)));
    editor.create();
    Draft draft = editor.draft();
    assertThat(Parameter.GROUND.of(draft.bench())).isEqualTo(1e6);
    Moment begin = Playthrough.begin(draft.demonstration()).moment();
    assertThat(begin.call()).isFalse();
    assertThat(begin.supply()).isTrue();
    assertThat(Objects.requireNonNull(begin.hooked()).hookUp())
        .isEqualTo(Objects.requireNonNull(bench.moment().hooked()).hookUp());
    assertThat(editor.edits().unsaved()).isFalse();
  }

  @Test
  void nothingBeginsWithASealedBenchUntilItIsRevealed() {
    bench.want(DirectBench.act(DirectBench.turn(Parameter.GROUND, 1e6)), new Intent.Hide());
    editor.create();
    assertThat(editor.open()).isFalse();
    editor.begin(NewDraft.copy(ShippedDemonstrations.named("a-dirty-rod").orElseThrow()), null);
    Draft copy = editor.draft();
    List<Boolean> told = new ArrayList<>();
    editor.subscribe(() -> told.add(editor.sealed()));
    editor.rebench();
    assertThat(editor.draft()).isEqualTo(copy);
    bench.want(new Intent.Reveal(null));
    assertThat(told).as("the buttons follow").containsExactly(false);
    editor.rebench();
    assertThat(Parameter.GROUND.of(editor.draft().bench())).isEqualTo(1e6);
  }

  @Test
  void aFaultThatIsSealedMeanwhileGoesOnWhenTheEditorCloses() {
    bench.want(DirectBench.act(DirectBench.turn(Parameter.ROD_FILM, 1e-5)));
    State before = bench.shown();
    editor.create();
    editor.choose(0);
    editor.toBegin();
    bench.want(DirectBench.act(DirectBench.turn(Parameter.GROUND, 1e6)), new Intent.Hide());
    State sealed = bench.shown();
    editor.record();
    editor.toEnd();
    assertThat(editor.tryIt()).isFalse();
    assertThat(bench.shown()).as("nothing ends what the class looks for").isEqualTo(sealed);

    List<String> left = new ArrayList<>();
    editor.leave(() -> left.add("left"));
    assertThat(left).containsExactly("left");
    assertThat(bench.shown()).isEqualTo(sealed);
    bench.want(new Intent.Reveal(null));
    assertThat(Objects.requireNonNull(bench.shown().seal()).closed()).isFalse();

    bench.want(new Intent.Unseal());
    assertThat(bench.shown()).as("then the bench before the editor is back").isEqualTo(before);
    assertThat(bench.mistakes).isEmpty();
  }

  @Test
  void afterTheSealABenchThatWasOpenedSinceStays() {
    editor.create();
    editor.choose(0);
    editor.toBegin();
    bench.want(new Intent.Hide());
    editor.leave(() -> {});
    bench.want(DirectBench.opens(bench.moment().bench()));
    State opened = bench.shown();
    bench.want(new Intent.StepOn(1000L));
    assertThat(bench.shown().paper()).isSameAs(opened.paper());
    assertThat(bench.moment().timeMillis()).isEqualTo(opened.moment().timeMillis() + 1000);
  }

  @Test
  void whatIsDoneWhileItRecordsBecomesThePlayAndTheBenchComesBack() {
    bench.want(DirectBench.act(DirectBench.turn(Parameter.ROD_FILM, 1e-5)));
    State before = bench.shown();
    editor.create();
    editor.choose(0);
    editor.record();
    assertThat(editor.bench().recording()).isTrue();
    assertThat(bench.shown().clock().running()).isTrue();
    bench.want(
        new Intent.Pass(400),
        DirectBench.act(new Deed.Call(false)),
        new Intent.Speed(10),
        new Intent.Pass(300));
    assertThat(EditorWords.recorded(editor.bench().taken().orElseThrow(), DirectBench.ENGLISH))
        .contains("thermostat");
    editor.keep();
    Play play = step().play();
    assertThat(play.acts()).containsExactly(new Act(400, new Deed.Call(false)));
    assertThat(play.lengthMillis()).isEqualTo(3500);
    assertThat(play.speedRatio()).isEqualTo(10);
    assertThat(bench.shown().clock().running()).isFalse();
    editor.undo();
    assertThat(step().play()).isEqualTo(Play.NOTHING);
    List<String> left = new ArrayList<>();
    editor.leave(() -> left.add("left"));
    assertThat(left).containsExactly("left");
    assertThat(bench.shown()).isEqualTo(before);
    assertThat(bench.mistakes).isEmpty();
  }

  @Test
  void aRecordingIsDiscardedOrLostAndTheStepStaysAsItWas() {
    editor.create();
    editor.choose(0);
    editor.record();
    bench.want(DirectBench.act(new Deed.Call(false)));
    editor.discard();
    assertThat(step().play()).isEqualTo(Play.NOTHING);
    assertThat(editor.bench().lost()).isFalse();
    editor.record();
    bench.want(DirectBench.opens(bench.moment().bench()));
    assertThat(editor.bench().recording()).isFalse();
    assertThat(editor.bench().lost()).isTrue();
    editor.keep();
    assertThat(step().play()).isEqualTo(Play.NOTHING);
  }

  @Test
  void anotherDraftEndsARecording() {
    editor.create();
    editor.choose(0);
    editor.record();
    editor.create();
    assertThat(editor.bench().recording()).isFalse();
    assertThat(bench.shown().clock().running()).isFalse();
    editor.keep();
    assertThat(editor.edits().unsaved()).isFalse();
  }

  @Test
  void theNextStepIsRecordedFromWhereTheOneBeforeEnds() {
    editor.create();
    editor.choose(0);
    change(step().with(new Play(List.of(new Act(0, new Deed.Call(false))), 60_000, 1)));
    editor.change(editor.draft().inserted(1, DraftStep.EMPTY), 1, null);
    editor.toBegin();
    List<Moment> moments = Playthrough.moments(editor.draft().demonstration());
    assertThat(bench.moment()).isEqualTo(moments.get(1));
    editor.toEnd();
    assertThat(bench.moment()).isEqualTo(moments.get(2));
    editor.choose(0);
    editor.toEnd();
    List<Found> found = new ArrayList<>();
    editor.find(null, found::add);
    assertThat(found.get(0).begun()).isTrue();
    assertThat(found.get(0).holds(new Claim.Enters(Stage.STANDBY, 1, 1))).contains(true);
  }

  @Test
  void theCheckFindsWhatWasPlantedAndNothingElse() {
    editor.create();
    editor.choose(0);
    assertThat(doubts()).as("nobody asked").isEmpty();
    ask(Stage.STANDBY, Stage.RUN);
    change(step().with(List.<Claim>of(new Claim.At(Stage.TRIAL))));
    editor.check();
    assertThat(texts().filter(t -> !t.startsWith("Missing")))
        .containsExactly(
            "Not so: Stage of the board: trial for ignition",
            "Answer A is said to be right, and it is not so: Stage of the board: standby",
            "Answer B is said to be wrong, and yet all it claims comes true.");
    editor.changeClaims(0, List.of());
    assertThat(texts()).anyMatch(t -> t.contains("no claim that proves it"));
    assertThat(EditorWords.status(editor.draft(), editor.checked(), DirectBench.ENGLISH))
        .contains("Not checked");
    editor.changeClaims(0, List.of(new Claim.At(Stage.RUN)));
    editor.changeClaims(1, List.of(new Claim.At(Stage.STANDBY)));
    editor.changeClaims(null, List.of());
    editor.check();
    assertThat(texts()).isNotEmpty().allMatch(t -> t.startsWith("Missing"));
  }

  @Test
  void whatIsShippedIsWithoutDoubtAndWordsDoNotMakeACheckStale() {
    editor.begin(NewDraft.copy(ShippedDemonstrations.named("a-dirty-rod").orElseThrow()), null);
    editor.check();
    assertThat(doubts()).isEmpty();
    DraftPlace title = DraftPlace.whole(DraftPlace.Field.TITLE);
    editor.change(editor.draft().with(title, DraftText.EMPTY.with("en", "Mine")), -1, null);
    assertThat(EditorWords.status(editor.draft(), editor.checked(), DirectBench.ENGLISH))
        .startsWith("✓");
    editor.change(editor.draft().with(title, DraftText.EMPTY), -1, null);
    assertThat(texts()).containsExactly("Missing: Title.");
  }

  @Test
  void aCheckCanBeGivenUp() {
    ManualExecutor slow = new ManualExecutor();
    EditorModel patient =
        new EditorModel(bench.workbench, lesson, slow, Runnable::run, bench.mistakes::add);
    patient.create();
    patient.check();
    assertThat(patient.checked().busy()).isTrue();
    patient.cancelCheck();
    slow.run();
    assertThat(patient.checked().busy()).isFalse();
    assertThat(patient.checked().of(patient.draft())).isEmpty();
  }

  @Test
  void whatCannotBeDoneIsRefusedInWordsBeforeItIsPlayed() {
    editor.create();
    editor.choose(0);
    // into the burner
    Deed pushed = DirectBench.turn(Parameter.ROD_ALONG, -0.1);
    change(step().with(new Play(List.of(new Act(0, pushed)), 100, 1)));
    editor.check();
    editor.record();
    assertThat(editor.tryIt()).isFalse();
    assertThat(editor.bench().recording()).isFalse();
    String line =
        EditorWords.blocked(editor.stopped().orElseThrow(), editor.draft(), DirectBench.ENGLISH);
    assertThat(line).startsWith("1. (no heading)");
    editor.undo();
    assertThat(editor.tryIt()).isTrue();
    assertThat(bench.mistakes).isEmpty();
  }

  @Test
  void itIsTriedFromTheChosenStepAndTheBenchComesBack() {
    editor.begin(NewDraft.copy(ShippedDemonstrations.named("a-dirty-rod").orElseThrow()), null);
    State before = bench.shown();
    editor.choose(2);
    editor.tryIt();
    assertThat(Objects.requireNonNull(lesson.at()).stepIndex()).isEqualTo(2);
    lesson.end();
    assertThat(bench.shown()).isEqualTo(before);
  }
}
