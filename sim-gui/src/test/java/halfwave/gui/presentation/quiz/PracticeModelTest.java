package halfwave.gui.presentation.quiz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.fault.FaultGroup;
import halfwave.fault.FaultKind;
import halfwave.grading.Expectation;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.DirectBench;
import halfwave.gui.presentation.desk.MarksView;
import halfwave.io.quiz.ProgressFile;
import halfwave.quiz.Conclusion;
import halfwave.quiz.Help;
import halfwave.quiz.Level;
import halfwave.quiz.Move;
import halfwave.quiz.Objective;
import halfwave.quiz.Phase;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Visit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Practice: help that fades, what is taken back, marks at the end, progress that is kept. */
class PracticeModelTest {

  private static final Wording WORDS = DirectBench.ENGLISH;
  private static final Move CALL = new Move.Checked(new Check.Call());

  @TempDir private Path folder;

  private final List<Throwable> failures = new ArrayList<>();

  private PracticeModel model() {
    return SmallQuiz.practice(folder.resolve("settings"), failures::add);
  }

  private PracticeModel begun(Help help) {
    PracticeModel model = model();
    model.narrow(null, null, help);
    model.begin(model.calls().get(0));
    assertThat(failures).isEmpty();
    return model;
  }

  private static Visit visit(PracticeModel model) {
    return Objects.requireNonNull(model.visit());
  }

  @Test
  void callsAreNarrowedDown() {
    PracticeModel model = model();
    assertThat(model.calls()).hasSize(2);
    model.narrow(Objective.BOARD, null, null);
    assertThat(model.calls()).isEmpty();
    model.narrow(Objective.ROD, Level.BASIC, null);
    assertThat(model.calls()).hasSize(2);
  }

  @Test
  void whoIsShownEachStepEndsWithNearlyAllMarks() {
    PracticeModel model = begun(Help.WORKED);
    assertThat(Objects.requireNonNull(model.step()).text(WORDS)).contains("Watch a call");
    assertThat(model.hints()).isFalse();
    for (int k = 0; k < 60 && model.marks() == null; k++) {
      model.follow();
    }
    assertThat(failures).isEmpty();
    MarksView view = MarksView.of(Objects.requireNonNull(model.marks()), WORDS);
    // an expert who has seen nothing but the readings may miss a point here and there
    assertThat(model.marks().totalRatio()).isGreaterThan(0.85);
    assertThat(view.truth().get(0)).contains("silica");
    assertThat(view.marks()).hasSize(6);
    assertThat(view.moves()).hasSameSizeAs(visit(model).log());
    assertThat(model.progress().next(Objective.ROD)).isEqualTo(Help.COMPLETING);
    assertThat(ProgressFile.read(folder.resolve("settings").resolve("progress.json")))
        .isEqualTo(model.progress());
    assertThat(model().progress()).as("at the next start").isEqualTo(model.progress());
    assertThat(ProgressView.of(model, WORDS).progress())
        .as("no marks for what was watched")
        .singleElement()
        .asString()
        .endsWith("calls 1, the last one was shown by the coach");
    model.export(folder.resolve("mine.json"));
    assertThat(ProgressFile.read(folder.resolve("mine.json"))).isEqualTo(model.progress());
  }

  @Test
  void whatIsBegunForSomebodyIsLeftToBeEnded() {
    PracticeModel model = begun(Help.COMPLETING);
    assertThat(visit(model).log()).hasSizeGreaterThan(2);
    assertThat(visit(model).log()).anyMatch(d -> d.move() instanceof Move.Suspects);
    assertThat(model.phase()).isNotEqualTo(Phase.DESCRIBE);
    assertThat(model.step()).isNull();
    assertThat(model.marks()).isNull();
    assertThat(model.undoable()).as("the coach's part stays").isFalse();
  }

  @Test
  void beforeACheckIsDoneItIsAskedWhatIsExpected() {
    PracticeModel model = begun(Help.ASKING);
    model.want(CALL);
    assertThat(model.asked()).isEqualTo(CALL);
    assertThat(visit(model).log()).isEmpty();
    model.dropAsked();
    assertThat(model.asked()).isNull();
    model.want(CALL);
    Expectation first = Expectation.of(new Check.Call()).get(0);
    model.answer(first, Set.of(FaultGroup.ROD, FaultGroup.LEAD));
    assertThat(model.asked()).isNull();
    List<String> remarks = VisitView.of(model, visit(model), WORDS).log().get(0).more();
    assertThat(remarks.get(0)).contains("xpected", "%");
    assertThat(remarks.get(1)).contains("rod, lead", "%");
    assertThat(remarks).anyMatch(r -> r.startsWith("Ruled out"));
    model.want(new Move.Power(false));
    assertThat(visit(model).power()).as("a switch is no question").isFalse();
  }

  @Test
  void whoIsAloneHearsNothingButMayAskAndTakeBack() {
    PracticeModel model = begun(Help.NONE);
    Visit before = visit(model);
    model.want(CALL);
    assertThat(VisitView.of(model, visit(model), WORDS).log().get(0).more()).isEmpty();
    model.want(new Move.Hint(3));
    assertThat(VisitView.of(model, visit(model), WORDS).log().get(1).more().get(0))
        .startsWith("Next:");
    model.undo();
    model.undo();
    assertThat(visit(model)).isSameAs(before);
    assertThat(model.undoable()).isFalse();
  }

  @Test
  void whatIsDangerousCanBeTakenBackHere() {
    PracticeModel model = begun(Help.NONE);
    model.want(new Move.Signal(true));
    assertThat(model.closed()).isTrue();
    model.undo();
    assertThat(model.closed()).isFalse();
    model.want(new Move.Gas(true));
    assertThat(model.said(WORDS)).isEqualTo("Not possible: it is so already.");
  }

  @Test
  void aConclusionIsMarkedAndOneThatIsMissingToo() {
    PracticeModel model = begun(Help.NONE);
    model.conclude(new Conclusion(Cause.of(FaultKind.BOARD_FAULT), null, null));
    assertThat(MarksView.of(Objects.requireNonNull(model.marks()), WORDS).truth())
        .anyMatch(t -> t.startsWith("You said"));
    model.leave();
    assertThat(model.call()).isNull();
    ServiceCall second = model.calls().get(1);
    model.begin(second);
    model.giveUp();
    assertThat(Objects.requireNonNull(model.marks()).said()).isNull();
    assertThat(model.progress().calls()).isEqualTo(2);
    assertThat(model.progress().practised().get(Objective.ROD).marks().get(1))
        .isCloseTo(model.marks().totalRatio(), within(0.0));
  }

  @Test
  void aFileThatCannotBeReadIsToldAndLeftAlone() throws Exception {
    Files.createDirectories(folder.resolve("settings"));
    Path file = folder.resolve("settings").resolve("progress.json");
    Files.writeString(file, "{}");
    PracticeModel model = model();
    assertThat(model.said(WORDS)).contains("progress.json");
    model.begin(model.calls().get(0));
    model.giveUp();
    assertThat(model.said(WORDS)).contains("progress.json");
    assertThat(Files.readString(file)).isEqualTo("{}");
    assertThat(failures).isEmpty();
  }
}
