package halfwave.io.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.fasterxml.jackson.databind.JsonNode;
import halfwave.board.BoardSettings;
import halfwave.board.ShippedBoards;
import halfwave.io.AtomicFile;
import halfwave.io.BadInputException;
import halfwave.io.SchemaFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Board files come back as they went out; reader and schema refuse the same things. */
class BoardFileContractTest {

  private static final SchemaFile SCHEMA = new SchemaFile("board.schema.json");

  private static final String TEXT =
      BoardText.of(ShippedBoards.named("nitride-learning").orElseThrow());

  @TempDir Path folder;

  private static BoardSettings read(String text) {
    return BoardFile.of(SchemaFile.value(text));
  }

  static Stream<BoardSettings> shipped() {
    return ShippedBoards.all().stream();
  }

  @ParameterizedTest
  @MethodSource("shipped")
  void shippedBoardsComeBackEqualAndAreValid(BoardSettings board) throws IOException {
    Path file = folder.resolve("board.json");

    AtomicFile.write(file, BoardText.of(board));

    assertThat(BoardFile.read(file)).isEqualTo(board);
    assertThat(SCHEMA.errors(BoardText.of(board))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/format|\"halfwave-bench\"|format",
        "/version|2|version",
        "/name|\"Bad Name\"|name",
        "/ignition|\"match\"|ignition",
        "/sensing|[]|sensing",
        "/sensing/pickUpAmps|-1|sensing.pickUpAmps",
        "/sensing/pickUpAmps|\"much\"|sensing.pickUpAmps",
        "/sensing/filterSeconds|11|sensing.filterSeconds",
        "/sensing/responseMillis|1.5|sensing.responseMillis",
        "/sensing/checksLine|1|sensing.checksLine",
        "/times/trialMillis|null|times.trialMillis",
        "/times/pressureRetryMillis|999|times.pressureRetryMillis",
        "/times/prePurgeMillis|-1|times.prePurgeMillis",
        "/times/surprise|1|times.surprise",
        "/counting/mostTrials|10|counting.mostTrials",
        "/counting/mostLosses|99999999999|counting.mostLosses",
        "/counting/lossCounts|\"some\"|counting.lossCounts",
        "/counting/lockoutMillis|0|counting.lockoutMillis",
        "/learning/stepMillis|0|learning.stepMillis",
        "/surprise|1|surprise"
      })
  void whatIsWrongIsRefusedByReaderAndSchema(String pointer, String value, String place)
      throws IOException {
    String wrong = SchemaFile.spoiled(TEXT, pointer, value);

    assertThat(SCHEMA.errors(wrong)).isNotEmpty();
    refused(wrong, place);
  }

  /** Times and currents that contradict each other; no schema can say so. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/times/provingMillis|6000|times.provingMillis|from 0 to 5999",
        "/times/ignitionActivationMillis|6001|times.ignitionActivationMillis|from 0 to 6000",
        "/times/warmUpMillis|0|times.warmUpMillis|above zero",
        "/sensing/dropOutAmps|9.0E-7|sensing.dropOutAmps|from",
        "/sensing/warningAmps|4.0E-7|sensing.warningAmps|from",
        "/sensing/fadeMillis|700|sensing.fadeMillis|from 800",
        "/learning/mostMillis|6999|learning.mostMillis|from 7000"
      })
  void contradictionsAreRefusedByTheReader(
      String pointer, String value, String place, String allowed) throws IOException {
    String wrong = SchemaFile.spoiled(TEXT, pointer, value);

    assertThat(SCHEMA.errors(wrong)).isEmpty();
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> read(wrong))
        .withMessageContaining("f.json: " + place + " = " + value)
        .withMessageContaining(allowed);
  }

  @Test
  void everyFieldIsRequired() throws IOException {
    List<String> bereft = SchemaFile.bereft(TEXT);

    assertThat(bereft).hasSizeGreaterThan(38);
    for (String wrong : bereft) {
      assertThat(SCHEMA.errors(wrong)).as(wrong).isNotEmpty();
      assertThatExceptionOfType(BadInputException.class).as(wrong).isThrownBy(() -> read(wrong));
    }
  }

  /** Every field says what it is, a number also its unit or that it is a count. */
  @Test
  void schemaDescribesEveryField() throws IOException {
    assertThat(SCHEMA.fields()).hasSizeGreaterThan(40);
    for (JsonNode field : SCHEMA.fields()) {
      assertThat(field.path("description").asText()).as(field.toString()).isNotBlank();
      assertThat(field.path("type").asText().equals("number"))
          .as(field.toString())
          .isEqualTo(field.get("description").asText().matches(".*\\((A|A rms|s)\\).*"));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"[]", "{}", "7", "null", "\"board\"", ""})
  void othersThanBoardsAreRefused(String text) {
    assertThatExceptionOfType(BadInputException.class).isThrownBy(() -> read(text));
  }

  /** A file may break off anywhere. */
  @Test
  void truncatedFilesAreRefused() {
    String whole = TEXT.stripTrailing();
    for (int length = 0; length < whole.length(); length += 7) {
      String part = whole.substring(0, length);
      assertThatExceptionOfType(BadInputException.class)
          .as("cut at " + length)
          .isThrownBy(() -> read(part));
    }
  }

  private static void refused(String wrong, String place) {
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> read(wrong))
        .satisfies(e -> assertThat(e.field()).isEqualTo(place))
        .withMessageContaining("f.json");
  }
}
