package halfwave.gui.presentation.charts;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.display.UnitSystem;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.State;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class ChartWordsTest {

  private static final Pattern PLACEHOLDER = Pattern.compile("\\{\\d}");
  private static final List<String> OURS =
      List.of("chart.", "wave.", "ladder.", "whatif.", "map.", "history.");

  private static ResourceBundle bundle(String language) {
    return ResourceBundle.getBundle(
        "halfwave.gui.presentation.window",
        Locale.forLanguageTag(language),
        ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
  }

  @Test
  void bothLanguagesSayEverything() {
    ResourceBundle english = bundle("en");
    ResourceBundle spanish = bundle("es");
    for (String key : english.keySet()) {
      if (OURS.stream().anyMatch(key::startsWith)) {
        assertThat(spanish.getString(key)).as(key).isNotEmpty();
        assertThat(placeholders(spanish.getString(key)))
            .as(key)
            .isEqualTo(placeholders(english.getString(key)));
      }
    }
    assertThat(spanish.keySet()).containsAll(english.keySet());
  }

  private static TreeSet<String> placeholders(String text) {
    return PLACEHOLDER
        .matcher(text)
        .results()
        .map(r -> r.group())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void everyChartSpeaksSpanish() {
    Wording words = Wording.of(Locale.forLanguageTag("es"), UnitSystem.INCH);
    State state = ChartStates.running();
    Healthy healthy = ChartStates.healthy(state);
    for (WaveView.Tap tap : WaveView.Tap.values()) {
      assertThat(WaveView.of(state, healthy, tap, words, 100).spoken()).contains("varilla");
    }
    assertThat(LadderView.of(state, healthy, words, 9).spoken()).contains("varilla");
    assertThat(HistoryView.of(state, healthy, words, 100).summary()).contains("Señal");
  }
}
