package halfwave.grading;

import org.apache.commons.math3.stat.descriptive.moment.Variance;

/** How well the calls of a quiz agree on who knows what. */
public final class Reliability {

  private Reliability() {}

  /**
   * Cronbach's alpha, α = k/(k−1) · (1 − Σ σ²_i / σ²_total), of sample variances (Cronbach,
   * Psychometrika 16 (1951) 297).
   *
   * @param marks row: learner, column: item; rows of the same length
   * @return at most one; NaN for fewer than two learners or items, or where all totals are the same
   */
  public static double alpha(double[][] marks) {
    int learners = marks.length;
    int items = learners == 0 ? 0 : marks[0].length;
    if (learners < 2 || items < 2) {
      return Double.NaN;
    }
    Variance variance = new Variance();
    double[] totals = new double[learners];
    double sum = 0;
    for (int i = 0; i < items; i++) {
      double[] column = new double[learners];
      for (int k = 0; k < learners; k++) {
        column[k] = marks[k][i];
        totals[k] += marks[k][i];
      }
      sum += variance.evaluate(column);
    }
    double total = variance.evaluate(totals);
    return total > 0 ? items / (items - 1.0) * (1 - sum / total) : Double.NaN;
  }
}
