package halfwave.gui.presentation.bench;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Parameter;
import halfwave.display.UnitSystem;
import halfwave.gui.presentation.Wording;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers as people type them into the fields of the window. */
class KnobTest {

  private static OptionalDouble typed(Parameter parameter, String text, Wording words) {
    return Knob.read(text, parameter.dimension(), words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2.2 Mohm | 2.2e6",
        "2.2M | 2.2e6",
        "2.2 MΩ | 2.2e6",
        "2200000 | 2.2e6",
        "  470 k | 470e3",
        "0 | 0",
        "open | Infinity",
        "OPEN | Infinity"
      })
  void readsOhmsInEnglish(String text, double ohms) {
    assertThat(typed(Parameter.CONNECTOR, text, DirectBench.ENGLISH)).hasValue(ohms);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"2,2 MΩ | 2.2e6", "2,2M | 2.2e6", "2.2 Mohm | 2.2e6", "abierto | Infinity"})
  void readsOhmsInSpanish(String text, double ohms) {
    assertThat(typed(Parameter.CONNECTOR, text, DirectBench.SPANISH)).hasValue(ohms);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"16 mm | 0.016", "16mm | 0.016", "−16 mm | -0.016", "0.01 | 0.01"})
  void readsLengths(String text, double meters) {
    assertThat(typed(Parameter.ROD_UP, text, DirectBench.ENGLISH)).hasValue(meters);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", " ", "much", "2.2 MV", "2,2 MΩ", "1e999", "NaN", "--3", "2.2.2", "mm"})
  void refusesNonsense(String text) {
    assertThat(typed(Parameter.CONNECTOR, text, DirectBench.ENGLISH)).isEmpty();
  }

  @Test
  void openIsAWordForOhmsOnly() {
    assertThat(typed(Parameter.ROD_UP, "open", DirectBench.ENGLISH)).isEmpty();
    assertThat(typed(Parameter.SOURCE_VOLTS, "abierto", DirectBench.SPANISH)).isEmpty();
  }

  @Test
  void aNumberThatTheBenchCannotTakeIsNoDeed() {
    Knob up = ConditionView.of(DirectBench.untouched(), DirectBench.ENGLISH).knob(Parameter.ROD_UP);
    assertThat(up.typed("20 mm", DirectBench.ENGLISH)).isPresent();
    assertThat(up.typed("20 m", DirectBench.ENGLISH)).isEmpty();
    assertThat(up.typed("much", DirectBench.ENGLISH)).isEmpty();
  }

  @Test
  void inchesAreReadWhereInchesAreShown() {
    Wording inches = Wording.of(Locale.ENGLISH, UnitSystem.INCH);
    Knob up = ConditionView.of(DirectBench.untouched(), inches).knob(Parameter.ROD_UP);
    assertThat(up.typed("0.5 in", inches)).isPresent();
    assertThat(up.typed(up.value(), inches)).isPresent();
  }

  @Test
  void aBareNumberIsInTheUnitThatIsShown() {
    Wording inches = Wording.of(Locale.ENGLISH, UnitSystem.INCH);
    DirectBench bench = DirectBench.standing();
    bench.want(
        DirectBench.act(DirectBench.turn(Parameter.ROD_UP, 0.0127)),
        DirectBench.act(DirectBench.turn(Parameter.CONNECTOR, 2.2e6)));
    for (Wording words : List.of(DirectBench.ENGLISH, inches)) {
      Knob up = ConditionView.of(bench.shown(), words).knob(Parameter.ROD_UP);
      String number = up.value().replaceFirst(" .*", "");
      assertThat(up.typed(number, words)).as(number).isEqualTo(up.typed(up.value(), words));
    }
    Knob connector = ConditionView.of(bench.shown(), DirectBench.ENGLISH).knob(Parameter.CONNECTOR);
    assertThat(connector.typed("3", DirectBench.ENGLISH))
        .contains(DirectBench.turn(Parameter.CONNECTOR, 3e6));
    assertThat(connector.typed("3 kΩ", DirectBench.ENGLISH))
        .contains(DirectBench.turn(Parameter.CONNECTOR, 3e3));
  }

  @Test
  void whereOpenIsShownABareNumberIsInTheUnitOfTheHealthyValue() {
    DirectBench bench = DirectBench.standing();
    bench.want(DirectBench.act(DirectBench.turn(Parameter.CONNECTOR, Double.POSITIVE_INFINITY)));
    Knob open = ConditionView.of(bench.shown(), DirectBench.ENGLISH).knob(Parameter.CONNECTOR);
    assertThat(open.typed("3", DirectBench.ENGLISH))
        .contains(DirectBench.turn(Parameter.CONNECTOR, 3));
  }

  @Test
  void aHealthyKnobSaysSoAndItsWayBackLeadsThere() {
    DirectBench bench = DirectBench.standing();
    bench.want(DirectBench.act(DirectBench.turn(Parameter.ROD_UP, 0.02)));
    Knob moved = ConditionView.of(bench.shown(), DirectBench.ENGLISH).knob(Parameter.ROD_UP);
    assertThat(moved.asHealthy()).isFalse();
    bench.want(DirectBench.act(moved.healed()));
    Knob healed = ConditionView.of(bench.shown(), DirectBench.ENGLISH).knob(Parameter.ROD_UP);
    assertThat(healed.asHealthy()).isTrue();
    assertThat(healed.place()).isEqualTo(healed.healthyPlace());
  }
}
