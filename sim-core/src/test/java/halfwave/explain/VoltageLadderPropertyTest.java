package halfwave.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import halfwave.bench.Bench;
import halfwave.bench.Coat;
import halfwave.bench.Condition;
import halfwave.bench.ShippedBenches;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The rungs of the ladder are the whole of the source's voltage, whatever the bench. */
class VoltageLadderPropertyTest {

  static Stream<Bench> benches() {
    Condition healthy = Condition.HEALTHY;
    List<Condition> conditions =
        List.of(
            healthy,
            healthy.withRodCoat(Coat.even(50e-6, 1000)),
            healthy.withBurnerScale(3e6, 1e-10),
            healthy.withGroundExtra(5e6),
            healthy.withConnector(2e6).withLeakage(5e6),
            healthy.withConnector(Double.POSITIVE_INFINITY),
            healthy.withJumper(0),
            healthy.withManifold(0));
    return ShippedBenches.all().stream().flatMap(b -> conditions.stream().map(b::with));
  }

  @ParameterizedTest
  @MethodSource("benches")
  void rungsAddUpToTheSource(Bench bench) {
    BenchAnswer answer = BenchAnswer.of(bench);
    for (VoltageLadder ladder :
        List.of(
            Objects.requireNonNull(answer.rodPositive()),
            Objects.requireNonNull(answer.rodNegative()))) {
      double sum = ladder.rungVolts().values().stream().mapToDouble(v -> v).sum();
      // ten terms of up to 300 V, each rounded
      assertThat(sum).isCloseTo(ladder.sourceVolts(), within(1e-9));
    }
  }

  @ParameterizedTest
  @MethodSource("benches")
  void theCathodeOfEachHalfCycleTakesMoreThanTheAnode(Bench bench) {
    BenchAnswer answer = BenchAnswer.of(bench);
    VoltageLadder positive = Objects.requireNonNull(answer.rodPositive());
    VoltageLadder negative = Objects.requireNonNull(answer.rodNegative());
    // microvolts: a dead path has rounding on both sides
    assertThat(Math.abs(volts(positive, Rung.BURNER_SHEATH)) + 1e-6)
        .isGreaterThanOrEqualTo(
            answerFlows(positive) ? Math.abs(volts(positive, Rung.ROD_SHEATH)) : 0);
    assertThat(Math.abs(volts(negative, Rung.ROD_SHEATH)) + 1e-6)
        .isGreaterThanOrEqualTo(
            answerFlows(negative) ? Math.abs(volts(negative, Rung.BURNER_SHEATH)) : 0);
  }

  private static boolean answerFlows(VoltageLadder ladder) {
    return Math.abs(ladder.flameAmps()) > 1e-12;
  }

  private static double volts(VoltageLadder ladder, Rung rung) {
    return ladder.rungVolts().getOrDefault(rung, Double.NaN);
  }

  @Test
  void filmsTakeTheirShare() {
    Bench bench = ShippedBenches.standard();
    BenchAnswer dirty =
        BenchAnswer.of(bench.with(Condition.HEALTHY.withRodCoat(Coat.even(200e-6, 10_000))));
    assertThat(Math.abs(volts(Objects.requireNonNull(dirty.rodPositive()), Rung.ROD_FILM)))
        .isGreaterThan(1);
  }
}
