package halfwave.io.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.bench.Condition;
import halfwave.bench.Disorder;
import halfwave.bench.Trigger;
import halfwave.board.Stage;
import halfwave.board.StatusCode;
import halfwave.circuit.Part;
import halfwave.instrument.MeterFunction;
import halfwave.io.AtomicFile;
import halfwave.io.BadInputException;
import halfwave.io.JsonFile;
import halfwave.io.JsonValue;
import halfwave.io.SchemaFile;
import halfwave.io.sequence.ActWord;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Play;
import halfwave.sequence.Act;
import halfwave.sequence.Deed;
import halfwave.work.Handling;
import halfwave.work.Repair;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files of demonstrations: reader and schema refuse the same things, and say where. */
class DemonstrationFileContractTest {

  private static final SchemaFile SCHEMA = new SchemaFile("demonstration.schema.json");

  /** Small, and with every field once. */
  private static final String TEXT =
      "{'format':'halfwave-demonstration','version':1,'name':'short','title':{'en':'T','es':'T'},"
          + "'about':{'en':'A'},'bench':'hot-surface-natural-gas','board':'carbide-four-trials',"
          + "'seed':3,'start':{'seconds':5,'acts':[{'seconds':0,'act':'power-on'}]},"
          + "'steps':[{'heading':{'en':'H'},'say':{'en':'S'},"
          + "'question':{'ask':{'en':'Q'},'answers':[{'text':{'en':'one'},"
          + "'claims':[{'reading':'signal','least':0,'most':'2µA'}]},{'text':{'en':'two'}}],"
          + "'right':0},'seconds':10,'speed':2,"
          + "'acts':[{'seconds':1,'act':'set','parameter':'ground','value':'2MΩ'}],"
          + "'explanation':{'en':'E'},"
          + "'claims':[{'reading':{'function':'ohms','leads':'rod:chassis'},'leastRatio':0.5,"
          + "'mostRatio':2},{'stage':'standby'},{'code':'ready'},"
          + "{'enters':'trial','least':0,'most':0}],'lit':['rod-film']}]}";

  private static final String JSON = TEXT.replace('\'', '"');

  @TempDir Path folder;

  private static Demonstration read(String text) {
    return DemonstrationFile.of(SchemaFile.value(text));
  }

  @Test
  void theSmallOneIsReadValidAndComesBackEqual() throws IOException {
    Path file = folder.resolve("short.json");
    Demonstration demonstration = read(JSON);

    AtomicFile.write(file, DemonstrationText.of(demonstration));

    assertThat(SCHEMA.errors(JSON)).isEmpty();
    assertThat(DemonstrationFile.read(file)).isEqualTo(demonstration);
    assertThat(SCHEMA.errors(Files.readString(file))).isEmpty();
    assertThat(demonstration.steps().get(0).play().lengthMillis()).isEqualTo(10_000);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/format|\"halfwave-bench\"|format",
        "/version|2|version",
        "/name|\" \"|name",
        "/title|\"T\"|title",
        "/title|{}|title.en",
        "/title|{\"es\":\"T\"}|title.en",
        "/title/en|\" \"|title.en",
        "/title/EN|\"T\"|title.EN",
        "/title/es|7|title.es",
        "/about|{\"en\":\"\"}|about.en",
        "/bench|7|bench",
        "/bench|{\"format\":\"halfwave-board\"}|bench.format",
        "/board|7|board",
        "/seed|1.5|seed",
        "/start|[]|start",
        "/start/seconds|-1|start.seconds",
        "/start/speed|2|start.speed",
        "/start/acts|{}|start.acts",
        "/steps|[]|steps",
        "/steps|[7]|steps[0]",
        "/steps/0/heading|null|steps[0].heading",
        "/steps/0/say|[]|steps[0].say",
        "/steps/0/question|7|steps[0].question",
        "/steps/0/question/answers|[]|steps[0].question.answers",
        "/steps/0/question/answers|[{\"text\":{\"en\":\"a\"}}]|steps[0].question.answers",
        "/steps/0/question/right|-1|steps[0].question.right",
        "/steps/0/question/right|0.5|steps[0].question.right",
        "/steps/0/question/surprise|1|steps[0].question.surprise",
        "/steps/0/question/answers/0/surprise|1|steps[0].question.answers[0].surprise",
        "/steps/0/seconds|604801|steps[0].seconds",
        "/steps/0/speed|0|steps[0].speed",
        "/steps/0/speed|1001|steps[0].speed",
        "/steps/0/acts|[{\"seconds\":1,\"act\":\"jump\"}]|steps[0].acts[0].act",
        "/steps/0/explanation|{\"es\":\"E\"}|steps[0].explanation.en",
        "/steps/0/claims|{}|steps[0].claims",
        "/steps/0/claims|[{}]|steps[0].claims[0]",
        "/steps/0/claims|[{\"stage\":\"bored\"}]|steps[0].claims[0].stage",
        "/steps/0/claims|[{\"code\":\"bored\"}]|steps[0].claims[0].code",
        "/steps/0/claims|[{\"stage\":\"run\",\"code\":\"dark\"}]|steps[0].claims[0].code",
        "/steps/0/claims|[{\"enters\":\"run\",\"least\":-1}]|steps[0].claims[0].least",
        "/steps/0/claims|[{\"enters\":\"run\",\"most\":1001}]|steps[0].claims[0].most",
        "/steps/0/claims|[{\"reading\":\"signal\"}]|steps[0].claims[0].least",
        "/steps/0/claims|[{\"reading\":\"luck\",\"least\":1}]|steps[0].claims[0].reading",
        "/steps/0/claims|[{\"reading\":\"signal\",\"least\":[]}]|steps[0].claims[0].least",
        "/steps/0/claims|[{\"reading\":\"signal\",\"leastRatio\":-1}]|steps[0].claims[0].leastRatio",
        "/steps/0/claims|[{\"reading\":\"signal\",\"least\":1,\"mostRatio\":1}]"
            + "|steps[0].claims[0].least",
        "/steps/0/claims/0/reading/function|\"ac-and-dc-microamps\""
            + "|steps[0].claims[0].reading.function",
        "/steps/0/claims/0/reading/leads|7|steps[0].claims[0].reading.leads",
        "/steps/0/lit|[\"moon\"]|steps[0].lit[0]",
        "/steps/0/surprise|1|steps[0].surprise",
        "/surprise|1|surprise"
      })
  void whatIsWrongIsRefusedByReaderAndSchema(String pointer, String value, String place)
      throws IOException {
    String wrong = SchemaFile.spoiled(JSON, pointer, value);

    assertThat(SCHEMA.errors(wrong)).isNotEmpty();
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> read(wrong))
        .satisfies(e -> assertThat(e.field()).isEqualTo(place))
        .withMessageContaining("f.json: " + place);
  }

  /** What depends on another field, or on the words of the model. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/title/es-mx|\"T\"|title.es-mx|the tag of a language, such as es",
        "/bench|\"best-bench\"|bench|one of hot-surface-natural-gas,",
        "/board|\"best-board\"|board|one of carbide-four-trials,",
        "/board|\"pilot-retry\"|board|carbide-three-hours",
        "/start/seconds|0|start.seconds|a time from 0.001s",
        "/steps/0/question/right|1|steps[0].question.answers[1].claims|list",
        "/steps/0/question/right|2|steps[0].question.right|a number from 0 to 1",
        "/steps/0/acts|[{\"seconds\":10,\"act\":\"touch\"}]|steps[0].acts[0].seconds|to 9.999s",
        "/steps/0/acts|[{\"seconds\":1,\"act\":\"touch\"},"
            + "{\"seconds\":2,\"act\":\"set\",\"parameter\":\"rod-along\",\"value\":-0.03}]"
            + "|steps[0].acts[1]|a rod that does not run through the metal",
        "/steps/0/claims|[{\"enters\":\"run\",\"least\":2,\"most\":1}]"
            + "|steps[0].claims[0].most|from 2",
        "/steps/0/claims|[{\"reading\":\"signal\",\"least\":\"2V\"}]"
            + "|steps[0].claims[0].least|a text with its unit such as 2.2µA",
        "/steps/0/claims|[{\"reading\":\"signal\",\"least\":2,\"most\":1}]"
            + "|steps[0].claims[0].most|fits the fields beside it",
        "/steps/0/claims|[{\"reading\":\"signal\",\"leastRatio\":2,\"mostRatio\":1}]"
            + "|steps[0].claims[0].mostRatio|fits the fields beside it",
        "/steps/0/claims/0/reading/leads|\"rod:moon\"|steps[0].claims[0].reading.leads|two of common"
      })
  void whatOnlyTheReaderSees(String pointer, String value, String place, String allowed)
      throws IOException {
    String wrong = SchemaFile.spoiled(JSON, pointer, value);

    assertThat(SCHEMA.errors(wrong)).isEmpty();
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> read(wrong))
        .satisfies(e -> assertThat(e.field()).isEqualTo(place))
        .withMessageContaining(allowed);
  }

  /** The acts of a demonstration are those of a script, but for what their time counts from. */
  @Test
  void theActsAreThoseOfScripts() throws IOException {
    JsonNode here = schema("demonstration").at("/$defs/acts/items");
    JsonNode there = schema("script").at("/properties/acts/items");

    assertThat(withoutTimes(here)).isEqualTo(withoutTimes(there));
    for (String shared : List.of("function", "leads", "carryOver", "disorder", "change")) {
      assertThat(schema("demonstration").at("/$defs/" + shared))
          .isEqualTo(schema("script").at("/$defs/" + shared));
    }
  }

  private static JsonNode schema(String name) throws IOException {
    Path file = Path.of("..", "docs", "schemas", name + ".schema.json");
    return SchemaFile.MAPPER.readTree(Files.readString(file));
  }

  private static JsonNode withoutTimes(JsonNode items) {
    for (JsonNode act : items.path("oneOf")) {
      ((ObjectNode) act.at("/properties/seconds")).remove("description");
    }
    return items;
  }

  /** No word of the model is unknown to the schema, and none is there that the model lacks. */
  @Test
  void schemaHasTheWordsOfTheModel() throws IOException {
    Set<String> words = new TreeSet<>();
    schema("demonstration")
        .findValues("enum")
        .forEach(list -> list.forEach(word -> words.add(word.textValue())));
    Set<String> spelt =
        new TreeSet<>(Set.of("burners", "display-amps", "display-ohms", "display-volts", "signal"));
    Stream.of(
            ActWord.values(),
            Disorder.values(),
            Trigger.values(),
            MeterFunction.values(),
            Repair.values(),
            Handling.values(),
            Stage.values(),
            StatusCode.values(),
            Part.values())
        .flatMap(Stream::of)
        .forEach(constant -> spelt.add(JsonValue.spelling((Enum<?>) constant)));

    assertThat(words).isEqualTo(spelt);
  }

  @Test
  void schemaDescribesEveryField() throws IOException {
    assertThat(SCHEMA.fields()).hasSizeGreaterThan(40);
    for (JsonNode field : SCHEMA.fields()) {
      assertThat(field.path("description").asText()).as(field.toString()).isNotBlank();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"[]", "{}", "7", "null", "\"lesson\"", ""})
  void othersThanDemonstrationsAreRefused(String text) {
    assertThatExceptionOfType(BadInputException.class).isThrownBy(() -> read(text));
  }

  /** A file may break off anywhere. */
  @Test
  void truncatedFilesAreRefused() {
    for (int length = 0; length < JSON.length(); length += 5) {
      byte[] part = JSON.substring(0, length).getBytes(StandardCharsets.UTF_8);
      assertThatExceptionOfType(BadInputException.class)
          .as("cut at " + length)
          .isThrownBy(() -> DemonstrationFile.of(JsonFile.parse("f.json", part)));
    }
  }

  @Test
  void whatHasNoWordsIsNotWritten() {
    Demonstration d = read(JSON);
    Play become = new Play(List.of(new Act(0, new Deed.Become(Condition.HEALTHY))), 1000, 1);
    Demonstration other =
        new Demonstration(
            d.name(), d.title(), d.about(), d.bench(), d.board(), d.seed(), become, d.steps());

    assertThatIllegalArgumentException().isThrownBy(() -> DemonstrationText.of(other));
  }
}
