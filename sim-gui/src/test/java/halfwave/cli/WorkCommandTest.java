package halfwave.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import halfwave.work.Work;
import java.io.IOException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The command {@code work}. */
class WorkCommandTest {

  static Stream<String> ids() {
    return Work.all().stream().map(Work::id);
  }

  @Test
  void everythingIsListed() throws IOException {
    CommandRun run = CommandRun.of("work");
    JsonNode all = new ObjectMapper().readTree(CommandRun.of("work", "--json").out());

    assertThat(run.status()).isZero();
    assertThat(ids()).allSatisfy(id -> assertThat(run.out()).contains("  " + id + " "));
    assertThat(run.out())
        .containsPattern("replace-rod +13 min +Power off, gas off +replace the rod")
        .contains("Never bypass or jumper", "Turn off gas and power");
    assertThat(all).hasSize(Work.all().size());
    assertThat(CommandRun.of("work", "--language=es").out()).contains("Corriente cortada");
  }

  @ParameterizedTest
  @MethodSource("ids")
  void everyOneIsShown(String id) {
    for (String language : new String[] {"--language=en", "--language=es"}) {
      CommandRun run = CommandRun.of("work", id, language);
      assertThat(run.status()).isZero();
      assertThat(run.out()).startsWith(id + ": ").doesNotContain("{", "Infinity", "NaN");
    }
  }

  @Test
  void oneRepairIsShownWithWhatItTakes() {
    assertThat(CommandRun.of("work", "bend-rod").out())
        .contains("Minutes: 9, of which 5", "chance 20.0 %", "makeshift", "pliers");
    assertThat(CommandRun.of("work", "replace-gas-valve").out()).contains("leak solution");
  }

  @Test
  void theBenchDecidesOnHazards() {
    assertThat(CommandRun.of("work", "cleaning-igniter").out()).contains("80.0 %");
    assertThat(CommandRun.of("work", "igniter", "--bench=direct-spark-separate-rod").out())
        .contains("ten kilovolts");
    assertThat(CommandRun.of("work", "igniter").out()).doesNotContain("ten kilovolts");
  }

  @Test
  void theStateAndTheWayToItAreSaid() {
    String series = CommandRun.of("work", "series-current").out();
    assertThat(series)
        .contains("it has to burn", "How to get there: switch off", "hold the door switch in")
        .contains("Never tape or jumper it", "manufacturer’s service procedure")
        .doesNotContain("Let it cool");
    assertThat(CommandRun.of("work", "set-gas-pressure").out())
        .contains("Parts: none", "may be hot meanwhile")
        .doesNotContain("0 units", "Let it cool");
    assertThat(CommandRun.of("work", "open-gas-cock").out()).doesNotContain("Needs:");
    assertThat(CommandRun.of("work", "replace-rod").out()).contains("Needs: nut driver");
  }

  @Test
  void sparkBenchesHaveNoIgniterToBreak() {
    String bench = "--bench=direct-spark-separate-rod";
    assertThat(CommandRun.of("work", bench).out())
        .doesNotContain("bumping-igniter", "replace the igniter")
        .contains("replace the spark electrode");
    assertThat(CommandRun.of("work", "replace-igniter", bench).out())
        .contains("spark electrode, its cable", "ceramic cracks easily")
        .doesNotContain("brittle", "igniter’s element");
    assertThat(CommandRun.of("work", "bumping-igniter", bench).out())
        .contains("Not on this appliance");
    assertThat(CommandRun.of("work", "--bench=intermittent-pilot").out())
        .doesNotContain("replace-inducer");
  }

  @Test
  void anUnknownNameIsAnsweredWithAll() {
    assertThat(CommandRun.of("work", "pray").complaints())
        .singleElement()
        .asString()
        .contains("ask-what-happens", "series-current", "replace-rod", "gas-left-on");
  }

  @Test
  void badInputIsOneLine() {
    String[][] wrong = {{"work", "pray"}, {"work", "--bench=none"}, {"work", "rod", "rod"}};
    for (String[] args : wrong) {
      CommandRun run = CommandRun.of(args);

      assertThat(run.status()).as(String.join(" ", args)).isEqualTo(2);
      assertThat(run.out()).isEmpty();
      assertThat(run.complaints()).hasSize(1);
    }
  }
}
