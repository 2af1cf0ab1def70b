package halfwave.gui.presentation.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.forecast.Forecast;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Benches;
import halfwave.gui.presentation.bench.DirectBench;
import halfwave.gui.presentation.evidence.ForecastForm.Field;
import halfwave.work.Repair;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What is asked of a forecast, and what the window shows of it. */
class ForecastModelTest {

  private static final Wording WORDS = DirectBench.ENGLISH;
  private static final LocalDate TODAY = LocalDate.of(2026, 1, 15);

  private final Deque<Runnable> background = new ArrayDeque<>();
  private final List<Throwable> failures = new ArrayList<>();
  private final ForecastModel model =
      new ForecastModel(background::add, Runnable::run, () -> TODAY, failures::add);

  private static ForecastForm usual() {
    return ForecastForm.usual(Benches.opened(), WORDS);
  }

  private static ForecastForm with(Field field, String text, List<LogEntry> log) {
    Map<Field, String> texts = new EnumMap<>(usual().texts());
    texts.put(field, text);
    return new ForecastForm(texts, false, true, log);
  }

  private static LogEntry read(String day, String amps) {
    return LogEntry.typed(day, null, amps, WORDS).entry();
  }

  @Test
  void whatIsUsualCanBeAsked() {
    assertThat(usual().refusals(WORDS)).isEmpty();
    assertThat(usual().texts()).containsEntry(Field.HOURS, "1000").containsEntry(Field.YEARS, "5");
  }

  @Test
  void eachFieldThatIsWrongIsNamedWithWhatIsAllowed() {
    assertThat(with(Field.HOURS, "9000", List.of()).refusals(WORDS))
        .containsOnlyKeys(Field.HOURS)
        .containsEntry(Field.HOURS, "10 to 8760");
    assertThat(with(Field.LIMIT, "much", List.of()).refusals(WORDS).get(Field.LIMIT))
        .contains("0.01", "200", "µA");
  }

  @Test
  void datedLinesAreReadOrRefused() {
    assertThat(read("2025-10-04", "2,4").amps()).isEqualTo(2.4e-6);
    assertThat(LogEntry.typed("4.10.2025", null, "2.4", WORDS).badDay()).isTrue();
    assertThat(LogEntry.typed("2025-10-04", null, "", WORDS).refusal()).contains("µA");
    LogEntry cleaned = LogEntry.typed("2025-10-04", Repair.REPLACE_ROD, "", WORDS).entry();
    assertThat(cleaned.said(WORDS)).startsWith("2025-10-04: replace");
  }

  @Test
  void aLogIsPutInOrderAndCountedFromItsFirstDay() {
    var log =
        with(Field.HOURS, "1000", List.of(read("2026-10-04", "2.1"), read("2025-10-04", "2.4")))
            .flameLog(TODAY);
    assertThat(log.calendar().first()).isEqualTo(LocalDate.of(2025, 10, 4));
    // a year is 365 of the 365.25 days that the hours are spread over
    assertThat(log.entries().get(1).flameSeconds() / 3600).isBetween(999.0, 1000.0);
    assertThat(
            with(Field.HOURS, "8760", List.of(read("1990-01-01", "2"), read("2020-01-01", "1")))
                .flameLog(TODAY))
        .as("more than 100,000 h")
        .isNull();
  }

  @Test
  void aForecastHasAChartADateAndATable() {
    assertThat(model.forecast(Benches.opened(), with(Field.YEARS, "2", List.of()))).isTrue();
    while (!background.isEmpty()) {
      background.remove().run();
    }
    assertThat(failures).isEmpty();
    ForecastView view = ForecastView.of(model.answer(), WORDS);
    Forecast forecast = view.forecast();
    assertThat(forecast.band()).hasSizeGreaterThan(5);
    assertThat(view.said()).anySatisfy(s -> assertThat(s).contains("20", "h of flame"));
    assertThat(view.rows()).hasSize(forecast.plans().size()).allMatch(r -> r.size() == 5);
    assertThat(view.rows().get(0).get(0)).isEqualTo("Do nothing");
    assertThat(view.doubtful()).isFalse();
  }
}
