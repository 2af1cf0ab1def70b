package halfwave.explain;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Bench;
import halfwave.bench.Coat;
import halfwave.bench.Condition;
import halfwave.bench.RodPosition;
import halfwave.bench.ShippedBenches;
import halfwave.display.BenchReport;
import halfwave.display.Sentences;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The account says what stands out on a bench, and can be said in every language. */
class AccountTest {

  private static final double OPEN = Double.POSITIVE_INFINITY;
  private static final Condition HEALTHY = Condition.HEALTHY;

  /** Conditions with the sentence that must be in their account. */
  private static final Map<Condition, MessageKey> TELLING =
      Map.ofEntries(
          Map.entry(HEALTHY, MessageKey.ACCOUNT_HEALTHY),
          Map.entry(HEALTHY.withConnector(OPEN), MessageKey.ACCOUNT_LEAD_OFF),
          Map.entry(HEALTHY.withGroundExtra(OPEN), MessageKey.ACCOUNT_GROUND_LOST),
          Map.entry(HEALTHY.withJumper(0), MessageKey.ACCOUNT_JUMPER),
          Map.entry(HEALTHY.withLeakage(1e6), MessageKey.ACCOUNT_CONDUCTS_ONLY),
          Map.entry(HEALTHY.withLeakage(5e6), MessageKey.ACCOUNT_LEAKAGE),
          Map.entry(HEALTHY.withManifold(0), MessageKey.ACCOUNT_NO_FLAME),
          Map.entry(HEALTHY.withConnector(6e6), MessageKey.ACCOUNT_WEAK),
          Map.entry(HEALTHY.withConnector(20e6), MessageKey.ACCOUNT_TOO_WEAK),
          Map.entry(HEALTHY.withAttachment(0.2), MessageKey.ACCOUNT_REVERSED),
          Map.entry(HEALTHY.withRodCoat(Coat.even(1e-5, 1000)), MessageKey.ACCOUNT_FILM),
          Map.entry(
              HEALTHY.withRodPosition(RodPosition.shifted(0, 8.5e-3, -15e-3)),
              MessageKey.ACCOUNT_ROD_TOUCHES));

  private static List<MessageKey> keys(Bench bench) {
    return Account.of(BenchAnswer.of(bench)).stream().map(Message::key).toList();
  }

  @Test
  void tellsWhatStandsOut() {
    TELLING.forEach(
        (condition, key) ->
            assertThat(keys(ShippedBenches.standard().with(condition)))
                .as("%s", condition)
                .contains(key));
  }

  @Test
  void canBeSaidInEveryLanguage() {
    for (Bench bench : ShippedBenches.all()) {
      for (Condition condition : TELLING.keySet()) {
        if (bench.design().ignition() == ShippedBenches.standard().design().ignition()) {
          BenchAnswer answer = BenchAnswer.of(bench.with(condition));
          for (Locale locale : Sentences.LANGUAGES) {
            String page = BenchReport.text(answer, Sentences.in(locale));
            assertThat(page).doesNotContain("{").doesNotContain("NaN").doesNotContain("Infinity");
            assertThat(page.lines().mapToInt(String::length).max().orElse(0))
                .isLessThanOrEqualTo(80);
          }
        }
      }
    }
  }
}
