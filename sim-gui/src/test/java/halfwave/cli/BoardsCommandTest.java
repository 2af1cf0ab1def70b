package halfwave.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import halfwave.board.ShippedBoards;
import halfwave.board.StatusCode;
import halfwave.io.bench.BoardFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code boards}. */
class BoardsCommandTest {

  private static final String BOARD = "nitride-learning";

  @TempDir Path folder;

  @Test
  void shippedBoardsAndCodesAreListed() throws IOException {
    CommandRun run = CommandRun.of("boards");
    JsonNode all = new ObjectMapper().readTree(CommandRun.of("boards", "--json").out());

    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("pilot-one-trial", "——•••", "hard lockout");
    assertThat(all.get("boards")).hasSize(ShippedBoards.all().size());
    assertThat(all.get("statusCodes")).hasSize(StatusCode.values().length);
    assertThat(CommandRun.of("boards", "--language=es").out()).contains("bloqueo duro");
  }

  @Test
  void oneBoardIsShownWithItsNumbersAndUnits() {
    assertThat(CommandRun.of("boards", BOARD).out())
        .contains(BOARD + ": silicon nitride")
        .containsPattern("sensing.pickUpAmps +0.800 µA +DC from which")
        .containsPattern("times.warmUpMillis +30 s ")
        .containsPattern("learning.stepMillis +4 s ")
        .containsPattern("counting.falseFlameLockoutMillis +never ")
        .contains("flame, weak signal");
    assertThat(CommandRun.of("boards", "pilot-retry", "--language=es").out())
        .containsPattern("times.selfCheckMillis +0,6 s ")
        .doesNotContain("learning.");
  }

  /** Every field of the file is shown. */
  @Test
  void noNumberIsLeftOut() throws IOException {
    String page = CommandRun.of("boards", BOARD).out();
    JsonNode file = new ObjectMapper().readTree(CommandRun.of("boards", BOARD, "--json").out());
    for (String group : new String[] {"sensing", "times", "counting", "learning"}) {
      assertThat(file.get(group).fieldNames())
          .toIterable()
          .allSatisfy(name -> assertThat(page).contains(group + "." + name + " "));
    }
  }

  @Test
  void aWrittenBoardIsReadAgain() throws IOException {
    Path file = folder.resolve("mine.json");

    CommandRun run = CommandRun.of("boards", BOARD, "--write=" + file);

    assertThat(run).isEqualTo(new CommandRun(0, "", ""));
    assertThat(BoardFile.read(file)).isEqualTo(ShippedBoards.named(BOARD).orElseThrow());
    assertThat(CommandRun.of("boards", BOARD, "--json").out()).isEqualTo(Files.readString(file));
    assertThat(CommandRun.of("boards", file.toString()).out())
        .isEqualTo(CommandRun.of("boards", BOARD).out());
  }

  /** What somebody edited is not lost by writing once more. */
  @Test
  void aFileThatIsThereStays() throws IOException {
    Path file = folder.resolve("mine.json");
    Files.writeString(file, "mine");

    CommandRun refused = CommandRun.of("boards", BOARD, "--write=" + file);
    assertThat(refused.status()).isEqualTo(2);
    assertThat(refused.complaints()).singleElement().asString().contains("--replace");
    assertThat(file).hasContent("mine");

    assertThat(CommandRun.of("boards", BOARD, "--write=" + file, "--replace").status()).isZero();
    assertThat(Files.readString(file)).contains("halfwave-board");
  }

  /** An edited board does not pass for the shipped one. */
  @Test
  void anEditedBoardSaysSo() throws IOException {
    Path file = folder.resolve("edited.json");
    CommandRun.of("boards", BOARD, "--write=" + file);
    String text = Files.readString(file);
    assertThat(text).contains("\"mostTrials\" : 3");
    Files.writeString(file, text.replace("\"mostTrials\" : 3", "\"mostTrials\" : 2"));

    assertThat(CommandRun.of("boards", file.toString()).out()).doesNotContain("3 trials");
    assertThat(CommandRun.of("sequence", "hot-surface-natural-gas", "--board=" + file).out())
        .contains(BOARD + " (edited)");
  }

  @Test
  void badUsageIsOneLineAndWritesNothing() {
    String[][] wrong = {
      {"boards", "no-such-board"},
      {"boards", "--write=" + folder.resolve("a.json")},
      {"boards", BOARD, "--write=" + folder},
      {"boards", BOARD, "--write=" + folder.resolve("none/a.json")}
    };
    for (String[] args : wrong) {
      CommandRun run = CommandRun.of(args);

      assertThat(run.status()).as(String.join(" ", args)).isEqualTo(2);
      assertThat(run.out()).isEmpty();
      assertThat(run.complaints()).hasSize(1);
    }
    assertThat(folder).isEmptyDirectory();
  }
}
