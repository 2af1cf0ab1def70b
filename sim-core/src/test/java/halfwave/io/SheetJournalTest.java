package halfwave.io;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.quiz.AnswerSheet;
import halfwave.quiz.CallSheet;
import halfwave.quiz.InventedClass;
import halfwave.quiz.Move;
import halfwave.quantity.Noise;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
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
      Process process =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-cp",
                  System.getProperty("java.class.path"),
                  Taking.class.getName(),
                  file.toString())
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      int told;
      try (BufferedReader out =
          new BufferedReader(
              new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
        // the program has begun
        String first = out.readLine();
        assertThat(first).isEqualTo("1");
        double wait = MOST_SECONDS * Noise.uniform(7, Noise.Purpose.VARIANT, k);
        Thread.sleep(Math.round(1000 * wait));
        process.destroyForcibly().waitFor();
        told = 1;
        for (String line = out.readLine(); line != null; line = out.readLine()) {
          // the last line may be cut
          told = line.matches("\\d+") ? Math.max(told, Integer.parseInt(line)) : told;
        }
      }
      AnswerSheet kept = SheetFile.read(file, InventedClass.quiz());
      int moves = kept.calls().get(0).moves().size();
      assertThat(moves).as("killed after " + told).isBetween(told, told + 1);
    }
  }
}
