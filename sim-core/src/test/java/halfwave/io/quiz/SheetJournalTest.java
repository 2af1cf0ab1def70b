package halfwave.io.quiz;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.io.AtomicFile;
import halfwave.quantity.Noise;
import halfwave.quiz.AnswerSheet;
import halfwave.quiz.CallSheet;
import halfwave.quiz.InventedClass;
import halfwave.quiz.Move;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A process that is killed in the middle of an examination loses at most the last act: another
 * process writes a sheet anew after each move, is killed at any moment, and the sheet holds every
 * move that it had told of.
 */
class SheetJournalTest {

  private static final int KILLED = Boolean.getBoolean("halfwave.deep") ? 100 : 5;
  private static final int MOST_MOVES = 400;
  private static final double MOST_SECONDS = 0.6;

  @TempDir Path folder;

  /** What is killed: notes, one after the other, each told once it is written. */
  public static final class Taking {

    private Taking() {}

    /** Takes a call until somebody ends it. */
    public static void main(String[] args) {
      List<CallSheet.Logged> moves = new ArrayList<>();
      String call = InventedClass.quiz().calls().get(0).name();
      while (moves.size() < MOST_MOVES) {
        moves.add(new CallSheet.Logged(new Move.Note("note " + moves.size()), 0, 0, ""));
        AnswerSheet sheet =
            new AnswerSheet(
                "e",
                InventedClass.quiz().name(),
                "h",
                "A-01",
                1,
                List.of(new CallSheet(call, moves, null)));
        AtomicFile.write(Path.of(args[0]), SheetFile.text(sheet));
        System.out.println(moves.size());
      }
    }
  }

  @Test
  void losesAtMostTheLastAct() throws IOException, InterruptedException {
    for (int k = 0; k < KILLED; k++) {
      Path file = folder.resolve(k + ".json");
      Path said = folder.resolve(k + ".txt");
      Process process =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-cp",
                  System.getProperty("java.class.path"),
                  Taking.class.getName(),
                  file.toString())
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .redirectOutput(said.toFile())
              .start();
      while (process.isAlive() && !Files.exists(file)) {
        Thread.sleep(5);
      }
      Thread.sleep(Math.round(1000 * MOST_SECONDS * Noise.uniform(7, Noise.Purpose.VARIANT, k)));
      process.destroyForcibly().waitFor();
      String lines = Files.readString(said);
      // the last line may be cut
      long told = lines.chars().filter(c -> c == '\n').count();
      AnswerSheet kept = SheetFile.read(file, InventedClass.quiz());
      int moves = kept.calls().get(0).moves().size();
      assertThat(moves).as("killed after " + told).isBetween((int) told, (int) told + 1);
    }
  }
}
