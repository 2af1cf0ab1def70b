package halfwave.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import halfwave.quiz.AnswerSheet;
import halfwave.quiz.InventedClass;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The published schema of an answer sheet accepts and refuses what the reader does. */
class SheetSchemaContractTest {

  private static final SchemaFile SCHEMA = new SchemaFile("answer-sheet.schema.json");
  private static final AnswerSheet SHEET = InventedClass.sheets().get(0);
  private static final String TEXT = SheetFile.text(SHEET);

  @Test
  void whatIsWrittenIsValidAndComesBackEqual() throws IOException {
    for (AnswerSheet sheet : InventedClass.sheets()) {
      String text = SheetFile.text(sheet);
      assertThat(SCHEMA.errors(text)).isEmpty();
      assertThat(SheetFile.of(SchemaFile.value(text), InventedClass.quiz())).isEqualTo(sheet);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"version\" : 1|\"version\" : 2",
        "halfwave-answer-sheet|halfwave-answers",
        "\"extraTimeRatio\" : 1.0|\"extraTimeRatio\" : 0.5",
        "\"learner\" : \"[^\"]*\"|\"learner\" : \" \"",
        "\"learner\"|\"mark\" : 1, \"learner\"",
        "check call|dance call",
        "\"minute\" : \\d+|\"minute\" : -1",
        "\"seconds\" : 0|\"seconds\" : 0.5"
      })
  void bothRefuse(String what, String by) throws IOException {
    String text = TEXT.replaceFirst(what, by);
    assertThat(text).isNotEqualTo(TEXT);
    assertThat(SCHEMA.errors(text)).isNotEmpty();
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> SheetFile.of(SchemaFile.value(text), InventedClass.quiz()));
  }
}
