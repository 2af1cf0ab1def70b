package halfwave.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command {@code forecast}. */
class ForecastCommandTest {

  private static final String BENCH = "hot-surface-natural-gas";

  @TempDir Path folder;

  @Test
  void aLogIsContinued() throws IOException {
    CommandRun run = CommandRun.of("forecast", BENCH, "--log=../docs/examples/log.json", "--json");
    JsonNode answer = new ObjectMapper().readTree(run.out());

    assertThat(run.status()).isZero();
    assertThat(answer.at("/band/0/flameDate").textValue()).isEqualTo("2025-10-06");
    // the last reading of the log is 1.74 µA
    assertThat(answer.at("/band/0/middleAmps").doubleValue()).isBetween(1.65e-6, 1.9e-6);
    assertThat(answer.at("/plans/0/serviceDate").textValue()).startsWith("202");
    assertThat(answer.at("/plans/0/repair").isNull()).isTrue();
    assertThat(answer.get("plans")).hasSize(6);
    assertThat(answer.get("rates")).hasSize(9);
    assertThat(answer.get("fitProbability").doubleValue()).isGreaterThan(0.01);
  }

  @Test
  void tablesAndConclusions() {
    CommandRun run =
        CommandRun.of(
            "forecast",
            BENCH,
            "--entry=0h 2.5uA",
            "--entry=900h 2.2uA",
            "--entry=900h clean-rod-with-pad",
            "--silicon=50ug/m3",
            "--ahead=3000h",
            "--limit=1uA",
            "--confidence=90%",
            "--touched",
            "--rate=droop=1:1");

    assertThat(run.status()).isZero();
    assertThat(run.out())
        .contains("900 h of flame", "do nothing", "replace the rod", "growth of the film")
        .contains("1.00 µA with a chance of");
  }

  @Test
  void theBandGoesToAFile() throws IOException {
    Path csv = folder.resolve("band.csv");

    CommandRun run = CommandRun.of("forecast", BENCH, "--ahead=1000h", "--csv=" + csv);

    assertThat(run).isEqualTo(new CommandRun(0, "", ""));
    assertThat(Files.readString(csv))
        .startsWith("flameSeconds,lowAmps,middleAmps,highAmps\r\n0.0,");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--entry=2025-01-02 2uA --entry=2025-01-01 2uA|--entry = 2025-01-01: allowed is a time not"
            + " before 2025-01-02",
        "--entry=2025-01-02 2.4A|--entry 2025-01-02 = 2.4A: allowed is a number from 0.0100 µA to"
            + " 200 µA; did you mean 2.40 µA?",
        "--entry=yesterday 2uA|--entry = yesterday: allowed is a date, or hours of flame",
        "--entry=2025-01-02|--entry = 2025-01-02: allowed is a time, then a reading",
        "--entry=0h 2uA --entry=2025-01-02 2uA|--entry = 2025-01-02: allowed is either dates",
        "--entry=0h 2uA --log=../docs/examples/log.json|--entry = 0h 2uA: allowed is nothing beside"
            + " --log",
        "--silicon=50mg/m3 --seed=2.5|--seed = 2.5: allowed is a whole number",
        "--silicon=500mg/m3|--silicon = 500mg/m3: allowed is a number from 0 µg/m³ to 100 mg/m³",
        "--hours-per-year=1|--hours-per-year = 1: allowed is a number from 10 to 8760",
        "--rate=luck=1:2|--rate = luck: allowed is one of growth,",
        "--rate=growth=2:1|--rate = growth=2:1: allowed is a number from 2",
        "--rate=growth|--rate = growth: allowed is NAME=LOW:HIGH",
        "--confidence=5%|--confidence = 5%: allowed is a number from 50.0 % to 99.0 %",
        "--limit=1.5A|--limit = 1.5A: allowed is a number from 0.0100 µA to 200 µA; did you mean"
            + " 1.50 µA?",
        "--ahead=1s|--ahead = 1s: allowed is a number from",
        "--board=luck|luck: allowed is a board file"
      })
  void badInputIsOneLine(String typed, String said) {
    List<String> args = new ArrayList<>(List.of("forecast", BENCH));
    args.addAll(List.of(typed.split(" (?=--)")));

    CommandRun run = CommandRun.of(args.toArray(String[]::new));

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.complaints()).singleElement().satisfies(line -> assertThat(line).contains(said));
  }

  @Test
  void anEmptyLogIsRefused() throws IOException {
    Path log = folder.resolve("log.json");
    Files.writeString(log, "{\"format\":\"halfwave-log\",\"version\":1,\"entries\":[]}");

    CommandRun run = CommandRun.of("forecast", BENCH, "--log=" + log);

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.complaints())
        .singleElement()
        .asString()
        .contains("entries = []: allowed is a list, entries at least 1");
  }
}
