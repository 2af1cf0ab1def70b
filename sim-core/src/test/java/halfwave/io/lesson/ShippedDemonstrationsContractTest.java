package halfwave.io.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.io.SchemaFile;
import halfwave.lesson.Answer;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Question;
import halfwave.lesson.Rehearsal;
import halfwave.lesson.Step;
import halfwave.lesson.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the shipped demonstrations say is what the model does, in both languages, to the end. */
class ShippedDemonstrationsContractTest {

  private static final SchemaFile SCHEMA = new SchemaFile("demonstration.schema.json");

  private static final Pattern CAUTION = Pattern.compile("never bridge or bypass the flame sensor");

  static List<Demonstration> shipped() {
    return ShippedDemonstrations.all();
  }

  @Test
  void namesAreThoseOfTheFiles() {
    assertThat(ShippedDemonstrations.all()).isNotEmpty();
    for (Demonstration demonstration : ShippedDemonstrations.all()) {
      assertThat(ShippedDemonstrations.named(demonstration.name())).contains(demonstration);
      assertThat(ShippedDemonstrations.file(demonstration.name())).isPresent();
    }
    assertThat(ShippedDemonstrations.named("another")).isEmpty();
    assertThat(ShippedDemonstrations.file("another")).isEmpty();
  }

  /** Every claim, every right answer, and no wrong one. */
  @ParameterizedTest
  @MethodSource("shipped")
  void theModelDoesWhatIsSaid(Demonstration demonstration) {
    assertThat(Rehearsal.of(demonstration).doubts()).isEmpty();
  }

  /** A wrong answer without a claim might be true. */
  @ParameterizedTest
  @MethodSource("shipped")
  void wrongAnswersAreProvedWrong(Demonstration demonstration) {
    assertThat(questions(demonstration)).isNotEmpty();
    for (Question question : questions(demonstration)) {
      assertThat(question.answers())
          .as("claims of every answer to: %s", question.ask().in(Locale.ENGLISH))
          .extracting(Answer::claims)
          .doesNotContain(List.of());
    }
  }

  /** Or a class learns the place instead of the matter. */
  @ParameterizedTest
  @MethodSource("shipped")
  void theRightAnswerStandsInDifferentPlaces(Demonstration demonstration) {
    assertThat(questions(demonstration).stream().map(Question::right).distinct().count())
        .as("different values of \"right\" among the questions of %s", demonstration.name())
        .isGreaterThan(2);
  }

  @ParameterizedTest
  @MethodSource("shipped")
  void everyTextIsInBothLanguages(Demonstration demonstration) {
    assertThat(texts(demonstration)).hasSizeGreaterThan(10);
    for (Words words : texts(demonstration)) {
      assertThat(words.texts()).containsOnlyKeys("en", "es");
      assertThat(words.texts().get("es")).isNotEqualTo(words.texts().get("en"));
    }
  }

  @ParameterizedTest
  @MethodSource("shipped")
  void cautionIsGiven(Demonstration demonstration) {
    assertThat(texts(demonstration))
        .as("%s says somewhere: %s", demonstration.name(), CAUTION)
        .anyMatch(w -> CAUTION.matcher(w.texts().get("en")).find());
  }

  @ParameterizedTest
  @MethodSource("shipped")
  void filesFollowTheSchemaAndComeBackEqual(Demonstration demonstration) throws IOException {
    byte[] file = ShippedDemonstrations.file(demonstration.name()).orElseThrow();
    String written = DemonstrationText.of(demonstration);

    assertThat(SCHEMA.errors(new String(file, StandardCharsets.UTF_8))).isEmpty();
    assertThat(SCHEMA.errors(written)).isEmpty();
    assertThat(DemonstrationFile.of(SchemaFile.value(written))).isEqualTo(demonstration);
  }

  private static List<Question> questions(Demonstration demonstration) {
    return demonstration.steps().stream().map(Step::question).filter(Objects::nonNull).toList();
  }

  private static List<Words> texts(Demonstration demonstration) {
    List<Words> texts = new ArrayList<>(List.of(demonstration.title(), demonstration.about()));
    for (Step step : demonstration.steps()) {
      Stream.of(step.heading(), step.say(), step.explanation())
          .filter(Objects::nonNull)
          .forEach(texts::add);
      Question question = step.question();
      if (question != null) {
        texts.add(question.ask());
        question.answers().forEach(a -> texts.add(a.text()));
      }
    }
    return texts;
  }
}
