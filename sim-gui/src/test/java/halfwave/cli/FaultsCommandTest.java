package halfwave.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import halfwave.fault.FaultKind;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The command {@code faults}. */
class FaultsCommandTest {

  @Test
  void allKindsAreListed() throws IOException {
    CommandRun run = CommandRun.of("faults");
    JsonNode all = new ObjectMapper().readTree(CommandRun.of("faults", "--json").out());

    assertThat(run.status()).isZero();
    assertThat(run.out().lines()).hasSize(3 * FaultKind.values().length);
    assertThat(run.out())
        .containsPattern("rod-fouled +rod +fouled rod\n")
        .containsPattern("typical 8.00 MΩ, from 500 kΩ to 100 MΩ +Shows all the time")
        .containsPattern("Put right by: clean-rod-with-pad, .*, replace-rod");
    assertThat(all).hasSize(FaultKind.values().length);
    assertThat(all)
        .allSatisfy(
            kind -> {
              assertThat(kind.get("curedBy")).isNotEmpty();
              assertThat(kind.get("shownBy")).isNotEmpty();
            });
  }

  @ParameterizedTest
  @EnumSource(FaultKind.class)
  void everyKindIsShown(FaultKind kind) {
    for (String language : new String[] {"--language=en", "--language=es"}) {
      CommandRun run = CommandRun.of("faults", kind.id(), language);
      assertThat(run.status()).isZero();
      assertThat(run.out()).startsWith(kind.id() + ": ").doesNotContain("{", "Infinity", "NaN");
    }
  }

  @Test
  void oneKindIsShownInDetail() throws IOException {
    assertThat(CommandRun.of("faults", "ceramic-leaks-hot").out())
        .contains("Shows only with heat", "from 100 kΩ to 20.0 MΩ", "replace-insulator");
    assertThat(CommandRun.of("faults", "lead-broken", "--language=es").out())
        .contains("cambiar el cable del sensor");
    JsonNode json =
        new ObjectMapper().readTree(CommandRun.of("faults", "connector-off", "--json").out());
    assertThat(json.get("severity").get("most").textValue()).isEqualTo("open");
    assertThat(json.get("trigger").isNull()).isTrue();
    assertThat(json.get("curedBy").toString()).contains("remake-connector", "replace-lead");
  }

  /** What shows only at times says when. */
  @Test
  void whatShowsItOnlyAtTimesSaysWhen() throws IOException {
    assertThat(CommandRun.of("faults", "blower-dead").out())
        .containsPattern("blower +feel .* \\(once the board has switched the blower on\\)");
    assertThat(CommandRun.of("faults", "line-reversed").out())
        .containsPattern("status-light .* \\(only on boards that check it\\)")
        .containsPattern("polarity +measure line and neutral to ground\n");
    JsonNode json =
        new ObjectMapper().readTree(CommandRun.of("faults", "blower-dead", "--json").out());
    assertThat(json.at("/provisos/blower").textValue()).isEqualTo("once-blower-is-on");
  }

  @Test
  void anUnknownFaultIsOneLine() {
    CommandRun run = CommandRun.of("faults", "gremlins");

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.complaints()).hasSize(1);
    assertThat(run.err()).startsWith("gremlins: ").contains("rod-silica", "board-fault");
  }
}
