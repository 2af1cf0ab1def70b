package halfwave.matching;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/**
 * What the coordinates may be after the readings: a normal distribution about what was found, of
 * precision {@code JᵀJ + S⁻²} (J slopes over deviations, S prior widths), cut off at the ends of
 * their ranges. It is drawn from coordinate by coordinate, each within its ends, and weighted by
 * the chance that it would have been (Geweke, Hajivassiliou and Keane; Train, Discrete Choice
 * Methods with Simulation, 2009, ch. 5).
 */
final class Posterior {

  private static final double COVERED = 0.9;

  /** Enough that the ends of an interval move by less than a fiftieth of its width. */
  private static final int DRAWS = 4000;

  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  private final RealMatrix covariance;
  private final double[][] draws;
  private final double[] weights = new double[DRAWS];

  Posterior(List<Unknown> unknowns, Search.Found found) {
    int size = unknowns.size();
    RealMatrix precision = found.information().copy();
    for (int k = 0; k < size; k++) {
      double width = unknowns.get(k).widthRatio();
      precision.addToEntry(k, k, 1 / (width * width));
    }
    covariance = MatrixUtils.inverse(precision);
    draws = new double[size][DRAWS];
    draw(unknowns, found.center().toArray(), root(covariance));
  }

  /** The lower triangle whose square is the matrix; rounding has left it not quite symmetric. */
  private static RealMatrix root(RealMatrix covariance) {
    RealMatrix even = covariance.add(covariance.transpose()).scalarMultiply(0.5);
    return new CholeskyDecomposition(even, 1e-9, 0).getL();
  }

  private void draw(List<Unknown> unknowns, double[] center, RealMatrix root) {
    SobolSequenceGenerator sobol = new SobolSequenceGenerator(center.length);
    // the first point is a corner
    sobol.skipTo(1);
    double[] normal = new double[center.length];
    for (int n = 0; n < DRAWS; n++) {
      double[] uniform = sobol.nextVector();
      weights[n] = 1;
      for (int k = 0; k < center.length; k++) {
        double middle = center[k];
        for (int j = 0; j < k; j++) {
          middle += root.getEntry(k, j) * normal[j];
        }
        double scale = root.getEntry(k, k);
        double low = (unknowns.get(k).least() - middle) / scale;
        double high = (unknowns.get(k).most() - middle) / scale;
        normal[k] = cut(low, high, uniform[k], n);
        draws[k][n] = middle + scale * normal[k];
      }
    }
  }

  /** A normal deviate between two ends; its chance goes into the weight of the draw. */
  private double cut(double low, double high, double uniform, int n) {
    if (low > 0) {
      // in the upper tail all chances are so near to one that nothing would be left of them
      return -cut(-high, -low, 1 - uniform, n);
    }
    double below = NORMAL.cumulativeProbability(low);
    double between = NORMAL.cumulativeProbability(high) - below;
    weights[n] *= between;
    double there = NORMAL.inverseCumulativeProbability(below + uniform * between);
    return Math.max(low, Math.min(high, there));
  }

  /** Covariance without the ends of ranges. */
  RealMatrix covariance() {
    return covariance;
  }

  /** Ends of the shortest interval that holds 90 % of a coordinate. */
  double[] interval(int k) {
    double[] values = draws[k];
    int[] order =
        IntStream.range(0, DRAWS)
            .boxed()
            .sorted(Comparator.comparingDouble(n -> values[n]))
            .mapToInt(n -> n)
            .toArray();
    double all = 0;
    for (double weight : weights) {
      all += weight;
    }
    double[] best = {values[order[0]], values[order[DRAWS - 1]]};
    double held = 0;
    int first = 0;
    for (int last = 0; last < DRAWS; last++) {
      held += weights[order[last]];
      while (held - weights[order[first]] >= COVERED * all) {
        held -= weights[order[first]];
        first++;
      }
      double width = values[order[last]] - values[order[first]];
      if (held >= COVERED * all && width < best[1] - best[0]) {
        best = new double[] {values[order[first]], values[order[last]]};
      }
    }
    return best;
  }
}
