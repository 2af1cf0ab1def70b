package halfwave.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import halfwave.bench.ShippedBenches;
import halfwave.io.bench.BenchFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The commands {@code sweep} and {@code benches}. */
class SweepCommandTest {

  private static final String BENCH = "low-voltage-sense";
  private static final String VARY = "--vary=rod-up=-2mm:2mm:3";

  @TempDir Path folder;

  @Test
  void tableShowsOneLinePerValue() {
    CommandRun run = CommandRun.of("sweep", BENCH, VARY);

    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out().lines()).hasSize(4);
    assertThat(run.out()).contains("rod-up", "−2.000 mm", "µA", " V");
  }

  @Test
  void whatCannotBeIsExplainedBelow() {
    CommandRun run = CommandRun.of("sweep", BENCH, "--vary=rod-along=-20mm:0:2");

    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("(1) no such bench", "metal of the burner");
  }

  @Test
  void jsonHoldsTheRows() throws IOException {
    JsonNode answer =
        new ObjectMapper().readTree(CommandRun.of("sweep", BENCH, VARY, "--json").out());

    assertThat(answer.get("rows")).hasSize(3);
    assertThat(answer.at("/rows/1/seriesDcAmps").doubleValue()).isBetween(1.5e-6, 3.5e-6);
  }

  @Test
  void filesAreWritten() throws IOException {
    Path csv = folder.resolve("a.csv");
    Path png = folder.resolve("a.png");

    CommandRun run = CommandRun.of("sweep", BENCH, VARY, "--csv=" + csv, "--png=" + png);

    assertThat(run).isEqualTo(new CommandRun(0, "", ""));
    assertThat(Files.readString(csv)).startsWith("rodUpMeters,seriesDcAmps");
    assertThat(Files.readAllBytes(png)).startsWith(0x89, 'P', 'N', 'G');
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "rod-up|--vary = rod-up: allowed is NAME=FROM:TO:COUNT",
        "knob=1:2:3|--vary = knob: allowed is one of source-volts",
        "rod-up=1:2mm:3|--vary rod-up from = 1: allowed is a number from -0.1 to 0.1",
        "rod-up=1mm:2ohm:3|--vary rod-up to = 2ohm: allowed is a number from −100 mm to 100 mm",
        "rod-up=0:1mm:1|--vary rod-up count = 1: allowed is a number from 2 to 10000",
        "connector=0:1M:3:log|--vary connector from = 0: allowed is a number above zero",
        "rod-up=1mm:1mm:3|--vary rod-up to = 0.001: allowed is a value that fits"
      })
  void badAxesAreOneLine(String vary, String line) {
    Path csv = folder.resolve("a.csv");

    CommandRun run = CommandRun.of("sweep", BENCH, "--vary=" + vary, "--csv=" + csv);

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.complaints())
        .singleElement()
        .satisfies(said -> assertThat(said).startsWith("halfwave sweep: " + line));
    assertThat(csv).doesNotExist();
  }

  @Test
  void otherBadUsageIsOneLineAndWritesNothing() {
    Path csv = folder.resolve("a.csv");
    String[][] wrong = {
      {"sweep", BENCH},
      {"sweep", VARY},
      {"sweep", "no-such-bench", VARY, "--csv=" + csv},
      {"sweep", BENCH, VARY, VARY, "--csv=" + csv},
      {"sweep", BENCH, VARY, "--csv=" + csv, "--png=" + csv},
      {"sweep", BENCH, VARY, "--csv=" + csv, "--png=" + folder},
      {"sweep", BENCH, VARY, "--csv=" + csv, "--png=" + folder.resolve("none/a.png")},
      {"benches", "no-such-bench"},
      {"benches", "--write=" + csv},
      {"benches", BENCH, "--write=" + folder}
    };
    for (String[] args : wrong) {
      CommandRun run = CommandRun.of(args);

      assertThat(run.status()).as(String.join(" ", args)).isEqualTo(2);
      assertThat(run.out()).isEmpty();
      assertThat(run.complaints()).as(String.join(" ", args)).hasSize(1);
    }
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void shippedBenchesAreListedWithWhatTheyAre() throws IOException {
    CommandRun run = CommandRun.of("benches");
    JsonNode all = new ObjectMapper().readTree(CommandRun.of("benches", "--json").out());

    assertThat(run.status()).isZero();
    assertThat(run.out().lines()).hasSize(ShippedBenches.all().size());
    assertThat(CommandRun.of("benches", "--language=es").out()).contains("El banco normal");
    assertThat(all).hasSize(ShippedBenches.all().size());
    assertThat(all.at("/0/ignition").textValue()).isEqualTo("hot-surface");
  }

  @Test
  void oneBenchIsShownWithItsNumbers() {
    assertThat(CommandRun.of("benches", BENCH).out())
        .contains("source-volts", "90.0 V (1.00 V to 300 V)", "leakage", "open");
  }

  @Test
  void aWrittenBenchIsReadAgain() throws IOException {
    Path file = folder.resolve("mine.json");

    CommandRun run = CommandRun.of("benches", BENCH, "--write=" + file);

    assertThat(run).isEqualTo(new CommandRun(0, "", ""));
    assertThat(BenchFile.read(file)).isEqualTo(ShippedBenches.named(BENCH).orElseThrow());
    assertThat(CommandRun.of("benches", BENCH, "--json").out()).isEqualTo(Files.readString(file));
    assertThat(CommandRun.of("sweep", file.toString(), VARY).out())
        .isEqualTo(CommandRun.of("sweep", BENCH, VARY).out());
  }
}
