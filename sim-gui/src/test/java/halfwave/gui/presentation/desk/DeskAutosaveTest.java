package halfwave.gui.presentation.desk;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.gui.presentation.ProcessFolder;
import halfwave.gui.presentation.RecoveryFolder;
import halfwave.gui.presentation.RecoveryFolder.Found;
import halfwave.gui.presentation.RecoveryFolder.Owner;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.DirectBench;
import halfwave.gui.presentation.bench.RecoveryWords;
import halfwave.gui.presentation.quiz.SmallQuiz;
import halfwave.io.quiz.QuizRecoveryFile;
import halfwave.quiz.Assembly;
import halfwave.quiz.BlueprintRow;
import halfwave.quiz.Level;
import halfwave.quiz.Objective;
import halfwave.quiz.Rules;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A quiz at the instructor's desk is kept until it is saved or left, and no longer. */
class DeskAutosaveTest {

  private static final Wording WORDS = DirectBench.ENGLISH;

  @TempDir private Path folder;
  private final List<Throwable> failures = new ArrayList<>();
  private long process = 1;

  /** One run of the program. */
  private final class Run {
    final DeskModel desk =
        new DeskModel(
            Runnable::run,
            Runnable::run,
            () -> SmallQuiz.under(Rules.STANDARD),
            SmallQuiz.OUTLOOKS,
            () -> Instant.EPOCH,
            failures::add);
    final long own = ++process;
    final WorkAutosave<QuizRecoveryFile> autosave =
        WorkAutosave.of(
            desk,
            ProcessFolder.of(
                folder, RecoveryFolder.QUIZ, new Owner(own, 1), o -> o.process() == process),
            Runnable::run,
            Runnable::run);

    DeskDraft draft() {
      return Objects.requireNonNull(desk.state().draft());
    }

    List<Found<QuizRecoveryFile>> look() {
      List<Found<QuizRecoveryFile>> found = new ArrayList<>();
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
  void whatWasNotSavedComesBackUnsaved() throws IOException {
    Run crashed = new Run();
    crashed.autosave.tick(0);
    crashed.desk.begin();
    crashed.autosave.tick(1);
    assertThat(files()).as("nothing would be lost yet").isEmpty();
    crashed.desk.keep(
        crashed
            .draft()
            .withTitle("Spring", "Primavera")
            .withRow(new Assembly(new BlueprintRow(Objective.ROD, Level.BASIC, 2), 7)));
    crashed.desk.create(WORDS);
    crashed.autosave.tick(2);
    assertThat(files()).hasSize(1);

    Run next = new Run();
    Found<QuizRecoveryFile> left = next.look().get(0);
    assertThat(RecoveryWords.quiz(left, WORDS)).contains("Spring");
    next.autosave.tick(0);
    next.autosave.bringBack(left);
    assertThat(next.draft()).isEqualTo(crashed.draft());
    assertThat(next.desk.state().unsaved()).isTrue();
    next.autosave.tick(1);
    assertThat(files()).as("kept anew, and once").hasSize(1);
    next.desk.save(folder.resolve("own.json"));
    assertThat(next.desk.state().unsaved()).isFalse();
    next.autosave.tick(2);
    assertThat(files()).extracting(f -> f.getFileName().toString()).containsExactly("own.json");
    assertThat(failures).isEmpty();
  }

  @Test
  void aQuizWithoutCallsIsKeptToo() {
    Run crashed = new Run();
    crashed.desk.begin();
    crashed.desk.keep(crashed.draft().withName("autumn").withSeed(12));
    crashed.autosave.tick(0);
    Run next = new Run();
    next.autosave.bringBack(next.look().get(0));
    assertThat(next.draft()).isEqualTo(crashed.draft());
    assertThat(next.draft().calls()).isEmpty();
  }

  @Test
  void whoDoesNotWantItIsNotAskedAgain() throws IOException {
    Run crashed = new Run();
    crashed.desk.begin();
    crashed.desk.create(WORDS);
    crashed.autosave.tick(0);
    Run next = new Run();
    assertThat(next.look()).hasSize(1);
    next.autosave.leave();
    assertThat(files()).isEmpty();
    assertThat(new Run().look()).isEmpty();
  }

  @Test
  void aSpoiltFileStopsNobody() throws IOException {
    Files.writeString(folder.resolve("desk-1-1.json"), "{\"format\": \"halfwave-quiz-recovery\"}");
    assertThat(new Run().look()).isEmpty();
    assertThat(files()).extracting(Path::toString).allMatch(f -> f.endsWith(".broken"));
  }
}
