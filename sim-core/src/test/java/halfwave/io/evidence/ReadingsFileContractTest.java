package halfwave.io.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import halfwave.forecast.FlameLog;
import halfwave.forecast.Logged;
import halfwave.instrument.ShippedMeters;
import halfwave.io.BadInputException;
import halfwave.io.JsonValue;
import halfwave.io.SchemaFile;
import halfwave.matching.ReadingKind;
import halfwave.matching.Setting;
import halfwave.matching.TakenReading;
import halfwave.work.Repair;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Files of readings and logs: the same things refused by reader and schema, and slips of a unit.
 */
class ReadingsFileContractTest {

  private static final SchemaFile READINGS = new SchemaFile("readings.schema.json");
  private static final SchemaFile LOG = new SchemaFile("log.schema.json");

  private static final Path EXAMPLES = Path.of("..", "docs", "examples");

  private static String readings(String readings) {
    return "{\"format\":\"halfwave-readings\",\"version\":1,\"readings\":[" + readings + "]}";
  }

  private static String log(String entries) {
    return "{\"format\":\"halfwave-log\",\"version\":1,\"entries\":[" + entries + "]}";
  }

  @Test
  void theExamplesAreReadAndValid() throws IOException {
    List<TakenReading> readings = ReadingsFile.read(EXAMPLES.resolve("readings.json"));
    FlameLog log = LogFile.read(EXAMPLES.resolve("log.json"));

    assertThat(READINGS.errors(Files.readString(EXAMPLES.resolve("readings.json")))).isEmpty();
    assertThat(readings).hasSize(7);
    assertThat(readings.get(0).value().si()).isEqualTo(1.68e-6);
    assertThat(readings.get(5).sight().setting()).isEqualTo(new Setting(true, 0, 0, 5e-3));
    assertThat(readings.get(3).sight().kind()).isEqualTo(ReadingKind.FLAME_OUT_VOLTS);
    assertThat(LOG.errors(Files.readString(EXAMPLES.resolve("log.json")))).isEmpty();
    assertThat(log.entries()).hasSize(5);
    assertThat(log.entries().get(0)).isEqualTo(new Logged.Done(0, Repair.REPLACE_ROD));
    assertThat(Objects.requireNonNull(log.calendar()).first()).isEqualTo("2022-10-12");
  }

  @Test
  void aReadingNamesItsMeter() {
    String text =
        readings("{\"kind\":\"series-dc\",\"value\":1e-6,\"meter\":\"plain-mean-responding\"}");

    assertThat(ReadingsFile.of(SchemaFile.value(text)).get(0).sight().meter())
        .isEqualTo(ShippedMeters.plain());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "|readings",
        "7|readings[0]",
        "{\"kind\":\"series\",\"value\":1e-6}|readings[0].kind",
        "{\"value\":1e-6}|readings[0].kind",
        "{\"kind\":\"series-dc\"}|readings[0].value",
        "{\"kind\":\"series-dc\",\"value\":true}|readings[0].value",
        "{\"kind\":\"lead-off-volts\",\"value\":900}|readings[0].value",
        "{\"kind\":\"series-dc\",\"value\":-1}|readings[0].value",
        "{\"kind\":\"series-dc\",\"value\":1e-6,\"cleaned\":\"yes\"}|readings[0].cleaned",
        "{\"kind\":\"series-dc\",\"value\":1e-6,\"rodUp\":5}|readings[0].rodUp",
        "{\"kind\":\"series-dc\",\"value\":1e-6,\"date\":\"2025-01-01\"}|readings[0].date"
      })
  void wrongReadingsAreRefusedByReaderAndSchema(String reading, String place) throws IOException {
    String wrong = readings(reading == null ? "" : reading);

    assertThat(READINGS.errors(wrong)).isNotEmpty();
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> ReadingsFile.of(SchemaFile.value(wrong)))
        .matches(e -> e.field().equals(place), place);
  }

  /** A microamp typed as an ampere, a milliamp for a microamp, volts with the wrong prefix. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "series-dc|\"2.4 A\"|did you mean 2.40 µA",
        "series-dc|2.4|did you mean 2.40 µA",
        "series-dc|\"2.4 mA\"|did you mean 2.40 µA",
        "series-dc|\"2400 µA\"|did you mean 2.40 µA",
        "series-ac|\"7.5 A\"|did you mean 7.50 µA",
        "terminal-volts|\"79 kV\"|did you mean 79.0 V"
      })
  void aSlipOfTheUnitIsRecognised(String kind, String value, String meant) {
    String wrong = readings("{\"kind\":\"" + kind + "\",\"value\":" + value + "}");

    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> ReadingsFile.of(SchemaFile.value(wrong)))
        .withMessageContaining("readings[0].value")
        .withMessageContaining(meant);
  }

  /** What no prefix makes possible is not guessed at. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "series-ac|-7.5e-6",
        "series-dc|\"2.4 V\"",
        "series-dc|\"two\"",
        "terminal-volts|-80"
      })
  void whatCannotBeIsNotGuessedAt(String kind, String value) {
    String wrong = readings("{\"kind\":\"" + kind + "\",\"value\":" + value + "}");

    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> ReadingsFile.of(SchemaFile.value(wrong)))
        .withMessageContaining("readings[0].value")
        .satisfies(e -> assertThat(e.getMessage()).doesNotContain("did you mean"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "|entries",
        "{\"date\":\"2025-01-01\"}|entries[0].seriesDc",
        "{\"seriesDc\":2e-6}|entries[0].flameHours",
        "{\"flameHours\":-1,\"seriesDc\":2e-6}|entries[0].flameHours",
        "{\"flameHours\":1,\"date\":\"2025-01-01\",\"seriesDc\":2e-6}|entries[0].flameHours",
        "{\"flameHours\":1,\"seriesDc\":0}|entries[0].seriesDc",
        "{\"flameHours\":1,\"seriesDc\":2.4}|entries[0].seriesDc",
        "{\"flameHours\":1,\"seriesDc\":2e-6,\"repair\":\"replace-rod\"}|entries[0].seriesDc",
        "{\"flameHours\":1,\"repair\":\"replace-lead\"}|entries[0].repair",
        "{\"date\":\"1 May\",\"seriesDc\":2e-6}|entries[0].date"
      })
  void wrongEntriesAreRefusedByReaderAndSchema(String entry, String place) throws IOException {
    String wrong = log(entry == null ? "" : entry);

    assertThat(LOG.errors(wrong)).isNotEmpty();
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> LogFile.of(SchemaFile.value(wrong)))
        .matches(e -> e.field().equals(place), place);
  }

  /** What a schema cannot see: order, one clock, days that are none. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"date\":\"2025-01-02\",\"seriesDc\":2e-6},{\"date\":\"2025-01-01\",\"seriesDc\":2e-6}"
            + "|entries[1].date = \"2025-01-01\": allowed is a time not before 2025-01-02",
        "{\"flameHours\":9,\"seriesDc\":2e-6},{\"flameHours\":8,\"seriesDc\":2e-6}"
            + "|entries[1].flameHours = 8: allowed is a time not before 9.00 h",
        "{\"date\":\"2025-01-02\",\"seriesDc\":2e-6},{\"flameHours\":8,\"seriesDc\":2e-6}"
            + "|entries[1].flameHours = 8: allowed is either dates or hours",
        "{\"date\":\"2025-02-30\",\"seriesDc\":2e-6}|entries[0].date = \"2025-02-30\""
      })
  void whatOnlyTheReaderSees(String entries, String said) throws IOException {
    String wrong = log(entries);

    assertThat(LOG.errors(wrong)).isEmpty();
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> LogFile.of(SchemaFile.value(wrong)))
        .withMessageContaining(said);
  }

  @Test
  void schemasHaveTheWordsOfTheModel() throws IOException {
    assertThat(words(READINGS))
        .containsExactlyInAnyOrder(
            Stream.of(ReadingKind.values()).map(JsonValue::spelling).toArray(String[]::new));
    assertThat(words(LOG))
        .containsExactlyInAnyOrder(
            Logged.ROD_REPAIRS.stream().map(Repair::id).toArray(String[]::new));
  }

  private static List<String> words(SchemaFile schema) throws IOException {
    List<String> words = new ArrayList<>();
    schema
        .fields()
        .forEach(field -> field.path("enum").forEach(word -> words.add(word.textValue())));
    return words;
  }
}
