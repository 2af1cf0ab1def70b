package halfwave.io.quiz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import halfwave.grading.Routine;
import halfwave.io.BadInputException;
import halfwave.io.JsonValue;
import halfwave.io.SchemaFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The published schema of a routine accepts and refuses what the reader does. */
class RoutineSchemaContractTest {

  private static final SchemaFile SCHEMA = new SchemaFile("routine.schema.json");

  @Test
  void theExampleIsValid() throws IOException {
    String text = Files.readString(Path.of("..", "docs", "examples", "routine.json"));
    assertThat(SCHEMA.errors(text)).isEmpty();
    assertThat(RoutineFile.of(SchemaFile.value(text)).steps()).hasSize(10);
  }

  @Test
  void whatIsWrittenIsReadAgain() throws IOException {
    String text = Files.readString(Path.of("..", "docs", "examples", "routine.json"));
    Routine routine = RoutineFile.of(SchemaFile.value(text));
    String written = RoutineText.of(new RoutineFile.Unfinished(routine.name(), routine.steps()));
    assertThat(SCHEMA.errors(written)).isEmpty();
    assertThat(RoutineFile.of(SchemaFile.value(written))).isEqualTo(routine);
  }

  @Test
  void oneThatIsNotFinishedIsGoneOnWithButNotFollowed() throws IOException {
    RoutineFile.Unfinished begun =
        new RoutineFile.Unfinished(
            "", List.of(new Routine.Step(null, Set.of(), Double.NaN, Double.NaN, null)));
    JsonValue written = SchemaFile.value(RoutineText.of(begun));
    assertThat(RoutineFile.unfinished(written)).isEqualTo(begun);
    assertThatExceptionOfType(BadInputException.class).isThrownBy(() -> RoutineFile.of(written));
    assertThat(SCHEMA.errors(RoutineText.of(begun))).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[]",
        "[{}]",
        "[{\"found\":[\"rod-clean\"]}]",
        "[{\"check\":\"rod\",\"belowAmps\":0}]",
        "[{\"check\":1}]",
        "[{\"repair\":\"replace-rod\",\"why\":\"habit\"}]"
      })
  void bothRefuse(String steps) throws IOException {
    String text =
        "{\"format\":\"halfwave-routine\",\"version\":1,\"name\":\"n\",\"steps\":" + steps + "}";
    assertThat(SCHEMA.errors(text)).isNotEmpty();
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> RoutineFile.of(SchemaFile.value(text)));
  }
}
