package halfwave.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code diagnose}. */
class DiagnoseCommandTest {

  private static final String BENCH = "hot-surface-natural-gas";

  @TempDir Path folder;

  private static JsonNode json(String... args) throws IOException {
    CommandRun run = CommandRun.of(args);
    assertThat(run.status()).isZero();
    assertThat(run.complaints()).isEmpty();
    return new ObjectMapper().readTree(run.out());
  }

  /** Nothing flows, the rod is clean, the lead conducts, the way back does not. */
  @Test
  void aLostGroundIsFound() throws IOException {
    JsonNode answer =
        json(
            "diagnose",
            BENCH,
            "call=goes-out",
            "series-current@trial=0.0uA",
            "terminal-volts@trial=90V",
            "rod=rod-clean",
            "lead-continuity=lead-through",
            "bond-resistance=bond-open",
            "--json");
    assertThat(answer.at("/now").fieldNames().next()).isEqualTo("ground-lost");
    // four to one against all else that lets no current flow
    assertThat(answer.at("/now/ground-lost").doubleValue()).isGreaterThan(0.8);
    assertThat(answer.at("/repairs/0/repair").textValue()).isEqualTo("restore-bond");
    assertThat(answer.at("/steps")).hasSize(6);
  }

  @Test
  void itSaysWhyAndWhatNextInBothLanguages() {
    assertThat(CommandRun.of("diagnose", BENCH, "call=goes-out").out())
        .containsSubsequence(
            "speaks against", "Probable causes now", "Next: ask since when", "Since when has it")
        .contains("prove the repair");
    assertThat(
            CommandRun.of("diagnose", BENCH, "call=goes-out", "ask-since-when=since-weeks").out())
        .containsSubsequence(
            "got worse over weeks", "speaks for fouled rod", "Next: look at the rod", "\"I do");
    assertThat(CommandRun.of("diagnose", BENCH, "call=goes-out", "--language=es").out())
        .contains("Causas probables ahora", "«Aún no lo sé.");
  }

  @Test
  void whatCannotBeIsCalledHardToBelieve() {
    assertThat(CommandRun.of("diagnose", BENCH, "call=runs", "polarity=polarity-dead").out())
        .contains("hard to believe");
  }

  @Test
  void aLogIsWrittenAndReadAgain() throws IOException {
    Path log = folder.resolve("call.json");
    JsonNode first = json("diagnose", BENCH, "call=goes-out", "--write-log=" + log, "--json");
    JsonNode again = json("diagnose", BENCH, "--log=" + log, "--json");
    assertThat(again).isEqualTo(first);
  }

  @Test
  void judgementCanBeEdited() throws IOException {
    Path priors = folder.resolve("priors.json");
    json("diagnose", BENCH, "--write-priors=" + priors, "--json");
    String edited = Files.readString(priors).replace("\"gas-shut\": 3", "\"gas-shut\": 3000");
    Files.writeString(priors, edited);
    JsonNode answer = json("diagnose", BENCH, "--priors=" + priors, "--json");
    assertThat(answer.at("/now").fieldNames().next()).isEqualTo("gas-shut");
  }

  @Test
  void badInputIsOneLine() throws IOException {
    Path empty = folder.resolve("empty.json");
    Files.writeString(
        empty, "{\"format\": \"halfwave-call-log\", \"version\": 1, \"entries\": []}");
    String[][] bad = {
      {"diagnose"},
      {"diagnose", "nowhere"},
      {"diagnose", BENCH, "rod"},
      {"diagnose", BENCH, "rod=shiny"},
      {"diagnose", BENCH, "series-current@trial=2.4"},
      {"diagnose", BENCH, "--log=" + empty},
      {"diagnose", BENCH, "--priors=" + empty},
      {"diagnose", BENCH, "--board=pilot-retry"}
    };
    for (String[] args : bad) {
      CommandRun run = CommandRun.of(args);
      assertThat(run.status()).as(String.join(" ", args)).isEqualTo(2);
      assertThat(run.complaints()).hasSize(1);
      assertThat(run.out()).isEmpty();
    }
    assertThat(CommandRun.of("diagnose", BENCH, "series-current@trial=2.4").complaints().get(0))
        .contains("did you mean 2.40 µA?");
  }
}
