package halfwave.gui.presentation.editor;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Parameter;
import halfwave.gui.presentation.Keeper;
import halfwave.gui.presentation.ProcessFolder;
import halfwave.gui.presentation.RecoveryFolder;
import halfwave.gui.presentation.RecoveryFolder.Found;
import halfwave.gui.presentation.RecoveryFolder.Owner;
import halfwave.gui.presentation.bench.DirectBench;
import halfwave.gui.presentation.bench.RecoveryWords;
import halfwave.gui.presentation.lesson.LessonModel;
import halfwave.io.lesson.DraftRecoveryFile;
import halfwave.io.lesson.ShippedDemonstrations;
import halfwave.lesson.Draft;
import halfwave.lesson.DraftPlace;
import halfwave.lesson.DraftText;
import halfwave.lesson.Play;
import halfwave.sequence.Act;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A demonstration that is being made is kept until it is saved or left, and no longer. */
class DraftAutosaveTest {

  private static final DraftPlace TITLE = DraftPlace.whole(DraftPlace.Field.TITLE);

  @TempDir private Path folder;
  private long process = 1;

  /** One run of the program. */
  private final class Run {
    final DirectBench bench = DirectBench.standing();
    final LessonModel lesson = new LessonModel(bench.workbench, Runnable::run, Runnable::run);
    final EditorModel editor =
        new EditorModel(bench.workbench, lesson, Runnable::run, Runnable::run, bench.mistakes::add);
    final long own = ++process;
    final DraftAutosave autosave =
        new DraftAutosave(
            editor,
            ProcessFolder.of(
                folder, RecoveryFolder.DRAFT, new Owner(own, 1), o -> o.process() == process),
            Runnable::run,
            Runnable::run);

    void copy() {
      editor.begin(NewDraft.copy(ShippedDemonstrations.named("a-dirty-rod").orElseThrow()), null);
    }

    void title(String text) {
      editor.change(editor.draft().with(TITLE, DraftText.EMPTY.with("en", text)), -1, null);
    }

    List<Found<DraftRecoveryFile>> look() {
      List<Found<DraftRecoveryFile>> found = new ArrayList<>();
      autosave.look(found::add, () -> {});
      return found;
    }
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.toList();
    }
  }

  @Test
  void whatWasNotSavedComesBackUnsavedAndCanBeUndone() throws IOException {
    Run crashed = new Run();
    crashed.autosave.tick(0);
    crashed.copy();
    crashed.autosave.tick(1);
    assertThat(files()).as("nothing would be lost yet").isEmpty();
    crashed.title("Mine");
    crashed.autosave.tick(2);
    assertThat(files()).hasSize(1);
    Draft made = crashed.editor.draft();
    Draft begun = crashed.editor.edits().saved();

    Run next = new Run();
    Found<DraftRecoveryFile> left = next.look().get(0);
    assertThat(RecoveryWords.draft(left, DirectBench.ENGLISH)).contains("Mine");
    next.autosave.bringBack(left);
    assertThat(next.editor.draft()).isEqualTo(made);
    assertThat(next.editor.edits().unsaved()).isTrue();
    next.autosave.tick(0);
    assertThat(files()).as("kept anew, and once").hasSize(1);
    next.editor.undo();
    assertThat(next.editor.draft()).isEqualTo(begun);
    next.autosave.end();
    assertThat(files()).isEmpty();
  }

  @Test
  void whatIsSavedOrLeftIsNotKept() throws IOException {
    Run run = new Run();
    run.copy();
    run.title("Mine");
    run.autosave.tick(0);
    run.editor.saved(folder.resolve("mine.json"), "mine");
    run.autosave.tick(1);
    assertThat(files()).isEmpty();
    run.title("More");
    run.autosave.tick(Keeper.PACE_MILLIS);
    assertThat(files()).hasSize(1);
    run.editor.leave(() -> {});
    run.autosave.tick(Keeper.PACE_MILLIS + 1);
    assertThat(files()).isEmpty();
  }

  @Test
  void whoDoesNotWantItIsNotAskedAgain() throws IOException {
    Run crashed = new Run();
    crashed.copy();
    crashed.title("Mine");
    crashed.autosave.tick(0);
    Run next = new Run();
    assertThat(next.look()).hasSize(1);
    next.autosave.leave();
    assertThat(files()).isEmpty();
    assertThat(new Run().look()).isEmpty();
  }

  /** No file for a class may hold it, but its maker was about to mend it. */
  @Test
  void anActThatCannotBeDoneIsKeptToo() {
    Run crashed = new Run();
    crashed.copy();
    Act pushed = new Act(0, DirectBench.turn(Parameter.ROD_ALONG, -0.1));
    Play play = new Play(List.of(pushed), 100, 1);
    Draft draft = crashed.editor.draft();
    crashed.editor.change(draft.with(0, draft.steps().get(0).with(play)), 0, null);
    assertThat(crashed.editor.blocked()).isPresent();
    crashed.autosave.tick(0);

    assertThat(new Run().look().get(0).content().draft()).isEqualTo(crashed.editor.draft());
  }
}
