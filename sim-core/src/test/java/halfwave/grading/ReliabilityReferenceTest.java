package halfwave.grading;

import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Unit;
import halfwave.validation.Validated;
import org.junit.jupiter.api.Test;

/**
 * Against Kuder and Richardson, Psychometrika 2 (1937) 151, formula 20: for items that are right or
 * wrong, alpha is KR-20 = k/(k−1) · (1 − Σ p q / σ²), all variances those of the population. And
 * against what follows from the definition for items that are copies of each other (Cronbach,
 * Psychometrika 16 (1951) 297).
 */
@Validated(Area.RELIABILITY)
class ReliabilityReferenceTest {

  private static final double ROUNDING = 1e-12;
  private static final Reference KUDER =
      Reference.calc("KR-20: Kuder and Richardson, Psychometrika 2 (1937) 151");
  private static final Reference CRONBACH =
      Reference.calc("the definition: Cronbach, Psychometrika 16 (1951) 297");

  private static final double[][] RIGHT_OR_WRONG = {
    {1, 1, 1, 1, 0},
    {1, 1, 1, 0, 0},
    {1, 0, 1, 0, 0},
    {1, 1, 0, 1, 1},
    {0, 0, 0, 0, 0},
    {1, 1, 1, 1, 1},
    {0, 1, 0, 0, 0},
    {1, 0, 0, 0, 1}
  };

  @Test
  void isKuderAndRichardsonsFormulaForRightOrWrong() {
    int k = RIGHT_OR_WRONG[0].length;
    int n = RIGHT_OR_WRONG.length;
    double pq = 0;
    for (int i = 0; i < k; i++) {
      double p = 0;
      for (double[] row : RIGHT_OR_WRONG) {
        p += row[i] / n;
      }
      pq += p * (1 - p);
    }
    double mean = 0;
    double square = 0;
    for (double[] row : RIGHT_OR_WRONG) {
      double total = 0;
      for (double mark : row) {
        total += mark;
      }
      mean += total / n;
      square += total * total / n;
    }
    double expected = k / (k - 1.0) * (1 - pq / (square - mean * mean));
    KUDER
        .check("alpha of items right or wrong", Unit.RATIO, Reliability.alpha(RIGHT_OR_WRONG))
        .isCloseTo(expected, ROUNDING, "rounding of sums of a few terms");
  }

  @Test
  void isOneForItemsThatAllSayTheSame() {
    double[][] marks = {{0.2, 0.2, 0.2}, {0.5, 0.5, 0.5}, {0.9, 0.9, 0.9}};
    CRONBACH
        .check("alpha of items that are copies", Unit.RATIO, Reliability.alpha(marks))
        .isCloseTo(1, ROUNDING, "rounding of sums of a few terms");
  }

  @Test
  void isUnknownWithoutLearnersItemsOrDifferences() {
    assertTrue(Double.isNaN(Reliability.alpha(new double[][] {})));
    assertTrue(Double.isNaN(Reliability.alpha(new double[][] {{1, 0}})));
    assertTrue(Double.isNaN(Reliability.alpha(new double[][] {{1}, {0}})));
    assertTrue(Double.isNaN(Reliability.alpha(new double[][] {{1, 0}, {0, 1}})));
  }
}
