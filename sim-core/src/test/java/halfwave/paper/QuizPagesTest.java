package halfwave.paper;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.diagnosis.Check;
import halfwave.diagnosis.Outcome;
import halfwave.diagnosis.Reasons;
import halfwave.display.Sentences;
import halfwave.explain.Caution;
import halfwave.grading.Criterion;
import halfwave.grading.Grader;
import halfwave.grading.SheetMarks;
import halfwave.quiz.AnswerSheet;
import halfwave.quiz.AsFound;
import halfwave.quiz.InventedClass;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Variant;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands on the sheets of a quiz, and what must not. */
class QuizPagesTest {

  /** One call is as good as three for what stands on a sheet, and quicker. */
  private static final Quiz QUIZ = InventedClass.only(0);

  private static final Grader GRADER = InventedClass.grader(QUIZ);
  private static final int NUMBER = 1;

  private static QuizPages pages(Locale reader) {
    return new QuizPages(PaperSize.LETTER, Sentences.in(reader), reader);
  }

  private static String text(Document document) {
    return new PdfPages(document.pdf()).text();
  }

  private static String plain(String text) {
    return text.replaceAll("[\\s\\h]+", " ");
  }

  private static Variant variant(ServiceCall call) {
    return Variant.numbered(call, QUIZ.seed(), NUMBER);
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void sheetsOfLearnersSayWhatIsAskedAndGiveNothingAway(String language) {
    Locale reader = Locale.forLanguageTag(language);
    Sentences sentences = Sentences.in(reader);
    for (String sheet :
        List.of(
            text(pages(reader).blank(QUIZ)),
            text(pages(reader).worksheet(QUIZ, NUMBER, InventedClass.appearances())))) {
      for (ServiceCall call : QUIZ.calls()) {
        assertThat(sheet).contains(plain(call.complaint().in(reader)));
        assertThat(sheet).contains(call.minutes() + " min");
        assertThat(sheet)
            .doesNotContainIgnoringCase(
                sentences.name(call.objective()) + " (" + sentences.name(call.level()) + ")");
        assertThat(sheet)
            .doesNotContainIgnoringCase(sentences.text(Reasons.name(variant(call).cause())));
      }
      for (String step : List.of("1. ", "2. ", "3. ", "4. ", "5. ")) {
        assertThat(sheet).contains(step);
      }
      int plates = sheet.split(sentences.sentence(Caution.all().get(0)), -1).length - 1;
      assertThat(plates).isEqualTo(QUIZ.calls().size());
    }
  }

  @Test
  void theWorksheetHasEveryReadingOfThatFurnaceAndItsClosedChecksNowhere() {
    String sheet = text(pages(Locale.ENGLISH).worksheet(QUIZ, NUMBER, InventedClass.appearances()));
    PaperWords words = new PaperWords(Sentences.in(Locale.ENGLISH), Locale.ENGLISH);
    QuizNames names = new QuizNames(words);
    for (ServiceCall call : QUIZ.calls()) {
      AsFound.of(variant(call), InventedClass.appearances())
          .forEach(
              (check, outcome) -> {
                assertThat(sheet).contains(plain(CallRows.name(check, words)));
                assertThat(sheet).contains(plain(names.outcome(outcome)));
              });
    }
    assertThat(plain(names.outcome(new Outcome.Amps(1.234e-6, 5.678e-6))))
        .isEqualTo("1.23 µA DC, 5.68 µA AC");
    ServiceCall first = QUIZ.calls().get(0);
    assertThat(first.checks()).noneMatch(c -> c.id().startsWith("combustion"));
    assertThat(text(pages(Locale.ENGLISH).blank(QUIZ))).doesNotContain("combustion");
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void theKeyNamesEveryCauseAndTheExpertsWay(String language) {
    Locale reader = Locale.forLanguageTag(language);
    Sentences sentences = Sentences.in(reader);
    String key = text(pages(reader).key(GRADER, NUMBER, InventedClass.appearances()));
    for (ServiceCall call : QUIZ.calls()) {
      assertThat(key).containsIgnoringCase(sentences.text(Reasons.name(variant(call).cause())));
    }
    for (Criterion criterion : Criterion.values()) {
      assertThat(key).containsIgnoringCase(sentences.name(criterion));
    }
    assertThat(key).contains(plain(sentences.sentence(Reasons.name(new Check.Light()))));
    assertThat(key).contains(sentences.sentence(Caution.all().get(0)));
  }

  @Test
  void theRecordHasEveryMoveAndNoValueOfATestSignal() {
    SheetMarks marks = InventedClass.marks().get(2);
    String record = text(pages(Locale.ENGLISH).marks(QUIZ, GRADER.grade(marks.sheet())));
    assertThat(record)
        .contains(
            "Test signal put in", "Jumper from the sense terminal to the chassis", "Dangerous")
        .contains("No conclusion")
        .doesNotContain("µA");
  }

  @Test
  void namesAreOnOneLineAndMayBeInAnyScript() {
    SheetMarks marks = InventedClass.marks().get(1);
    assertThat(text(pages(Locale.ENGLISH).marks(QUIZ, marks))).contains("Lane, \"Two Rows\"");
    AnswerSheet other =
        new AnswerSheet(
            marks.sheet().engine(), QUIZ.name(), "", "李\u0007\u0000 Ωmega", 1, List.of());
    Document document = pages(Locale.ENGLISH).marks(QUIZ, GRADER.grade(other));
    assertThat(document.title()).endsWith("李 Ωmega");
    assertThat(new PdfPages(document.pdf()).count()).isPositive();
  }
}
