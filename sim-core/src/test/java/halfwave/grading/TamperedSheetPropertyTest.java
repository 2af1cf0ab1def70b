package halfwave.grading;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.io.BadInputException;
import halfwave.io.JsonFile;
import halfwave.io.quiz.SheetFile;
import halfwave.quiz.AnswerSheet;
import halfwave.quiz.InventedClass;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whoever changes what stands in an answer sheet is caught, or gains nothing: the marks come from
 * playing its moves again. (A learner who writes down better moves than were made has found out
 * what the better moves are; no file can tell.)
 */
class TamperedSheetPropertyTest {

  /** The one who guesses: there is much to gain. */
  private static final AnswerSheet HONEST = InventedClass.sheets().get(1);

  private static final String TEXT = SheetFile.text(HONEST);

  static Stream<Named<UnaryOperator<String>>> tricks() {
    Map<String, UnaryOperator<String>> t = new LinkedHashMap<>();
    t.put("a better finding", s -> s.replaceAll("\"found\" : \"[a-z-]+\"", "\"found\" : \"runs\""));
    t.put("no findings", s -> s.replaceAll(",\\s*\"found\" : \"[^\"]*\"", ""));
    t.put("a finding that is no word", s -> s.replaceFirst("\"found\" : \"[^\"]*", "$0 %n {0}"));
    t.put("less simulated time", s -> s.replaceAll("\"minute\" : \\d+", "\"minute\" : 1"));
    t.put("more simulated time", s -> s.replaceAll("\"minute\" : \\d+", "\"minute\" : 999999"));
    t.put("negative time", s -> s.replaceFirst("\"minute\" : \\d+", "\"minute\" : -5"));
    t.put("no time by the wall", s -> s.replaceAll("\"seconds\" : \\d+", "\"seconds\" : 0"));
    t.put("a mark of its own", s -> s.replaceFirst("\"learner\"", "\"totalRatio\" : 1, $0"));
    t.put("another quiz", s -> s.replaceFirst("\"quiz\" : \"[^\"]*\"", "\"quiz\" : \"easy\""));
    t.put("another hash", s -> s.replaceFirst("\"quizHash\" : \"..", "\"quizHash\" : \"zz"));
    t.put("another engine", s -> s.replaceFirst("model \\d+", "model 999"));
    t.put(
        "much extra time",
        s -> s.replaceFirst("\"extraTimeRatio\" : 1.0", "\"extraTimeRatio\" : 99"));
    t.put("power on twice", s -> s.replaceFirst("check light", "power on"));
    t.put("a check of another appliance", s -> s.replaceFirst("check call", "check inducer@start"));
    t.put("a check that is none", s -> s.replaceFirst("check call", "check the-answer"));
    t.put("a hint where none is given", s -> s.replaceFirst("suspects [a-z,]+", "hint 3"));
    t.put(
        "a call twice",
        s ->
            s.replaceFirst("\\{\\s*\"call\" : \"([a-z-]+)\"", "{\"call\":\"$1\",\"moves\":[]},$0"));
    t.put(
        "a call that is not asked",
        s -> s.replaceFirst("\"call\" : \"[a-z-]+\"", "\"call\" : \"mine\""));
    t.put("no calls", s -> s.replaceFirst("(?s)\"calls\" : \\[.*\\]", "\"calls\" : []"));
    t.put("half a sheet", s -> s.substring(0, s.length() / 2));
    t.put(
        "two causes of one kind",
        s -> s.replaceFirst("\"board-fault\"", "\"board-fault\",\"board-fault\""));
    return t.entrySet().stream().map(e -> Named.of(e.getKey(), e.getValue()));
  }

  private static AnswerSheet read(String text) {
    return SheetFile.of(
        JsonFile.parse("sheet", text.getBytes(StandardCharsets.UTF_8)), InventedClass.quiz());
  }

  @ParameterizedTest
  @MethodSource("tricks")
  void isCaughtOrGainsNothing(UnaryOperator<String> trick) {
    String text = trick.apply(TEXT);
    assertThat(text).as("the trick changes something").isNotEqualTo(TEXT);
    SheetMarks honest = InventedClass.grader().grade(HONEST);
    Optional<SheetMarks> marks = graded(text);
    boolean told =
        marks.isEmpty()
            || !marks.get().remarks().isEmpty()
            || marks.get().calls().stream().anyMatch(c -> !c.remarks().isEmpty());
    boolean gains = marks.isPresent() && marks.get().totalRatio() > honest.totalRatio();
    assertThat(told || !gains).isTrue();
  }

  /** The marks; nothing where the sheet is refused. */
  private static Optional<SheetMarks> graded(String text) {
    try {
      return Optional.of(InventedClass.grader().grade(read(text)));
    } catch (BadInputException e) {
      assertThat(e.file()).isEqualTo("sheet");
      return Optional.empty();
    }
  }

  @Test
  void aSheetThatNobodyTouchedComesBackAsItWas() {
    assertThat(read(TEXT)).isEqualTo(HONEST);
    assertThat(InventedClass.grader().grade(read(TEXT)).totalRatio())
        .isEqualTo(InventedClass.grader().grade(HONEST).totalRatio());
  }

  /** What was found is compared, and never counted. */
  @Test
  void anEditedReadingIsTold() {
    SheetMarks marks =
        InventedClass.grader()
            .grade(read(TEXT.replaceAll("\"found\" : \"[a-z-]+\"", "\"found\" : \"runs\"")));
    assertThat(marks.calls().stream().flatMap(c -> c.remarks().stream())).isNotEmpty();
    assertThat(marks.totalRatio()).isEqualTo(InventedClass.grader().grade(HONEST).totalRatio());
  }
}
