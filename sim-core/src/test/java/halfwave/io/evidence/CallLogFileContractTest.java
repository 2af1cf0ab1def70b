package halfwave.io.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import halfwave.board.Ignition;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.Entry;
import halfwave.diagnosis.Outcome;
import halfwave.io.AtomicFile;
import halfwave.io.BadInputException;
import halfwave.io.SchemaFile;
import halfwave.io.Typed;
import halfwave.work.Repair;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Lines of a call come back as they went out, and what is none is refused in one line. */
class CallLogFileContractTest {

  private static final SchemaFile SCHEMA = new SchemaFile("call-log.schema.json");
  private static final Typed WHERE = new Typed("diagnose", "FOUND");

  @TempDir Path folder;

  private static Entry entry(String text) {
    return CallLogWords.entry(WHERE, text, Ignition.HOT_SURFACE);
  }

  @ParameterizedTest
  @EnumSource(Ignition.class)
  void everyCheckAndRepairHasWordsThatComeBack(Ignition ignition) {
    for (Check check : Check.all(ignition)) {
      for (Enum<?> what : check.outcomes()) {
        comesBack(new Entry.Observed(check, new Outcome.Found(what)), ignition);
      }
      comesBack(new Entry.Observed(check, new Outcome.NotReached()), ignition);
    }
    for (Repair repair : Repair.values()) {
      if (repair.possibleAt(ignition)) {
        comesBack(new Entry.Repaired(repair, Entry.Result.UNCHANGED), ignition);
      }
    }
  }

  private static void comesBack(Entry entry, Ignition ignition) {
    assertThat(CallLogWords.entry(WHERE, CallLogWords.text(entry), ignition)).isEqualTo(entry);
  }

  @ParameterizedTest
  @CsvSource({
    "series-current@trial=0.4uA, 0.4e-6, NaN",
    "series-current@trial=-0.1 µA, -0.1e-6, NaN",
    "series-current@warm=2.5uA/7.5uA, 2.5e-6, 7.5e-6",
    "series-current@warm=/7.5uA, NaN, 7.5e-6"
  })
  void currents(String text, double direct, double alternating) {
    Entry.Observed read = (Entry.Observed) entry(text);
    assertThat(read.outcome()).isEqualTo(new Outcome.Amps(direct, alternating));
    assertThat(entry(CallLogWords.text(read))).isEqualTo(read);
  }

  @ParameterizedTest
  @CsvSource({"terminal-volts-lead-off=90V, 90", "terminal-volts@warm=84, 84"})
  void voltages(String text, double volts) {
    Entry.Observed read = (Entry.Observed) entry(text);
    assertThat(read.outcome()).isEqualTo(new Outcome.Volts(volts));
    assertThat(entry(CallLogWords.text(read))).isEqualTo(read);
  }

  /** The line names what was understood, what was not, and what is allowed. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "rod; rod; what was found",
        "moon=full; moon; one of call, light",
        "rod=shiny; shiny; one of rod-clean",
        "series-current=0.4uA; series-current; series-current@trial, series-current@warm",
        "series-current@trial=2.4; 2.4; did you mean 2.40 µA?",
        "series-current@trial=2.4A; 2.4A; did you mean 2.40 µA?",
        "series-current@trial=2.4mA; 2.4mA; did you mean",
        "series-current@trial=2.4V; 2.4V; a number from",
        "series-current@trial=2.4uA/-1uA; -1uA; a number from",
        "terminal-volts-lead-off=900V; 900V; a number from",
        "terminal-volts-lead-off=-9V; -9V; a number from",
        "clean-rod-with-pad=better; better; one of cured, unchanged, worse",
        "rod=; (missing); one of rod-clean"
      })
  void whatIsNoneIsRefused(String text, String value, String allowed) {
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> entry(text))
        .satisfies(
            e ->
                assertThat(e.getMessage())
                    .startsWith("diagnose: FOUND")
                    .contains(" = " + value + ": allowed is ")
                    .contains(allowed)
                    .doesNotContain("\n"));
  }

  @Test
  void aFileComesBack() throws IOException {
    List<Entry> entries =
        List.of(
            entry("call=goes-out"),
            entry("rod=rod-clean|rod-glassy"),
            entry("clean-rod-with-pad=unchanged"));
    Path file = folder.resolve("call.json");
    AtomicFile.write(file, CallLogFile.text(entries));

    assertThat(SCHEMA.errors(CallLogFile.text(entries))).isEmpty();
    assertThat(CallLogFile.read(file, Ignition.HOT_SURFACE)).isEqualTo(entries);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/format|\"halfwave-board\"|format",
        "/version|0|version",
        "/entries|[]|entries",
        "/entries|[\"rod\"]|entries[0]",
        "/entries|[3]|entries[0]",
        "/surprise|1|surprise"
      })
  void whatIsWrongIsRefusedByReaderAndSchema(String pointer, String value, String place)
      throws IOException {
    String wrong =
        SchemaFile.spoiled(CallLogFile.text(List.of(entry("call=goes-out"))), pointer, value);
    Path file = folder.resolve("call.json");
    AtomicFile.write(file, wrong);

    assertThat(SCHEMA.errors(wrong)).isNotEmpty();
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> CallLogFile.read(file, Ignition.HOT_SURFACE))
        .satisfies(e -> assertThat(e.field()).isEqualTo(place));
  }
}
