package halfwave.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import halfwave.board.ShippedBoards;
import halfwave.io.bench.BoardText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command {@code sequence}. */
class SequenceCommandTest {

  private static final String BENCH = "hot-surface-natural-gas";
  private static final String EXAMPLE = "../docs/examples/script.json";

  @TempDir Path folder;

  private static JsonNode json(String... args) throws IOException {
    return new ObjectMapper().readTree(CommandRun.of(args).out());
  }

  @Test
  void aPlainCallIsToldFromPowerToBlower() {
    CommandRun run = CommandRun.of("sequence", BENCH);

    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .startsWith("Sequence of bench: " + BENCH + "\n====")
        .contains("Board: carbide-four-trials. Seed: 1. Length: 120 s.")
        .containsSubsequence(
            "   0.000  standby  ",
            "   5.000  self-check",
            "inducer igniter valve",
            "The flame is proved",
            "The circulating blower starts")
        .contains("Turn off gas and power before you open a real appliance.");
  }

  @Test
  void theSameInSpanish() {
    assertThat(CommandRun.of("sequence", BENCH, "--language=es").out())
        .contains(
            "Placa: carbide-four-trials",
            "inductor de tiro encendedor válvula",
            "corte la corriente");
  }

  @Test
  void aPulledLeadEndsInLockout() throws IOException {
    JsonNode answer = json("sequence", BENCH, "--act", "60s lead-off", "--for", "5min", "--json");

    assertThat(answer.at("/end/stage").textValue()).isEqualTo("soft-lockout");
    assertThat(answer.get("events").findValuesAsText("key"))
        .contains("board-flame-lost", "board-trial-failed", "board-trials-used-up");
  }

  @Test
  void faultsAreThereFromTheStartOrLurk() throws IOException {
    assertThat(json("sequence", BENCH, "--fault", "igniter-broken", "--json").get("events"))
        .noneMatch(event -> event.get("key").textValue().equals("flame-lights"));
    assertThat(
            json("sequence", BENCH, "--fault", "blower:burner-attachment=0.02", "--json")
                .get("events"))
        .anyMatch(event -> event.get("key").textValue().equals("fault-comes"));
    assertThat(CommandRun.of("sequence", BENCH, "--fault", "gas-shut", "--for", "10s").out())
        .contains("From the start: gas cock shut");
  }

  @Test
  void theExampleScriptPlays() throws IOException {
    JsonNode answer = json("sequence", BENCH, "--script", EXAMPLE, "--json");

    assertThat(answer.at("/end/timeMillis").longValue()).isEqualTo(480_000);
    assertThat(answer.at("/end/stage").textValue()).isEqualTo("run");
  }

  @Test
  void optionsComeBeforeTheScript() throws IOException {
    JsonNode answer =
        json(
            "sequence",
            BENCH,
            "--script=" + EXAMPLE,
            "--act=440s touch",
            "--for=441s",
            "--seed=7",
            "--board=carbide-three-hours",
            "--json");

    assertThat(answer.get("seed").longValue()).isEqualTo(7);
    assertThat(answer.get("board").textValue()).isEqualTo("carbide-three-hours");
    assertThat(answer.at("/end/timeMillis").longValue()).isEqualTo(441_000);
  }

  @Test
  void lengthFollowsTheLastAct() throws IOException {
    assertThat(json("sequence", BENCH, "--act=90s touch", "--json").at("/end/timeMillis").asLong())
        .isEqualTo(150_000);
    assertThat(json("sequence", BENCH, "--act=0s touch", "--json").at("/end/timeMillis").asLong())
        .isEqualTo(120_000);
  }

  @Test
  void filesAreWrittenAndTheSeedDecides() throws IOException {
    Path csv = folder.resolve("a.csv");
    Path png = folder.resolve("a.png");
    Path other = folder.resolve("b.csv");

    CommandRun run = CommandRun.of("sequence", BENCH, "--csv=" + csv, "--png=" + png);
    CommandRun.of("sequence", BENCH, "--csv=" + other, "--seed=2");

    assertThat(run).isEqualTo(new CommandRun(0, "", ""));
    assertThat(Files.readString(csv)).startsWith("timeSeconds,stage");
    assertThat(Files.readString(csv)).isNotEqualTo(Files.readString(other));
    assertThat(Files.readAllBytes(png)).startsWith(0x89, 'P', 'N', 'G');
    try (var all = Files.list(folder)) {
      assertThat(all).hasSize(3);
    }
  }

  @Test
  void aBoardFileIsPlayed() throws IOException {
    Path file = folder.resolve("board.json");
    String quick =
        BoardText.of(ShippedBoards.all().get(0))
            .replace("carbide-four-trials", "quick")
            .replace("\"prePurgeMillis\" : 15000", "\"prePurgeMillis\" : 1000");
    Files.writeString(file, quick);

    JsonNode answer = json("sequence", BENCH, "--board=" + file, "--for=30s", "--json");

    assertThat(answer.get("board").textValue()).isEqualTo("quick");
    assertThat(answer.at("/end/stage").textValue()).isEqualTo("run");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--act=45s jump|--act 45s = jump: allowed is one of call-on, call-off",
        "--act=jump|--act = jump: allowed is a time and an act, such as 45s lead-off",
        "--act=|--act = (missing): allowed is a time and an act",
        "--act=-5s touch|--act = -5s: allowed is a time from 0s to 604799.999s",
        "--act=169h touch|--act = 169h: allowed is a time from 0s",
        "--act=soon touch|--act = soon: allowed is a time from 0s",
        "--act=5s touch it|--act 5s touch = it: allowed is no further word",
        "--act=5s set|--act 5s set = (missing): allowed is a change, such as connector=open",
        "--act=5s set knob=1|--act 5s set = knob: allowed is one of source-volts",
        "--act=5s set rod-up=1m|--act 5s set rod-up = 1m: allowed is a number from −100 mm",
        "--act=5s set connector=-1|--act 5s set connector = -1: allowed is a number from 0 Ω to"
            + " 1000 GΩ, or open",
        "--act=5s set rod-up=open|--act 5s set rod-up = open: allowed is a number from",
        "--act=5s set rod-along=-30mm|--act = 5s set rod-along=-30mm: allowed is a rod that does",
        "--act=5s break luck|--act 5s break = luck: allowed is one of gas-shut",
        "--act=5s mend|--act 5s mend = (missing): allowed is one of gas-shut",
        "--act=5s carry-over 1ms|--act 5s carry-over = 1ms: allowed is a time of 0.02s",
        "--act=5s lurk moon gas-shut|--act 5s lurk = moon: allowed is one of heat",
        "--act=5s repair|--act 5s repair = (missing): allowed is one of clean-rod-with-pad",
        "--act=5s repair luck|--act 5s repair = luck: allowed is one of clean-rod-with-pad",
        "--act=5s mishandle luck|--act 5s mishandle = luck: allowed is one of toothed-tool",
        "--act=5s lurk heat|--act 5s lurk heat = (missing): allowed is a change",
        "--fault=luck|--fault = luck: allowed is a change, such as rod-fouled (see faults)",
        "--fault=|--fault = (missing): allowed is a change",
        "--fault=moon:gas-shut|--fault = moon: allowed is one of heat",
        "--fault=rod-fouled --fault=rod-fouled=1M|--fault = rod-fouled=1M: allowed is a fault or",
        "--fault=rod-fouled --fault=rod-film=1um|--fault = rod-film=1um: allowed is a fault or",
        "--fault=connector=1M --fault=connector=2M|--fault = connector=2M: allowed is a fault or",
        "--fault=gas-shut --fault=gas-shut|--fault = gas-shut: allowed is a fault or",
        "--fault=heat:ground=1M --fault=heat:ground=2M|--fault = heat:ground=2M: allowed is a",
        "--fault=heat:ground=red|--fault heat ground = red: allowed is a number",
        "--fault=heat:carry-over=0|--fault heat carry-over = 0: allowed is a time of 0.02s",
        "--fault=rod-along=-30mm|--fault = rod-along=-30mm: allowed is a rod that does not",
        "--for=0s|--for = 0s: allowed is a time from 0.001s to 604800s",
        "--for=169h|--for = 169h: allowed is a time from",
        "--for=3s --act=5s touch|--act = 5s touch: allowed is a time from 0s to 2.999s",
        "--seed=red|--seed = red: allowed is a whole number",
        "--board=spark-three-trials|--board = spark-three-trials: allowed is a board made for"
            + " hot-surface ignition, silicon carbide: carbide-four-trials, carbide-three-hours,"
      })
  void badOptionsAreOneLine(String options, String line) {
    refused("halfwave sequence: " + line, List.of(options.split(" (?=--)")));
  }

  private void refused(String line, List<String> options) {
    Path csv = folder.resolve("a.csv");
    List<String> args = new ArrayList<>(List.of("sequence", BENCH, "--csv=" + csv));
    args.addAll(options);

    CommandRun run = CommandRun.of(args.toArray(String[]::new));

    assertThat(run.out()).isEmpty();
    assertThat(run.complaints())
        .singleElement()
        .satisfies(said -> assertThat(said).startsWith(line));
    assertThat(run.status()).isEqualTo(2);
    assertThat(csv).doesNotExist();
  }

  /** A mishap takes the signal, the repair gives it back; the lockout needs the power cut. */
  @Test
  void repairsAndMishapsAreActs() throws IOException {
    JsonNode answer =
        json(
            "sequence",
            BENCH,
            "--act=60s mishandle rod-pushed-aside",
            "--act=300s repair reposition-rod",
            "--act=310s power-off",
            "--act=320s power-on",
            "--for=10min",
            "--json");

    assertThat(answer.at("/end/stage").textValue()).isEqualTo("run");
    assertThat(answer.get("events").findValuesAsText("key"))
        .containsSubsequence(
            "act-mishandles", "change-joined", "board-trials-used-up", "act-repairs");
    assertThat(
            CommandRun.of("sequence", BENCH, "--act=60s repair replace-rod", "--language=es").out())
        .contains("Alguien ha hecho una reparación: cambiar");
  }

  @Test
  void workOnWhatTheBenchLacksIsOneLine() throws IOException {
    CommandRun spark =
        CommandRun.of(
            "sequence", "direct-spark-separate-rod", "--act=5s mishandle cleaning-igniter");
    Path file = folder.resolve("s.json");
    Files.writeString(
        file,
        "{\"format\":\"halfwave-script\",\"version\":1,\"seconds\":60,\"acts\":"
            + "[{\"seconds\":5,\"act\":\"repair\",\"repair\":\"replace-inducer\"}]}");
    CommandRun pilot = CommandRun.of("sequence", "intermittent-pilot", "--script=" + file);

    assertThat(spark.complaints())
        .singleElement()
        .asString()
        .contains("= 5s mishandle cleaning-igniter: allowed is one of toothed-tool-on-ceramic")
        .doesNotContain("bumping-igniter");
    assertThat(pilot.complaints())
        .singleElement()
        .asString()
        .contains("acts[0] = replace-inducer: allowed is one of clean-rod-with-pad")
        .doesNotContain("replace-pressure-switch");
  }

  @Test
  void badFilesAreOneLine() throws IOException {
    Path file = folder.resolve("s.json");
    String script = Files.readString(Path.of(EXAMPLE));
    Files.writeString(file, script.substring(0, 200));
    refused(file + ": acts[1].seconds = (broken off)", List.of("--script=" + file));
    Files.writeString(file, script.replace("\"5MΩ\"", "\"5kg\""));
    refused(file + ": acts[2].value = \"5kg\"", List.of("--script=" + file));
    Files.writeString(file, script.replace("carbide-four-trials", "spark-one-loss"));
    refused(
        file + ": board = spark-one-loss: allowed is a board made for",
        List.of("--script=" + file));
    Files.writeString(
        file,
        script.replace(
            "\"parameter\" : \"connector\", \"value\" : \"5MΩ\"",
            "\"parameter\" : \"rod-along\", \"value\" : -0.03"));
    refused(file + ": acts[2] = ", List.of("--script=" + file));
    refused(folder + ": allowed is a file, not a folder", List.of("--script=" + folder));
    refused(
        folder.resolve("none") + ": allowed is a file that exists",
        List.of("--script=" + folder.resolve("none")));
    refused(
        "halfwave sequence: --act = 480s touch: allowed is a time from 0s to 479.999s",
        List.of("--script=" + EXAMPLE, "--act=480s touch"));
    refused("none: allowed is a board file that exists, or one of", List.of("--board=none"));
    refused(folder + ": allowed is a file, not a folder", List.of("--board=" + folder));
    Files.writeString(
        file,
        BoardText.of(ShippedBoards.all().get(0))
            .replace("\"provingMillis\" : 1000", "\"provingMillis\" : 5000"));
    refused(
        file + ": times.provingMillis = 5000: allowed is a number from 0 to 4999",
        List.of("--board=" + file));
  }

  @Test
  void targetsThatCannotBeWrittenAreRefused() throws IOException {
    String[][] wrong = {
      {"--csv=" + folder},
      {"--png=" + folder},
      {"--csv=" + folder.resolve("none/a.csv")},
      {"--csv=" + folder.resolve("a.csv"), "--png=" + folder.resolve("none/a.png")},
      {"--csv=" + folder.resolve("a.png"), "--png=" + folder.resolve("a.png")}
    };
    for (String[] options : wrong) {
      List<String> args = new ArrayList<>(List.of("sequence", BENCH));
      args.addAll(List.of(options));
      CommandRun run = CommandRun.of(args.toArray(String[]::new));

      assertThat(run.status()).as(args.toString()).isEqualTo(2);
      assertThat(run.complaints()).hasSize(1);
      assertThat(run.out()).isEmpty();
    }
    assertThat(folder).isEmptyDirectory();
  }
}
