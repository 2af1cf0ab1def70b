package halfwave.gui.presentation.desk;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.display.UnitSystem;
import halfwave.fault.FaultKind;
import halfwave.gui.presentation.Wording;
import halfwave.io.quiz.ShippedQuizzes;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What an instructor finds in the bank. */
class BankViewTest {

  private static final Quiz BANK = ShippedQuizzes.bank();

  private static Wording words(String language) {
    return Wording.of(Locale.forLanguageTag(language), UnitSystem.METRIC);
  }

  @ParameterizedTest
  @CsvSource({"en, LOST  ground", "en, ground lost", "es, tierra"})
  void aFaultFindsEveryCallThatMayHaveIt(String language, String typed) {
    var found = BankView.of(BANK, typed, words(language)).calls();
    assertThat(found)
        .containsAll(BANK.calls().stream().filter(BankViewTest::lostGround).toList())
        .hasSizeLessThan(BANK.calls().size());
  }

  private static boolean lostGround(ServiceCall call) {
    return call.hidden().stream().anyMatch(h -> h.cause().kinds().contains(FaultKind.GROUND_LOST));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  "})
  void withoutAWordAllAreThere(String typed) {
    assertThat(BankView.of(BANK, typed, words("en")).calls()).isEqualTo(BANK.calls());
  }

  @ParameterizedTest
  @ValueSource(strings = {"xylophone", "(", "candle xylophone"})
  void whatNoCallHasFindsNone(String typed) {
    assertThat(BankView.of(BANK, typed, words("en")).calls()).isEmpty();
  }
}
