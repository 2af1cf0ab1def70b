package halfwave.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command {@code circuit}: its answer, and one line for whatever is wrong. */
class CircuitCommandTest {

  static final String GOOD =
      """
      {"source": {"openCircuitVoltsRms": 120, "frequencyHz": 60, "resistanceOhms": 1e5,
        "couplingFarads": null, "returnOhms": null},
       "lead": {"resistanceOhms": 0.5, "insulationOhms": null, "capacitanceFarads": null},
       "rodFilm": null,
       "flame": {"rodIonAmpsPerRootVolt": 2e-7, "burnerIonAmpsPerRootVolt": 2e-6,
        "columnOhms": 5e5},
       "burnerFilm": null,
       "ground": {"resistanceOhms": 0}}
      """;

  @TempDir Path folder;

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("c.json"), text);
  }

  @Test
  void answerHasFiveValuesPerCircuitInOrder() throws IOException {
    String weak =
        GOOD.replace("\"burnerIonAmpsPerRootVolt\": 2e-6", "\"burnerIonAmpsPerRootVolt\": 3e-7");
    Path file = file("[" + GOOD + ", {\"circuit\": " + weak + ", \"expected\": {}}]");

    CommandRun run = CommandRun.of("circuit", file.toString(), "--json");

    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    JsonNode answer = new ObjectMapper().readTree(run.out());
    assertThat(answer.isArray()).isTrue();
    assertThat(answer).hasSize(2);
    for (JsonNode row : answer) {
      List<String> names = new ArrayList<>();
      row.fieldNames().forEachRemaining(names::add);
      assertThat(names)
          .containsExactly(
              "boardEndDcAmps",
              "rodEndDcAmps",
              "rodEndAcAmpsRms",
              "terminalDcVolts",
              "terminalAcVoltsRms");
    }
    assertThat(answer.get(0).get("rodEndDcAmps").doubleValue())
        .isGreaterThan(5 * answer.get(1).get("rodEndDcAmps").doubleValue());
  }

  @Test
  void tableHasUnitsAndLinesUp() throws IOException {
    CommandRun run = CommandRun.of("circuit", file(GOOD).toString());

    assertThat(run.status()).isZero();
    List<String> lines = run.out().lines().toList();
    assertThat(lines).hasSize(2);
    assertThat(lines.get(0)).contains("board end DC").hasSameSizeAs(lines.get(1));
    assertThat(lines.get(1)).contains(" µA").contains("−").endsWith(" V");
  }

  @Test
  void tableSpeaksSpanish() throws IOException {
    CommandRun run = CommandRun.of("circuit", file(GOOD).toString(), "--language", "es");

    assertThat(run.out()).contains("CC en el borne").containsPattern("\\d,\\d{4} µA");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "\"resistanceOhms\": 1e5|\"resistanceOhms\": -5|source.resistanceOhms = -5: "
            + "allowed is a number of ohms, zero or above, or \"open\"",
        "\"resistanceOhms\": 1e5|\"resistanceOhms\": NaN|source.resistanceOhms = NaN: "
            + "allowed is a number of ohms, zero or above, or \"open\"",
        "\"frequencyHz\": 60|\"frequencyHz\": \"x\"|source.frequencyHz = \"x\": "
            + "allowed is a number",
        "\"frequencyHz\": 60|\"frequencyHz\": 60, \"colour\": 1|source.colour = 1: "
            + "allowed is the fields openCircuitVoltsRms, frequencyHz, resistanceOhms,"
            + " couplingFarads, returnOhms"
      })
  void badFieldIsOneLine(String from, String to, String line) throws IOException {
    assertThat(GOOD).contains(from);
    Path file = file(GOOD.replace(from, to));

    refused(CommandRun.of("circuit", "--json", file.toString()), file + ": " + line);
  }

  @Test
  void truncatedFileIsOneLine() throws IOException {
    Path file = file(GOOD.substring(0, 40));

    CommandRun run = CommandRun.of("circuit", file.toString());

    refused(run, run.err().strip());
    assertThat(run.err()).startsWith(file + ": source.openCircuitVoltsRms = (broken off)");
  }

  @Test
  void folderEmptyListAndMissingFileAreOneLine() throws IOException {
    Path file = file("[]");
    Path missing = folder.resolve("missing");

    refused(
        CommandRun.of("circuit", folder.toString()), folder + ": allowed is a file, not a folder");
    refused(
        CommandRun.of("circuit", file.toString()),
        file + ": allowed is a circuit, or a list with at least one circuit");
    refused(
        CommandRun.of("circuit", missing.toString()), missing + ": allowed is a file that exists");
  }

  /** One circuit that cannot be solved leaves none of the others printed. */
  @Test
  void shortedSourceIsOneLineNamingTheElement() throws IOException {
    String shorted =
        GOOD.replace("\"resistanceOhms\": 1e5", "\"resistanceOhms\": 0")
            .replace("\"returnOhms\": null", "\"returnOhms\": 0");
    Path file = file("[" + GOOD + "," + shorted + "]");

    refused(
        CommandRun.of("circuit", file.toString()),
        file
            + ": [1].source.resistanceOhms = 0: allowed is a circuit that settles"
            + " (zero ohms across the ideal source; in trouble: source)");
  }

  @Test
  void lineSpeaksTheUsualLanguage() throws IOException {
    Path file = file("[]");

    refused(
        CommandRun.in(Locale.forLanguageTag("es-AR"), "circuit", file.toString()),
        file + ": se admite un circuito, o una lista con al menos un circuito");
  }

  static void refused(CommandRun run, String line) {
    assertThat(run.complaints()).containsExactly(line);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
  }
}
