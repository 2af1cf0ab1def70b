package halfwave.diagnosis;

import org.apache.commons.math3.util.FastMath;

/**
 * How much is not known, and how much an answer tells (Shannon, Bell Syst. Tech. J. 27 (1948) 379).
 */
public final class Information {

  private static final double LN_2 = FastMath.log(2);

  private Information() {}

  /**
   * Entropy H = −Σ p log₂ p (bits) of weights that need not sum to one.
   *
   * @param weights zero or above, not all zero
   */
  public static double entropyBits(double[] weights) {
    double sum = 0;
    double weighted = 0;
    for (double w : weights) {
      if (w > 0) {
        sum += w;
        weighted += w * FastMath.log(w);
      }
    }
    return Math.max(0, (FastMath.log(sum) - weighted / sum) / LN_2);
  }

  /**
   * Entropy that is expected to be left after an answer, Σ P(o) H(p given o) (bits).
   *
   * @param joint row o, column i: probability of cause i together with answer o
   */
  public static double expectedEntropyBits(double[][] joint) {
    double left = 0;
    for (double[] row : joint) {
      double answer = 0;
      for (double p : row) {
        answer += p;
      }
      if (answer > 0) {
        left += answer * entropyBits(row);
      }
    }
    return left;
  }
}
