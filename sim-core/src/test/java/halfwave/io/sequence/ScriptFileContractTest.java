package halfwave.io.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.fasterxml.jackson.databind.JsonNode;
import halfwave.bench.Disorder;
import halfwave.bench.Trigger;
import halfwave.instrument.MeterFunction;
import halfwave.io.BadInputException;
import halfwave.io.JsonValue;
import halfwave.io.SchemaFile;
import halfwave.io.Typed;
import halfwave.sequence.Act;
import halfwave.sequence.Script;
import halfwave.work.Handling;
import halfwave.work.Repair;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Script files: the words of the command, and the same things refused by reader and schema. */
class ScriptFileContractTest {

  private static final SchemaFile SCHEMA = new SchemaFile("script.schema.json");

  private static final Path EXAMPLE = Path.of("..", "docs", "examples", "script.json");

  private static String script(String acts) {
    return "{\"format\":\"halfwave-script\",\"version\":1,\"seconds\":60,\"acts\":[" + acts + "]}";
  }

  private static Script read(String text) {
    return ScriptFile.of(SchemaFile.value(text));
  }

  @Test
  void theExampleIsReadAndValid() throws IOException {
    Script script = ScriptFile.read(EXAMPLE);

    assertThat(SCHEMA.errors(Files.readString(EXAMPLE))).isEmpty();
    assertThat(script.lengthMillis()).isEqualTo(480_000);
    assertThat(script.board()).isEqualTo("carbide-four-trials");
    assertThat(script.seed()).isEqualTo(1);
    assertThat(script.acts()).hasSize(7);
  }

  /** Each act in the file and in words is the same deed. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"act\":\"call-on\"|call-on",
        "\"act\":\"call-off\"|call-off",
        "\"act\":\"power-on\"|power-on",
        "\"act\":\"power-off\"|power-off",
        "\"act\":\"damp-on\"|damp-on",
        "\"act\":\"damp-off\"|damp-off",
        "\"act\":\"touch\"|touch",
        "\"act\":\"meter-off\"|meter-off",
        "\"act\":\"meter-on\",\"function\":\"dc-microamps\",\"leads\":\"series-board\""
            + "|meter-on dc-microamps series-board",
        "\"act\":\"meter-on\",\"function\":\"ac-volts\",\"leads\":\"terminal:chassis\","
            + "\"meter\":\"service-true-rms\"|meter-on ac-volts terminal:chassis",
        "\"act\":\"meter-on\",\"function\":\"ac-volts\",\"leads\":\"line:ground\""
            + "|meter-on ac-volts line:ground",
        "\"act\":\"lead-off\"|lead-off",
        "\"act\":\"lead-on\"|lead-on",
        "\"act\":\"gas-shut\"|gas-shut",
        "\"act\":\"gas-open\"|gas-open",
        "\"act\":\"door-open\"|door-open",
        "\"act\":\"door-close\"|door-close",
        "\"act\":\"set\",\"parameter\":\"connector\",\"value\":\"open\"|set connector=open",
        "\"act\":\"set\",\"parameter\":\"connector\",\"value\":\"2MΩ\"|set connector=2M",
        "\"act\":\"set\",\"parameter\":\"rod-up\",\"value\":0.005|set rod-up=5mm",
        "\"act\":\"break\",\"disorder\":\"igniter-broken\"|break igniter-broken",
        "\"act\":\"mend\",\"disorder\":\"igniter-broken\"|mend igniter-broken",
        "\"act\":\"carry-over\",\"carryOverSeconds\":3|carry-over 3s",
        "\"act\":\"carry-over\",\"carryOverSeconds\":\"never\"|carry-over never",
        "\"act\":\"lurk\",\"trigger\":\"heat\",\"change\":{\"parameter\":\"ground\",\"value\":\"5M\"}"
            + "|lurk heat ground=5M",
        "\"act\":\"lurk\",\"trigger\":\"damp\",\"change\":{\"disorder\":\"limit-open\"}"
            + "|lurk damp limit-open",
        "\"act\":\"lurk\",\"trigger\":\"blower\",\"change\":{\"carryOverSeconds\":\"never\"}"
            + "|lurk blower carry-over=never",
        "\"act\":\"repair\",\"repair\":\"replace-rod\"|repair replace-rod",
        "\"act\":\"mishandle\",\"handling\":\"rod-pushed-aside\"|mishandle rod-pushed-aside"
      })
  void fileAndWordsAgree(String act, String words) throws IOException {
    String text = script("{\"seconds\":12.3456," + act + "}");
    Act typed = ActWords.act(new Typed("c", "--act"), "12.3456s " + words);

    assertThat(SCHEMA.errors(text)).isEmpty();
    assertThat(read(text).acts()).containsExactly(typed);
    assertThat(typed.timeMillis()).isEqualTo(12_346);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"seconds\":1,\"act\":\"jump\"}|acts[0].act",
        "{\"seconds\":-1,\"act\":\"touch\"}|acts[0].seconds",
        "{\"seconds\":\"1s\",\"act\":\"touch\"}|acts[0].seconds",
        "{\"act\":\"touch\"}|acts[0].seconds",
        "{\"seconds\":1}|acts[0].act",
        "{\"seconds\":1,\"act\":\"touch\",\"parameter\":\"ground\"}|acts[0].parameter",
        "{\"seconds\":1,\"act\":\"set\",\"parameter\":\"ground\"}|acts[0].value",
        "{\"seconds\":1,\"act\":\"set\",\"parameter\":\"ground\",\"value\":[]}|acts[0].value",
        "{\"seconds\":1,\"act\":\"break\",\"disorder\":\"bad-luck\"}|acts[0].disorder",
        "{\"seconds\":1,\"act\":\"carry-over\",\"carryOverSeconds\":0}|acts[0].carryOverSeconds",
        "{\"seconds\":1,\"act\":\"lurk\",\"trigger\":\"moon\",\"change\":{\"disorder\":\"gas-shut\"}}"
            + "|acts[0].trigger",
        "{\"seconds\":1,\"act\":\"lurk\",\"trigger\":\"heat\",\"change\":7}|acts[0].change",
        "{\"seconds\":1,\"act\":\"repair\",\"repair\":\"kick-it\"}|acts[0].repair",
        "{\"seconds\":1,\"act\":\"mishandle\"}|acts[0].handling",
        "{\"seconds\":1,\"act\":\"mishandle\",\"handling\":\"replace-rod\"}|acts[0].handling",
        "{\"seconds\":1,\"act\":\"meter-on\",\"function\":\"amps\",\"leads\":\"series-rod\"}"
            + "|acts[0].function",
        "{\"seconds\":1,\"act\":\"meter-on\",\"function\":\"ohms\"}|acts[0].leads",
        "7|acts[0]"
      })
  void wrongActsAreRefusedByReaderAndSchema(String act, String place) throws IOException {
    String wrong = script(act);

    assertThat(SCHEMA.errors(wrong)).isNotEmpty();
    refused(wrong, place);
  }

  /** What depends on another field, or on the words of the model. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"seconds\":60,\"act\":\"touch\"}|acts[0].seconds|from 0s to 59.999s",
        "{\"seconds\":99,\"act\":\"touch\"}|acts[0].seconds|from 0s to 59.999s",
        "{\"seconds\":1,\"act\":\"set\",\"parameter\":\"knob\",\"value\":1}|acts[0].parameter|one of",
        "{\"seconds\":1,\"act\":\"meter-on\",\"function\":\"ohms\",\"leads\":\"rod:moon\"}"
            + "|acts[0].leads|series-rod, two of common",
        "{\"seconds\":1,\"act\":\"meter-on\",\"function\":\"ohms\",\"leads\":\"wire:rod\"}"
            + "|acts[0].leads|series-rod, two of common",
        "{\"seconds\":1,\"act\":\"meter-on\",\"function\":\"ohms\",\"leads\":\"rod:chassis\","
            + "\"meter\":\"best\"}|acts[0].meter|service-true-rms",
        "{\"seconds\":1,\"act\":\"set\",\"parameter\":\"ground\",\"value\":-5}|acts[0].value|from 0",
        "{\"seconds\":1,\"act\":\"set\",\"parameter\":\"rod-up\",\"value\":\"5kg\"}"
            + "|acts[0].value|from −100 mm to 100 mm",
        "{\"seconds\":1,\"act\":\"set\",\"parameter\":\"rod-up\",\"value\":\"open\"}"
            + "|acts[0].value|from −100 mm to 100 mm"
      })
  void whatOnlyTheReaderSees(String act, String place, String allowed) throws IOException {
    String wrong = script(act);

    assertThat(SCHEMA.errors(wrong)).isEmpty();
    refused(wrong, place);
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> read(wrong))
        .withMessageContaining(allowed);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/format|\"halfwave-bench\"|format",
        "/version|2|version",
        "/seconds|0|seconds",
        "/seconds|604801|seconds",
        "/board|7|board",
        "/seed|1.5|seed",
        "/acts|{}|acts",
        "/surprise|1|surprise"
      })
  void wrongFieldsAreRefusedByReaderAndSchema(String pointer, String value, String place)
      throws IOException {
    String wrong = SchemaFile.spoiled(Files.readString(EXAMPLE), pointer, value);

    assertThat(SCHEMA.errors(wrong)).isNotEmpty();
    refused(wrong, place);
  }

  @Test
  void unknownBoardsAreRefusedWithTheNamesOfAll() throws IOException {
    String wrong = SchemaFile.spoiled(Files.readString(EXAMPLE), "/board", "\"best-board\"");

    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> read(wrong))
        .withMessageContaining("board = \"best-board\": allowed is one of carbide-four-trials,");
  }

  /** A plain call for heat. */
  @Test
  void anEmptyListOfActsIsAllowed() throws IOException {
    assertThat(SCHEMA.errors(script(""))).isEmpty();
    assertThat(read(script("")).acts()).isEmpty();
    assertThat(Script.withStart(List.of())).hasSize(2);
  }

  @Test
  void actsMayStandInAnyOrder() {
    assertThat(
            read(script("{\"seconds\":9,\"act\":\"touch\"},{\"seconds\":1,\"act\":\"touch\"}"))
                .acts())
        .extracting(Act::timeMillis)
        .containsExactly(9000L, 1000L);
  }

  /** No word of the model is unknown to the schema, and none is there that the model lacks. */
  @Test
  void schemaHasTheWordsOfTheModel() throws IOException {
    Set<String> words = new TreeSet<>();
    for (JsonNode field : SCHEMA.fields()) {
      field.path("enum").forEach(word -> words.add(word.textValue()));
    }
    Set<String> spelt = new TreeSet<>();
    Stream.of(
            ActWord.values(),
            Disorder.values(),
            Trigger.values(),
            MeterFunction.values(),
            Repair.values(),
            Handling.values())
        .flatMap(Stream::of)
        .forEach(constant -> spelt.add(JsonValue.spelling((Enum<?>) constant)));

    assertThat(words).isEqualTo(spelt);
  }

  @Test
  void schemaDescribesEveryField() throws IOException {
    assertThat(SCHEMA.fields()).hasSizeGreaterThan(20);
    for (JsonNode field : SCHEMA.fields()) {
      assertThat(field.path("description").asText()).as(field.toString()).isNotBlank();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"[]", "{}", "7", "null", ""})
  void othersThanScriptsAreRefused(String text) {
    assertThatExceptionOfType(BadInputException.class).isThrownBy(() -> read(text));
  }

  @Test
  void truncatedFilesAreRefused() throws IOException {
    String whole = Files.readString(EXAMPLE).stripTrailing();
    for (int length = 0; length < whole.length(); length += 3) {
      String part = whole.substring(0, length);
      assertThatExceptionOfType(BadInputException.class)
          .as("cut at " + length)
          .isThrownBy(() -> read(part));
    }
  }

  private static void refused(String wrong, String place) {
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> read(wrong))
        .satisfies(e -> assertThat(e.field()).isEqualTo(place));
  }
}
