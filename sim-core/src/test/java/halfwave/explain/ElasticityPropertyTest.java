package halfwave.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import halfwave.bench.Bench;
import halfwave.bench.Condition;
import halfwave.bench.Parameter;
import halfwave.bench.Readings;
import halfwave.bench.ShippedBenches;
import halfwave.bench.Stages;
import halfwave.circuit.Part;
import halfwave.circuit.Solved;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Elasticities say what a small change really does. */
class ElasticityPropertyTest {

  private static final Bench BENCH =
      ShippedBenches.standard().with(Condition.HEALTHY.withConnector(1e5).withLeakage(50e6));

  private static double dc(Bench bench) {
    return ((Solved) Readings.undisturbed(new Stages(), bench)).currentMeanAmps(Part.CONNECTOR);
  }

  @ParameterizedTest
  @EnumSource(Parameter.class)
  void predictsAChangeOfHalfAPerCent(Parameter parameter) {
    List<Elasticity> all = Elasticity.all(new Stages(), BENCH);
    double value = parameter.of(BENCH);
    boolean told = all.stream().anyMatch(e -> e.parameter() == parameter);
    assertThat(told).isEqualTo(value != 0 && value < Double.POSITIVE_INFINITY);
    double elasticity =
        all.stream()
            .filter(e -> e.parameter() == parameter)
            .mapToDouble(Elasticity::dcElasticityRatio)
            .findFirst()
            .orElse(0);
    double changed = value == 0 || !told ? value : value * 0.995;
    double predicted = dc(BENCH) * (1 - (told ? 0.005 * elasticity : 0));
    // second order of half a per cent in laws of power 1 to 3, plus the table's own bends
    assertThat(dc(told ? parameter.with(BENCH, changed) : BENCH))
        .isCloseTo(predicted, within(4e-4 * dc(BENCH)));
  }

  @Test
  void strongestFirstAndNothingWithoutASignal() {
    List<Elasticity> all = Elasticity.all(new Stages(), BENCH);
    assertThat(all)
        .isSortedAccordingTo(
            (a, b) ->
                Double.compare(Math.abs(b.dcElasticityRatio()), Math.abs(a.dcElasticityRatio())));
    Bench dead = BENCH.with(Condition.HEALTHY.withManifold(0));
    assertThat(Elasticity.all(new Stages(), dead)).isEmpty();
  }
}
