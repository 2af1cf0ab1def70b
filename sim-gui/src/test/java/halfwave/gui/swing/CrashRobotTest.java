package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Bench;
import halfwave.bench.Change;
import halfwave.bench.Parameter;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.quiz.SmallQuiz;
import halfwave.io.quiz.QuizRecoveryFile;
import halfwave.quiz.Rules;
import halfwave.sequence.Deed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program that is killed loses nothing but the last seconds. */
class CrashRobotTest {

  private static final double PRESSURE_RATIO = 0.5;

  /** No program takes so long to open a window and keep its bench: it hangs (s). */
  private static final long HANG_SECONDS = 120;

  @TempDir private Path folder;

  /** Opens a window, changes the bench and never ends; killed by the test. */
  static final class Killed {
    private Killed() {}

    /** Settings and what is kept lie in the folder that is the only argument. */
    public static void main(String[] args) throws InterruptedException {
      OpenWindow open = OpenWindow.plain(Path.of(args[0]));
      open.want(new Intent.Act(List.of(lowGas()), 0));
      Thread.sleep(TimeUnit.SECONDS.toMillis(HANG_SECONDS));
      System.exit(1);
    }
  }

  private static Deed lowGas() {
    return new Deed.Alter(Change.Turned.to(Parameter.GAS_PRESSURE, PRESSURE_RATIO));
  }

  @Test
  void theBenchComesBackAfterTheProcessIsKilled() throws Exception {
    OpenWindow.needDisplay();
    kill();
    Bench asShipped;
    try (OpenWindow open = OpenWindow.plain(folder)) {
      asShipped = open.shown().moment().bench();
      new Hand(open).answer("Bring back");
      open.await("the bench", () -> open.shown().unsaved());
      Bench back = open.shown().moment().bench();
      assertThat(Parameter.GAS_PRESSURE.of(back)).isEqualTo(PRESSURE_RATIO);
      assertThat(Parameter.GAS_PRESSURE.of(asShipped)).isNotEqualTo(PRESSURE_RATIO);
      // it has the history of a bench that was just opened, and counts as changed
      assertThat(open.frame().getTitle()).contains("changed");
    }
    assertThat(kept()).as("a window that ends as it should leaves nothing").isEmpty();
  }

  @Test
  void whoDoesNotWantItIsNotAskedAgain() throws Exception {
    OpenWindow.needDisplay();
    kill();
    try (OpenWindow open = OpenWindow.plain(folder)) {
      new Hand(open).answer("Leave it");
      open.await("the end of the file", () -> kept().isEmpty());
      assertThat(open.shown().unsaved()).isFalse();
    }
  }

  @Test
  void aQuizAtTheDeskComesBackAndIsShown() throws Exception {
    OpenWindow.needDisplay();
    // of a process that nobody has
    Path left = folder.resolve("desk-999999999-1.json");
    Files.writeString(
        left, new QuizRecoveryFile(SmallQuiz.under(Rules.STANDARD), true, List.of()).text());
    try (OpenWindow open = OpenWindow.plain(folder)) {
      Hand hand = new Hand(open);
      hand.answer("Bring back");
      DeskHands hands = new DeskHands(open, hand, folder);
      hand.find(AbstractButton.class, "desk.fresh");
      hands.idle();
      assertThat(hands.rows("desk.calls")).isEqualTo(2);
    }
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.map(f -> String.valueOf(f.getFileName())).toList())
          .as("a window that ends as it should leaves nothing")
          .noneMatch(f -> f.startsWith("desk-"));
    }
  }

  private void kill() throws Exception {
    String classes =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                classes,
                Killed.class.getName(),
                folder.toString())
            .inheritIO()
            .start();
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(HANG_SECONDS);
    while (kept().isEmpty() && process.isAlive() && System.nanoTime() < end) {
      Thread.sleep(50);
    }
    assertThat(process.isAlive()).as("it runs until it is killed").isTrue();
    process.destroyForcibly().waitFor();
    assertThat(kept()).hasSize(1);
  }

  private List<Path> kept() {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(f -> String.valueOf(f.getFileName()).matches("recovery-.*\\.json"))
          .toList();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
