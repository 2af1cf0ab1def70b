package halfwave.paper;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.display.Sentences;
import halfwave.io.lesson.ShippedDemonstrations;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Question;
import halfwave.lesson.Step;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A demonstration as a handout, with its key. */
class HandoutPagesContractTest extends PagesContract {

  private static final Demonstration SHOWN =
      ShippedDemonstrations.named("a-dirty-rod").orElseThrow();

  @Override
  Document document(PaperSize size, Sentences sentences, Locale reader) {
    return HandoutPages.of(SHOWN, size, sentences, reader, true);
  }

  @Override
  String expected(Locale reader) {
    return SHOWN.title().in(reader);
  }

  private static PdfPages handout(Locale reader, boolean key) {
    return new PdfPages(
        HandoutPages.of(SHOWN, PaperSize.A4, Sentences.in(reader), reader, key).pdf());
  }

  /** As text is found in a PDF: whatever spaces hold a number to its unit. */
  private static String plain(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void everyStepIsThereAndTheKeyOnlyWhereItIsWanted(String language) {
    Locale reader = Locale.forLanguageTag(language);
    PdfPages bare = handout(reader, false);
    PdfPages keyed = handout(reader, true);

    for (Step step : SHOWN.steps()) {
      assertThat(bare.text()).contains(plain(step.heading().in(reader)));
      assertThat(bare.text()).contains(plain(step.say().in(reader)));
      Question question = step.question();
      if (question != null) {
        assertThat(bare.text()).contains(plain(question.ask().in(reader)));
        question
            .answers()
            .forEach(a -> assertThat(bare.text()).contains(plain(a.text().in(reader))));
      }
      if (step.explanation() != null) {
        assertThat(bare.text()).doesNotContain(plain(step.explanation().in(reader)));
        assertThat(keyed.text()).contains(plain(step.explanation().in(reader)));
      }
    }
    assertThat(keyed.count()).isGreaterThan(bare.count());
    // the sheets that are handed out are the same with the key behind them
    assertThat(keyed.text(keyed.count() - 1)).doesNotContain("☐");
    for (int k = 0; k < bare.count(); k++) {
      assertThat(keyed.text(k).replaceAll("\\d+ (of|de) \\d+ *$", ""))
          .isEqualTo(bare.text(k).replaceAll("\\d+ (of|de) \\d+ *$", ""));
    }
  }
}
