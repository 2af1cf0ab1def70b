package halfwave.io.quiz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.fasterxml.jackson.databind.JsonNode;
import halfwave.fault.FaultKind;
import halfwave.io.BadInputException;
import halfwave.io.JsonValue;
import halfwave.io.SchemaFile;
import halfwave.quiz.Level;
import halfwave.quiz.Objective;
import halfwave.quiz.Quiz;
import halfwave.work.Look;
import halfwave.work.MeterTest;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The published schema of a quiz accepts and refuses what the reader does. */
class QuizSchemaContractTest {

  private static final SchemaFile SCHEMA = new SchemaFile("quiz.schema.json");
  private static final Quiz BANK = ShippedQuizzes.bank();
  private static final String TEXT = QuizText.of(BANK);

  @Test
  void shippedBankIsValid() throws IOException {
    try (InputStream in = Quiz.class.getResourceAsStream("bank.json")) {
      byte[] bytes = Objects.requireNonNull(in).readAllBytes();
      assertThat(SCHEMA.errors(new String(bytes, StandardCharsets.UTF_8))).isEmpty();
    }
  }

  @Test
  void whatIsWrittenIsValidAndComesBackEqual() throws IOException {
    String sealed = QuizText.sealed(BANK);

    assertThat(SCHEMA.errors(TEXT)).isEmpty();
    assertThat(SCHEMA.errors(sealed)).isEmpty();
    assertThat(QuizFile.of(SchemaFile.value(TEXT)).quiz()).isEqualTo(BANK);
    assertThat(QuizFile.of(SchemaFile.value(sealed)).quiz()).isEqualTo(BANK);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/seed|7",
        "/passRatio|1",
        "/blueprint|[{\"objective\":\"rod\",\"level\":\"basic\",\"weight\":2}]",
        "/rules|{}",
        "/rules|{\"wallMinutes\":45,\"hints\":true}",
        "/weights/safety|0",
        "/calls/0/board|\"carbide-three-hours\"",
        "/calls/0/hidden|[{\"faults\":[]}]",
        "/calls/0/hidden|[{\"faults\":[{\"kind\":\"lead-broken\",\"severity\":\"open\"}]}]",
        "/calls/0/hidden|[{\"faults\":[{\"kind\":\"rod-fouled\",\"severity\":\"8MΩ\"}]}]",
        "/calls/0/closed|[\"rod\",\"series-current\"]"
      })
  void whatIsRightIsReadAndValid(String pointer, String value) throws IOException {
    String right = SchemaFile.spoiled(TEXT, pointer, value);

    assertThat(SCHEMA.errors(right)).isEmpty();
    assertThat(QuizFile.of(SchemaFile.value(right)).quiz().calls()).hasSameSizeAs(BANK.calls());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/format|\"halfwave-board\"",
        "/version|2",
        "/name|\" \"",
        "/title|\"Calls\"",
        "/about|{\"es\":\"algo\"}",
        "/seed|1.5",
        "/passRatio|1.1",
        "/weights|{}",
        "/weights/safety|-1",
        "/weights|{\"safety\":0,\"testChoice\":0,\"interpretation\":0,\"cause\":0,\"repair\":0,\"waste\":0}",
        "/rules/wallMinutes|-1",
        "/rules/hints|1",
        "/rules/surprise|1",
        "/blueprint|[{\"objective\":\"rod\",\"level\":\"basic\",\"weight\":0}]",
        "/blueprint|[{\"objective\":\"moon\",\"level\":\"basic\",\"weight\":1}]",
        "/calls|[]",
        "/calls/0/name|\"\"",
        "/calls/0/complaint|{\"en\":\" \"}",
        "/calls/0/bench|7",
        "/calls/0/hidden|[]",
        "/calls/0/hidden|[{\"faults\":[{\"kind\":\"moon\"}]}]",
        "/calls/0/hidden|[{\"faults\":[{\"kind\":\"door-open\",\"severity\":1}]}]",
        "/calls/0/hidden|[{\"faults\":[{\"kind\":\"rod-fouled\"},{\"kind\":\"gas-shut\"},{\"kind\":\"limit-open\"}]}]",
        "/calls/0/sealed|\"*\"",
        "/calls/0/closed|[\"crystal-ball\"]",
        "/calls/0/minutes|0",
        "/calls/0/minutes|90.5",
        "/calls/0/parts|-1",
        "/calls/0/objective|\"moon\"",
        "/calls/0/level|\"hard\"",
        "/calls/0/since|\"long-ago\"",
        "/calls/0/since|\"flame-out\"",
        "/calls/0/surprise|1",
        "/surprise|1"
      })
  void whatIsWrongIsRefusedByReaderAndSchema(String pointer, String value) throws IOException {
    String wrong = SchemaFile.spoiled(TEXT, pointer, value);

    assertThat(SCHEMA.errors(wrong)).isNotEmpty();
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> QuizFile.of(SchemaFile.value(wrong)));
  }

  @Test
  void schemaDescribesEveryFieldInWordsOfTheModel() throws IOException {
    Set<String> words = new TreeSet<>();
    for (JsonNode field : SCHEMA.fields()) {
      assertThat(field.path("description").asText()).as(field.toString()).isNotBlank();
      field.path("enum").forEach(word -> words.add(word.textValue()));
      field.path("items").path("enum").forEach(word -> words.add(word.textValue()));
    }
    Set<String> spelt = new TreeSet<>();
    Stream.<Enum<?>[]>of(Objective.values(), Level.values())
        .flatMap(Stream::of)
        .forEach(e -> spelt.add(JsonValue.spelling(e)));
    Look.ASK_SINCE_WHEN.outcomes().forEach(o -> spelt.add(JsonValue.spelling(o)));
    Stream.of(FaultKind.values()).forEach(k -> spelt.add(k.id()));
    Stream.of(Look.values()).forEach(l -> spelt.add(l.id()));
    Stream.of(MeterTest.values()).forEach(t -> spelt.add(t.id()));
    assertThat(words)
        .as("enums in docs/schemas/quiz.schema.json")
        .containsExactlyInAnyOrderElementsOf(spelt);
  }

  @ParameterizedTest
  @EnumSource(FaultKind.class)
  void onlyKindsThatHaveASeverityTakeOne(FaultKind kind) throws IOException {
    String hidden = "[{\"faults\":[{\"kind\":\"%s\",\"severity\":%s}]}]";
    String severe =
        SchemaFile.spoiled(TEXT, "/calls/0/hidden", hidden.formatted(kind.id(), kind.least()));

    assertThat(SCHEMA.errors(severe).isEmpty())
        .as("in the kinds without severity of docs/schemas/quiz.schema.json")
        .isEqualTo(kind.dimension().isPresent());
  }
}
