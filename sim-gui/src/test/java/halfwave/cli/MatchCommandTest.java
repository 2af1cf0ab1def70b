package halfwave.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import halfwave.bench.Parameter;
import halfwave.io.bench.BenchFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command {@code match}. */
class MatchCommandTest {

  private static final String BENCH = "hot-surface-natural-gas";
  private static final String EXAMPLE = "../docs/examples/readings.json";

  @TempDir Path folder;

  @Test
  void theExampleIsFitted() {
    CommandRun run = CommandRun.of("match", BENCH, "--readings=" + EXAMPLE);

    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains("source voltage", "film on the rod as found", "90 % interval")
        .contains("microamps DC in series, rod cleaned, rod 5.00 mm further out")
        .contains("the model's own error is not in them")
        .doesNotContain("No such bench");
  }

  @Test
  void whatIsOpenIsSaidAndWhatWouldHelp() {
    CommandRun run =
        CommandRun.of(
            "match", BENCH, "--series-dc=1.2uA", "--fit=film,burner-attachment", "--language=es");

    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("no distinguen", "Lo que más ayudaría");
  }

  @Test
  void optionsAddToTheFile() throws IOException {
    CommandRun run =
        CommandRun.of(
            "match",
            BENCH,
            "--readings=" + EXAMPLE,
            "--series-ac=7.7 uA cleaned",
            "--terminal-volts=81V cleaned rod-along=5mm",
            "--json");
    JsonNode answer = new ObjectMapper().readTree(run.out());

    assertThat(answer.get("readings")).hasSize(9);
    assertThat(answer.at("/readings/7/kind").textValue()).isEqualTo("series-ac");
    assertThat(answer.at("/readings/7/cleaned").booleanValue()).isTrue();
    assertThat(answer.at("/readings/8/rodAlong").doubleValue()).isEqualTo(5e-3);
    assertThat(answer.get("fitProbability").doubleValue()).isBetween(0.01, 1.0);
    assertThat(answer.at("/estimates/0/unknown").textValue()).isEqualTo("source-volts");
  }

  @Test
  void theFittedBenchIsSaved() {
    Path file = folder.resolve("fitted.json");

    CommandRun run = CommandRun.of("match", BENCH, "--readings=" + EXAMPLE, "--write=" + file);
    CommandRun again = CommandRun.of("match", BENCH, "--readings=" + EXAMPLE, "--write=" + file);

    assertThat(run.status()).isZero();
    // the example was read on a bench with 70 µm
    assertThat(Parameter.ROD_FILM.of(BenchFile.read(file))).isBetween(50e-6, 90e-6);
    assertThat(again.status()).isEqualTo(2);
    assertThat(again.complaints()).singleElement().asString().contains("--replace");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--series-dc=2.4A|--series-dc = 2.4A: allowed is a number from −200 µA to 200 µA;"
            + " did you mean 2.40 µA?",
        "--series-dc=2.4|--series-dc = 2.4: allowed is a number from −200 µA to 200 µA;"
            + " did you mean 2.40 µA?",
        "--series-ac=-1uA|--series-ac = -1uA: allowed is a number from 0 µA to 200 µA",
        "--terminal-volts=|--terminal-volts = (missing): allowed is a number from 0 V to 600 V",
        "--terminal-volts=80uA|--terminal-volts = 80uA: allowed is a number from 0 V to 600 V",
        "--series-dc=2uA rod-up=5|--series-dc rod-up = 5: allowed is a number from −100 mm to"
            + " 100 mm; did you mean 5.00 mm?",
        "--series-dc=2uA washed|--series-dc = 2uA washed: allowed is a number from",
        "--series-dc=2uA --fit=luck|--fit = luck: allowed is one of source-volts,",
        "--series-dc=2uA --meter=best|--meter = best: allowed is one of service-true-rms",
        "--series-dc=2uA rod-along=-20mm|no match: microamps DC in series, rod −20.0 mm further"
            + " out: no such bench; allowed is a rod that does not run through",
        "--lead-off-volts|--lead-off-volts is missing",
        "--json|--readings, --series-dc, --series-ac, --terminal-volts, --lead-off-volts,"
            + " --flame-out-volts is missing"
      })
  void badInputIsOneLine(String typed, String said) {
    List<String> args = new ArrayList<>(List.of("match", BENCH));
    args.addAll(List.of(typed.split(" (?=--)")));

    CommandRun run = CommandRun.of(args.toArray(String[]::new));

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.complaints())
        .singleElement()
        .satisfies(line -> assertThat(line).startsWith("halfwave match: " + said));
  }

  @Test
  void aMissingFileIsOneLine() {
    CommandRun run = CommandRun.of("match", BENCH, "--readings=" + folder.resolve("none.json"));

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.complaints()).hasSize(1);
  }
}
