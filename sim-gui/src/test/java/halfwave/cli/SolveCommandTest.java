package halfwave.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import halfwave.bench.Bench;
import halfwave.bench.ShippedBenches;
import halfwave.io.bench.BenchText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The command {@code solve}, and decks of benches. */
class SolveCommandTest {

  private static final String STANDARD = BenchText.of(ShippedBenches.standard());

  @TempDir private Path folder;

  private String file(String text) throws IOException {
    Path file = folder.resolve("bench.json");
    Files.writeString(file, text);
    return file.toString();
  }

  @Test
  void solvesEveryShippedBenchInBothLanguages() {
    for (Bench bench : ShippedBenches.all()) {
      for (String language : List.of("en", "es")) {
        CommandRun run = CommandRun.of("solve", bench.name(), "--language", language);
        assertThat(run.status()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains(bench.name()).contains("µA");
      }
    }
  }

  @Test
  void jsonHasReadingsLadderAndWords() throws IOException {
    JsonNode root =
        new ObjectMapper().readTree(CommandRun.of("solve", "intermittent-pilot", "--json").out());
    assertThat(root.get("readings").get("series").get("dcAmps").asDouble()).isPositive();
    assertThat(root.get("ladderRodPositive").get("rungVolts").get("burner-sheath").asDouble())
        .isPositive();
    assertThat(root.get("dcElasticities").get("source-volts").asDouble()).isPositive();
    assertThat(root.get("words")).isNotEmpty();
  }

  @Test
  void aFileGivesWhatItsBenchGives() throws IOException {
    assertThat(CommandRun.of("solve", file(STANDARD)).out())
        .isEqualTo(CommandRun.of("solve", ShippedBenches.standard().name()).out());
    assertThat(CommandRun.of("spice", file(STANDARD)).out())
        .isEqualTo(CommandRun.of("spice", ShippedBenches.standard().name()).out());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"groundOhms\" : 0.3|\"groundOhms\" : \"much\"|design.groundOhms",
        "\"groundOhms\" : 0.3|\"groundOhms\" : -1|design.groundOhms",
        "\"groundOhms\" : 0.3|\"groundOhms\" : NaN|design.groundOhms",
        "\"groundOhms\" : 0.3|\"groundMilliohms\" : 300|design.groundMilliohms",
        "\"version\" : 1|\"version\" : 2|version",
        "\"alongMeters\" : 0.0|\"alongMeters\" : -0.02|design.rod.path",
        "\"connectorOhms\" : 0.0|\"connectorOhms\" : \"shut\"|condition.connectorOhms",
      })
  void refusesABadFieldInOneLine(String good, String bad, String field) throws IOException {
    assertThat(STANDARD).contains(good);
    refused(CommandRun.of("solve", file(STANDARD.replace(good, bad))), field);
  }

  @Test
  void refusesACutFileAFolderAndAnEmptyList() throws IOException {
    refused(CommandRun.of("solve", file(STANDARD.substring(0, 700))), "bench.json");
    refused(CommandRun.of("solve", folder.toString()), folder.toString());
    refused(CommandRun.of("solve", file("[]")), "bench.json");
  }

  @ParameterizedTest
  @ValueSource(strings = {"no-such-bench", ""})
  void refusesAnUnknownBench(String name) {
    refused(CommandRun.of("solve", name), "hot-surface-natural-gas");
  }

  private static void refused(CommandRun run, String named) {
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.complaints()).hasSize(1);
    assertThat(run.err()).contains(named).contains("allowed");
  }
}
