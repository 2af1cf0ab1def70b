package halfwave.io.quiz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import halfwave.io.BadInputException;
import halfwave.io.SchemaFile;
import halfwave.quiz.Help;
import halfwave.quiz.Objective;
import halfwave.quiz.Progress;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files of progress: reader and schema agree, and what is written is read. */
class ProgressFileContractTest {

  private static final SchemaFile SCHEMA = new SchemaFile("progress.schema.json");

  private static final Progress SOME =
      Progress.NONE
          .after(Objective.ROD, 0.4, Help.WORKED)
          .after(Objective.ROD, 0.75, Help.WORKED)
          .after(Objective.BOARD, 1, Help.NONE);

  @Test
  void whatIsWrittenIsValidAndReadAsItWas() throws IOException {
    String text = ProgressFile.text(SOME);
    assertThat(SCHEMA.errors(text)).isEmpty();
    assertThat(ProgressFile.of(SchemaFile.value(text))).isEqualTo(SOME);
    assertThat(ProgressFile.of(SchemaFile.value(ProgressFile.text(Progress.NONE))))
        .isEqualTo(Progress.NONE);
  }

  @Test
  void everyFieldIsDescribed() throws IOException {
    assertThat(SCHEMA.fields())
        .hasSizeGreaterThan(6)
        .allSatisfy(f -> assertThat(f.path("description").asText()).isNotBlank());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "/objectives/0/marks; []",
        "/objectives/0/marks; [1.5]",
        "/objectives/0/marks; [-0.1]",
        "/objectives/0/marks; [0,0,0,0,0,0,0,0,0,0,0]",
        "/objectives/0/calls; 0",
        "/objectives/0/calls; 2.5",
        "/objectives/0/help; \"much\"",
        "/objectives/0/objective; \"roof\"",
        "/objectives; {}",
        "/version; 2",
        "/format; \"halfwave-log\""
      })
  void whatIsWrongIsRefusedByBoth(String pointer, String value) throws IOException {
    String odd = SchemaFile.spoiled(ProgressFile.text(SOME), pointer, value);
    assertThat(SCHEMA.errors(odd)).isNotEmpty();
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> ProgressFile.of(SchemaFile.value(odd)));
  }

  @Test
  void nothingMayBeMissing() throws IOException {
    for (String less : SchemaFile.bereft(ProgressFile.text(SOME))) {
      assertThat(SCHEMA.errors(less)).as(less).isNotEmpty();
      assertThatExceptionOfType(BadInputException.class)
          .as(less)
          .isThrownBy(() -> ProgressFile.of(SchemaFile.value(less)));
    }
  }

  @Test
  void fewerCallsThanMarksOrAnObjectiveTwiceIsRefused() throws IOException {
    String few = SchemaFile.spoiled(ProgressFile.text(SOME), "/objectives/0/calls", "1");
    String twice =
        SchemaFile.spoiled(ProgressFile.text(SOME), "/objectives/1/objective", "\"rod\"");
    for (String odd : java.util.List.of(few, twice)) {
      assertThatExceptionOfType(BadInputException.class)
          .isThrownBy(() -> ProgressFile.of(SchemaFile.value(odd)));
    }
  }

  @Test
  void helpFadesAfterGoodMarksOnly() {
    assertThat(SOME.next(Objective.ROD)).isEqualTo(Help.COMPLETING);
    assertThat(SOME.next(Objective.BOARD)).isEqualTo(Help.NONE);
    assertThat(SOME.next(Objective.FLAME)).isEqualTo(Help.WORKED);
    assertThat(SOME.after(Objective.ROD, 0.2, Help.ASKING).next(Objective.ROD))
        .isEqualTo(Help.ASKING);
    assertThat(SOME.calls()).isEqualTo(3);
    Progress many = SOME;
    for (int k = 0; k < 20; k++) {
      many = many.after(Objective.ROD, k / 20.0, Help.NONE);
    }
    assertThat(many.practised().get(Objective.ROD).marks()).hasSize(Progress.KEPT).endsWith(0.95);
    assertThat(many.practised().get(Objective.ROD).calls()).isEqualTo(22);
  }
}
