package halfwave.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import halfwave.fault.FaultKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code symptoms}. */
class SymptomsCommandTest {

  private static final String BENCH = "hot-surface-natural-gas";
  private static final int ROWS = FaultKind.values().length + 1;

  @TempDir private Path folder;

  @Test
  void everyKindHasARow() {
    CommandRun run = CommandRun.of("symptoms", BENCH);

    assertThat(run.status()).isZero();
    List<String> lines = run.out().lines().toList();
    assertThat(lines).hasSizeGreaterThan(1 + ROWS + 2);
    assertThat(lines.subList(1 + ROWS, lines.size())).allMatch(line -> line.length() <= 120);
    assertThat(lines.get(1)).contains("(none)", "runs", "90 V");
    assertThat(run.out()).contains("fouled rod", "sense circuit shorted", "gas cock shut");
  }

  @Test
  void filesHoldTheSameRows() throws IOException {
    Path csv = folder.resolve("s.csv");
    Path markdown = folder.resolve("s.md");
    CommandRun run =
        CommandRun.in(
            Locale.forLanguageTag("es"),
            "symptoms",
            BENCH,
            "--csv=" + csv,
            "--markdown=" + markdown,
            "--json");

    assertThat(run.status()).isZero();
    List<String> cells = Files.readAllLines(csv);
    assertThat(cells).hasSize(1 + ROWS);
    assertThat(cells.get(0)).startsWith("fault,course,statusCode,standbyAcVoltsRms");
    assertThat(Files.readAllLines(markdown))
        .hasSize(2 + ROWS)
        .anyMatch(line -> line.contains("varilla sucia"));
    JsonNode json = new ObjectMapper().readTree(run.out());
    assertThat(json).hasSize(ROWS);
    assertThat(json.at("/0/fault").textValue()).isEqualTo("none");
    assertThat(json.at("/0/warmDcAmps").doubleValue()).isBetween(2e-6, 3.5e-6);
    assertThat(cells.get(1)).contains(json.at("/0/warmDcAmps").asText());
  }

  @Test
  void badUsageIsOneLineAndWritesNothing() {
    String[][] bad = {
      {"symptoms"},
      {"symptoms", "nowhere"},
      {"symptoms", BENCH, "--board=pilot-retry"},
      {"symptoms", BENCH, "--board=nowhere"},
      {"symptoms", BENCH, "--csv=" + folder}
    };
    for (String[] args : bad) {
      CommandRun run = CommandRun.of(args);
      assertThat(run.status()).as(String.join(" ", args)).isEqualTo(2);
      assertThat(run.complaints()).hasSize(1);
      assertThat(run.out()).isEmpty();
    }
    assertThat(folder).isEmptyDirectory();
  }
}
