package halfwave.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code spice}; that its decks run is tested in the core. */
class SpiceCommandTest {

  @TempDir Path folder;

  private String one() throws IOException {
    return Files.writeString(folder.resolve("one.json"), CircuitCommandTest.GOOD).toString();
  }

  private String two() throws IOException {
    String text = CircuitCommandTest.GOOD;
    String other = text.replace("\"frequencyHz\": 60", "\"frequencyHz\": 50");
    return Files.writeString(folder.resolve("two.json"), "[" + text + "," + other + "]").toString();
  }

  @Test
  void deckIsPrinted() throws IOException {
    CommandRun run = CommandRun.of("spice", one());

    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("Vsource").endsWith(".end\n");
  }

  @Test
  void deckIsWritten() throws IOException {
    Path deck = folder.resolve("deck.cir");

    CommandRun run = CommandRun.of("spice", one(), "-o", deck.toString());

    assertThat(run).isEqualTo(new CommandRun(0, "", ""));
    assertThat(Files.readString(deck)).isEqualTo(CommandRun.of("spice", one()).out());
  }

  @Test
  void jsonHoldsTheDeckOrTheFile() throws IOException {
    ObjectMapper mapper = new ObjectMapper();
    String deck = folder.resolve("deck.cir").toString();

    CommandRun printed = CommandRun.of("spice", one(), "--json");
    CommandRun written = CommandRun.of("spice", one(), "--json", "-o", deck);

    assertThat(mapper.readTree(printed.out()).get("deck").textValue()).endsWith(".end\n");
    assertThat(mapper.readTree(written.out()).get("file").textValue()).isEqualTo(deck);
  }

  @Test
  void oneOfSeveralIsChosenByNumber() throws IOException {
    assertThat(CommandRun.of("spice", two(), "--number", "2").out()).contains(" 50.0)");
    String allowed = "allowed is a whole number from 1 to 2, the circuits in the file";
    CircuitCommandTest.refused(
        CommandRun.of("spice", two()), "halfwave spice: --number = (missing): " + allowed);
    CircuitCommandTest.refused(
        CommandRun.of("spice", two(), "--number", "3"), "halfwave spice: --number = 3: " + allowed);
    CircuitCommandTest.refused(
        CommandRun.of("spice", two(), "--number", "x"),
        "halfwave spice: --number = x: allowed is a whole number");
  }

  @Test
  void targetThatCannotBeWrittenIsOneLine() throws IOException {
    String input = one();
    Path below = Path.of(input, "deck.cir");

    CircuitCommandTest.refused(
        CommandRun.of("spice", input, "-o", below.toString()),
        below + ": allowed is a file in a folder that exists and can be written to");
    CircuitCommandTest.refused(
        CommandRun.of("spice", input, "-o", folder.toString()),
        folder + ": allowed is a file, not a folder");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).containsExactly(Path.of(input));
    }
  }

  @Test
  void badInputLeavesTheOldDeck() throws IOException {
    Path deck = Files.writeString(folder.resolve("deck.cir"), "old");
    Path bad = Files.writeString(folder.resolve("bad.json"), "[]");

    CommandRun run = CommandRun.of("spice", bad.toString(), "-o", deck.toString());

    CircuitCommandTest.refused(run, run.err().strip());
    assertThat(Files.readString(deck)).isEqualTo("old");
  }
}
