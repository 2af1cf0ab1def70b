package halfwave.gui.presentation.desk;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.diagnosis.Check;
import halfwave.diagnosis.Occasion;
import halfwave.grading.Routine;
import halfwave.grading.RoutineTrial;
import halfwave.gui.presentation.ProcessFolder;
import halfwave.gui.presentation.RecoveryFolder;
import halfwave.gui.presentation.RecoveryFolder.Found;
import halfwave.gui.presentation.RecoveryFolder.Owner;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.DirectBench;
import halfwave.gui.presentation.bench.RecoveryWords;
import halfwave.gui.presentation.quiz.PracticeModel;
import halfwave.gui.presentation.quiz.SmallQuiz;
import halfwave.io.quiz.RoutineFile;
import halfwave.io.quiz.RoutineRecoveryFile;
import halfwave.work.Look;
import halfwave.work.MeterTest;
import halfwave.work.Repair;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An order of work is written step by step, saved, opened and compared. */
class RoutineModelTest {

  private static final Wording WORDS = DirectBench.ENGLISH;
  private static final Path EXAMPLE = Path.of("..", "docs", "examples", "routine.json");
  private static final Check ROD = new Check.Looked(Look.ROD, Occasion.STANDBY);
  private static final Check CURRENT = new Check.Read(MeterTest.SERIES_CURRENT, Occasion.TRIAL);

  @TempDir private Path folder;

  private final List<Throwable> failures = new ArrayList<>();

  private PracticeModel practice() {
    return SmallQuiz.practice(folder.resolve("settings"), failures::add);
  }

  private static void put(RoutineModel model, int index, Check check, Repair repair) {
    Routine.Step step = model.draft().steps().get(index);
    model.keep(
        model
            .draft()
            .with(index, RoutineDraft.withRepair(RoutineDraft.withCheck(step, check), repair)));
  }

  @Test
  void stepsAreWrittenMovedSavedAndOpened() {
    RoutineModel model = practice().routine();
    assertThat(model.unsaved()).isFalse();
    model.keep(model.draft().withName("rod first").withStepAfter(-1).withStepAfter(0));
    put(model, 0, CURRENT, Repair.REPLACE_ROD);
    put(model, 1, ROD, Repair.CLEAN_ROD_WITH_PAD);
    model.keep(model.draft().with(0, RoutineDraft.withBelow(model.draft().steps().get(0), 1.5)));
    model.keep(
        model
            .draft()
            .with(1, RoutineDraft.withFound(model.draft().steps().get(1), Set.of("rod-glassy"))));
    model.keep(model.draft().swapped(0, 1));
    assertThat(model.unsaved()).isTrue();
    assertThat(new RoutineTables(WORDS).steps(model.draft()).rows())
        .extracting(r -> r.get(2))
        .first()
        .asString()
        .doesNotContain("always");
    Path file = folder.resolve("own.halfwave");
    model.save(file);
    assertThat(model.said(WORDS)).isEqualTo("Written: own.halfwave.");
    assertThat(model.unsaved()).isFalse();
    Routine read = RoutineFile.read(file);
    assertThat(read.steps()).isEqualTo(model.draft().steps());
    assertThat(read.steps().get(1).belowAmps()).isEqualTo(1.5e-6);
    model.fresh();
    assertThat(model.draft().steps()).isEmpty();
    model.open(file);
    assertThat(model.draft()).isEqualTo(new RoutineDraft(read.name(), read.steps()));
    assertThat(RoutineDraft.below(model.draft().steps().get(1))).isEqualTo(1.5);
    assertThat(failures).isEmpty();
  }

  @Test
  void anotherCheckTakesItsFindingsAlong() {
    Routine.Step step =
        new Routine.Step(ROD, Set.of("rod-glassy"), Double.NaN, Double.NaN, Repair.REPLACE_ROD);
    assertThat(RoutineDraft.withCheck(step, CURRENT).found()).isEmpty();
    Routine.Step below = RoutineDraft.withBelow(RoutineDraft.withCheck(step, CURRENT), 2);
    assertThat(RoutineDraft.withCheck(below, ROD).belowAmps()).isNaN();
  }

  @Test
  void whatIsMissingIsSaidAndItIsSavedAllTheSame() throws Exception {
    PracticeModel practice = practice();
    RoutineModel model = practice.routine();
    Path file = folder.resolve("own.json");
    model.save(file);
    assertThat(model.said(WORDS)).contains("not finished", "name");
    model.keep(model.draft().withName("mine"));
    model.save(file);
    assertThat(model.said(WORDS)).contains("at least one step");
    model.keep(model.draft().withStepAfter(-1));
    practice.compare();
    assertThat(model.said(WORDS)).startsWith("Step 1 says neither");
    model.save(file);
    assertThat(model.unsaved()).isFalse();
    RoutineDraft unfinished = model.draft();
    model.fresh();
    model.open(file);
    assertThat(model.draft()).isEqualTo(unfinished);
    Files.writeString(file, "{\"format\": \"halfwave-routine\", \"version\": 1}");
    model.open(file);
    assertThat(model.said(WORDS)).contains("own.json", "name");
    assertThat(model.draft()).isEqualTo(unfinished);
  }

  /** The desk's keeper has its own test; this is what an order of work adds to it. */
  @Test
  void anUnfinishedOneComesBackUnsavedAfterACrash() {
    RoutineModel crashed = practice().routine();
    WorkAutosave<RoutineRecoveryFile> kept = autosave(crashed, 1);
    kept.tick(0);
    crashed.keep(crashed.draft().withName("mine").withStepAfter(-1));
    kept.tick(1);

    RoutineModel next = practice().routine();
    WorkAutosave<RoutineRecoveryFile> autosave = autosave(next, 2);
    List<Found<RoutineRecoveryFile>> found = new ArrayList<>();
    autosave.look(found::add, () -> {});
    assertThat(RecoveryWords.routine(found.get(0), WORDS)).contains("mine");
    autosave.bringBack(found.get(0));
    assertThat(next.draft()).isEqualTo(crashed.draft());
    assertThat(next.unsaved()).isTrue();
    autosave.tick(2);
    next.save(folder.resolve("own.halfwave"));
    autosave.tick(3);
    assertThat(folder).isDirectoryNotContaining("glob:**routine-*");
  }

  private WorkAutosave<RoutineRecoveryFile> autosave(RoutineModel model, long process) {
    return WorkAutosave.of(
        model,
        ProcessFolder.of(
            folder, RecoveryFolder.ROUTINE, new Owner(process, 1), o -> o.process() == process),
        Runnable::run,
        Runnable::run);
  }

  @Test
  void itIsComparedOnTheCallsOfTheChoice() {
    PracticeModel practice = practice();
    RoutineModel model = practice.routine();
    model.open(EXAMPLE);
    practice.compare();
    assertThat(failures).isEmpty();
    assertThat(model.trials()).hasSize(2).allMatch(t -> t.expertMinutes() > 0);
    long whole = model.trials().stream().filter(RoutineTrial::whole).count();
    assertThat(model.said(WORDS)).isEqualTo("Put right: " + whole + " of 2 calls.");
    assertThat(new RoutineTables(WORDS).trials(model.trials()).rows())
        .extracting(r -> r.get(0))
        .containsExactly("Cold mornings", "After the move");
    model.keep(model.draft().without(0));
    assertThat(model.trials()).isEmpty();
  }
}
