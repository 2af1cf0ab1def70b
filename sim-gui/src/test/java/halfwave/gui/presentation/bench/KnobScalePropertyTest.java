package halfwave.gui.presentation.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import halfwave.fault.FaultKind;
import halfwave.gui.presentation.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for the way of every control and of every fault's severity. */
class KnobScalePropertyTest {

  private static final int PLACES = 2000;
  private static final long SEED = 11;

  /** A value keeps three digits: at worst 1.00 stands for 1.005. */
  private static final double THREE_DIGITS = 0.005;

  /**
   * A scale, and what it belongs to.
   *
   * @param name of what
   * @param scale the scale
   */
  record Named(String name, KnobScale scale) {
    @Override
    public String toString() {
      return name + " " + scale;
    }
  }

  static Stream<Named> scales() {
    List<Named> all = new ArrayList<>();
    knobs().forEach(k -> all.add(new Named(k.parameter().id(), k.scale())));
    for (FaultKind kind : FaultKind.values()) {
      KnobScale scale = FaultCard.of(kind, DirectBench.ENGLISH).scale();
      if (scale != null) {
        all.add(new Named(kind.id(), scale));
      }
    }
    return all.stream();
  }

  static Stream<Knob> knobs() {
    return ConditionView.of(DirectBench.untouched(), DirectBench.ENGLISH).groups().stream()
        .flatMap(g -> g.knobs().stream());
  }

  /** 25 controls and some 25 faults with a severity: a scan that finds none proves nothing. */
  @Test
  void thereIsSomethingToCheck() {
    assertThat(scales()).hasSizeGreaterThan(40);
  }

  @ParameterizedTest
  @MethodSource("scales")
  void bothEndsAreTheEndsOfTheRange(Named named) {
    KnobScale scale = named.scale();
    assertThat(scale.value(0)).isEqualTo(scale.low());
    assertThat(scale.value(1)).isEqualTo(scale.high());
    assertThat(scale.place(scale.low())).isZero();
    assertThat(scale.place(scale.high())).isEqualTo(1);
    assertThat(scale.value(-3)).isEqualTo(scale.value(0));
    assertThat(scale.value(3)).isEqualTo(scale.value(1));
  }

  @ParameterizedTest
  @MethodSource("scales")
  void furtherIsMore(Named named) {
    double before = named.scale().value(0);
    for (int k = 1; k <= PLACES; k++) {
      double here = named.scale().value(k / (double) PLACES);
      assertThat(here).as("place %s of %s", k, PLACES).isGreaterThanOrEqualTo(before);
      before = here;
    }
  }

  @ParameterizedTest
  @MethodSource("scales")
  void aPlaceAndItsValueLeadToEachOther(Named named) {
    KnobScale scale = named.scale();
    Random random = new Random(SEED);
    for (int k = 0; k < 500; k++) {
      double value = scale.value(random.nextDouble());
      double again = scale.value(scale.place(value));
      if (Double.isInfinite(value)) {
        assertThat(again).isEqualTo(value);
      } else {
        assertThat(again)
            .as("seed %s", SEED)
            .isCloseTo(value, within(THREE_DIGITS * Math.abs(value) + 1e-15 * scale.high()));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("knobs")
  void whereverAHandTurnsAKnobTheBenchCanTakeThatNumber(Knob knob) {
    for (int k = 0; k <= PLACES; k++) {
      double value = knob.scale().value(k / (double) PLACES);
      assertThat(knob.parameter().accepts(value)).as("%s = %s", knob.name(), value).isTrue();
    }
  }

  @ParameterizedTest
  @MethodSource("knobs")
  void whatAFieldShowsCanBeTypedIntoIt(Knob knob) {
    for (Wording words : List.of(DirectBench.ENGLISH, DirectBench.SPANISH)) {
      Knob in = ConditionView.of(DirectBench.untouched(), words).knob(knob.parameter());
      for (String text : List.of(in.value(), in.healthy())) {
        assertThat(in.typed(text, words)).as("%s typed as %s", in.name(), text).isPresent();
      }
    }
  }
}
