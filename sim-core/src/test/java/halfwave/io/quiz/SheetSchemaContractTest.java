package halfwave.io.quiz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import halfwave.io.BadInputException;
import halfwave.io.SchemaFile;
import halfwave.quiz.AnswerSheet;
import halfwave.quiz.InventedClass;
import halfwave.quiz.Sitting;
import java.io.IOException;
import java.util.List;
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

  @Test
  void whenItWasTakenComesBackToo() throws IOException {
    AnswerSheet sheet =
        SHEET.with(
            new Sitting(
                1_700_000_000,
                List.of(new Sitting.Restart(60, 300), new Sitting.Restart(400, 400)),
                true));
    String text = SheetFile.text(sheet);
    assertThat(SCHEMA.errors(text)).isEmpty();
    assertThat(SheetFile.of(SchemaFile.value(text), InventedClass.quiz())).isEqualTo(sheet);
    // a schema cannot compare two numbers
    String back = text.replace("\"toSeconds\" : 300", "\"toSeconds\" : 59");
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> SheetFile.of(SchemaFile.value(back), InventedClass.quiz()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"version\" : 1|\"version\" : 2",
        "halfwave-answer-sheet|halfwave-answers",
        "\"calls\"|\"begunSeconds\" : -1, \"calls\"",
        "\"calls\"|\"handedIn\" : 1, \"calls\"",
        "\"calls\"|\"restarts\" : [{}], \"calls\"",
        "\"calls\"|\"restarts\" : [{\"fromSeconds\" : 0.5, \"toSeconds\" : 1}], \"calls\"",
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
