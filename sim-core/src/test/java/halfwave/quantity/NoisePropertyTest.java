package halfwave.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import halfwave.quantity.Noise.Purpose;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.apache.commons.math3.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Test;

/** Chance from seed, purpose and time; judged by the statistics of Commons Math. */
class NoisePropertyTest {

  private static final int COUNT = 20_000;

  private static double[] draws(long seed, Purpose purpose) {
    double[] draws = new double[COUNT];
    for (int k = 0; k < COUNT; k++) {
      draws[k] = Noise.gaussian(seed, purpose, 20L * k);
    }
    return draws;
  }

  private static double product(double[] a, double[] b, int lag) {
    double sum = 0;
    for (int k = lag; k < COUNT; k++) {
      sum += a[k] * b[k - lag];
    }
    return sum / COUNT;
  }

  @Test
  void isNormal() {
    double[] draws = draws(7, Purpose.FLICKER);
    // a true normal fails at this level once in a thousand seeds; this seed is fixed
    assertThat(new KolmogorovSmirnovTest().kolmogorovSmirnovTest(new NormalDistribution(), draws))
        .isGreaterThan(1e-3);
    DescriptiveStatistics s = new DescriptiveStatistics(draws);
    // four standard errors of mean and deviation
    assertThat(s.getMean()).isCloseTo(0, within(4 / Math.sqrt(COUNT)));
    assertThat(s.getStandardDeviation()).isCloseTo(1, within(4 / Math.sqrt(2 * COUNT)));
  }

  @Test
  void neighboursPurposesAndSeedsAreStrangers() {
    double[] a = draws(7, Purpose.FLICKER);
    // four standard errors of a correlation of nothing
    double bound = 4 / Math.sqrt(COUNT);
    assertThat(product(a, a, 1)).isCloseTo(0, within(bound));
    assertThat(product(a, draws(7, Purpose.VIBRATION), 0)).isCloseTo(0, within(bound));
    assertThat(product(a, draws(8, Purpose.FLICKER), 0)).isCloseTo(0, within(bound));
  }

  @Test
  void sameQuestionSameAnswer() {
    assertThat(Noise.gaussian(3, Purpose.FLICKER, 40))
        .isEqualTo(Noise.gaussian(3, Purpose.FLICKER, 40))
        .isNotEqualTo(Noise.gaussian(3, Purpose.FLICKER, 60));
  }

  @Test
  void uniformStaysBelowOne() {
    double sum = 0;
    for (int k = 0; k < COUNT; k++) {
      double u = Noise.uniform(1, Purpose.VIBRATION, k);
      assertThat(u).isGreaterThanOrEqualTo(0).isLessThan(1);
      sum += u;
    }
    // four standard errors of the mean of a uniform number
    assertThat(sum / COUNT).isCloseTo(0.5, within(4 / Math.sqrt(12.0 * COUNT)));
  }
}
