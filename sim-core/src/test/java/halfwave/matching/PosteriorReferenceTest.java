package halfwave.matching;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Unit;
import halfwave.validation.Validated;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.junit.jupiter.api.Test;

/**
 * Intervals against closed forms. The normal and the half-normal distribution: Abramowitz and
 * Stegun, Handbook of Mathematical Functions (1964), table 26.1: 90 % lie within 1.644854
 * deviations, 95 % below 1.644854. Two correlated coordinates: weighted least squares with a prior,
 * whose covariance is the inverse of the sum of precisions (Gelman et al., Bayesian Data Analysis,
 * 3rd ed. 2013, ch. 14).
 */
@Validated(Area.EVIDENCE)
class PosteriorReferenceTest {

  private static final double DEVIATE = 1.644854;
  private static final Reference TABLE =
      Reference.calc("Abramowitz and Stegun (1964), table 26.1: 90 % within 1.644854 deviations");
  private static final Reference SQUARES =
      Reference.calc("least squares with a prior: Gelman et al., 3rd ed. 2013, ch. 14");

  private static Posterior posterior(List<Unknown> unknowns, double[] best, double[][] slopes) {
    return new Posterior(
        unknowns,
        new Search.Found(
            new ArrayRealVector(best),
            new Array2DRowRealMatrix(slopes),
            new ArrayRealVector(slopes.length),
            new ArrayRealVector(slopes.length)));
  }

  /**
   * Far from any end: a normal distribution. Readings of slope 100 leave 0.01; the prior nothing.
   */
  @Test
  void farFromItsEndsACoordinateIsNormal() {
    double width = Unknown.SOURCE_VOLTS.widthRatio();
    double deviation = 1 / Math.sqrt(100 * 100 + 1 / (width * width));

    double[] ends =
        posterior(List.of(Unknown.SOURCE_VOLTS), new double[] {0}, new double[][] {{100}})
            .interval(0);

    String window = "2000 even draws: the shortest of their windows is up to 1 % off on each side";
    TABLE
        .check("90 % interval far from its ends: width", Unit.RATIO, ends[1] - ends[0])
        .isCloseTo(2 * DEVIATE * deviation, 0.02 * deviation, window);
    TABLE
        .check("90 % interval far from its ends: lower end", Unit.RATIO, ends[0])
        .isCloseTo(-DEVIATE * deviation, 0.1 * deviation, "near the shortest many are as short");
  }

  /** At its end: half of a normal distribution, 90 % of which lie below the deviate of 95 %. */
  @Test
  void atItsEndACoordinateIsHalfNormal() {
    double width = Unknown.FILM.widthRatio();
    double deviation = 1 / Math.sqrt(10 * 10 + 1 / (width * width));

    double[] ends =
        posterior(List.of(Unknown.FILM), new double[] {0}, new double[][] {{10}}).interval(0);

    assertThat(ends[0]).isZero();
    TABLE
        .check("90 % interval at an end: upper end", Unit.RATIO, ends[1])
        .isCloseTo(DEVIATE * deviation, 0.02 * deviation, "even draws: off by a few of 2000");
  }

  /** Two readings, one of the sum and one of the first alone. */
  @Test
  void covarianceIsThatOfLeastSquaresWithAPrior() {
    double a = 1 / Math.pow(Unknown.SOURCE_VOLTS.widthRatio(), 2);
    double b = 1 / Math.pow(Unknown.SOURCE_OHMS.widthRatio(), 2);
    // precision [[100 + 25 + a, 100], [100, 100 + b]] and its inverse by Cramer's rule
    double determinant = (125 + a) * (100 + b) - 100 * 100;

    Posterior posterior =
        posterior(
            List.of(Unknown.SOURCE_VOLTS, Unknown.SOURCE_OHMS),
            new double[] {0, 0},
            new double[][] {{10, 10}, {5, 0}});

    covariance("first", posterior.covariance().getEntry(0, 0), (100 + b) / determinant);
    covariance("both", posterior.covariance().getEntry(0, 1), -100 / determinant);
    covariance("second", posterior.covariance().getEntry(1, 1), (125 + a) / determinant);
  }

  private static void covariance(String at, double computed, double expected) {
    SQUARES
        .check("covariance of two unknowns by Cramer's rule", Unit.RATIO, computed)
        .at(at)
        .isCloseTo(expected, 1e-12, "rounding");
  }
}
