package halfwave.matching;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
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
  private static final int DRAWS = 2000;

  private static final double NO_GAP = 0.005;

  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  private final List<Unknown> unknowns;
  private final RealMatrix covariance;
  private final double[][] draws;
  private final double[] weights = new double[DRAWS];

  Posterior(List<Unknown> unknowns, Search.Found found) {
    this.unknowns = unknowns;
    int size = unknowns.size();
    RealMatrix precision = found.information();
    for (int k = 0; k < size; k++) {
      double width = unknowns.get(k).widthRatio();
      precision.addToEntry(k, k, 1 / (width * width));
    }
    covariance = MatrixUtils.inverse(precision);
    draws = new double[size][DRAWS];
    // where the readings pull against an end, the middle lies beyond it
    RealVector pull = found.slopes().transpose().operate(found.misfits());
    for (int k = 0; k < size; k++) {
      double width = unknowns.get(k).widthRatio();
      pull.addToEntry(k, -found.best().getEntry(k) / (width * width));
    }
    draw(found.best().add(covariance.operate(pull)).toArray());
  }

  /**
   * Draws first what is pressed hardest against an end: drawn last, its chance would differ so much
   * from draw to draw that one of them would weigh more than all others.
   */
  private void draw(double[] center) {
    int size = center.length;
    int[] order =
        IntStream.range(0, size)
            .boxed()
            .sorted(Comparator.comparingDouble(k -> room(k, center[k])))
            .mapToInt(k -> k)
            .toArray();
    RealMatrix root = root(covariance.getSubMatrix(order, order));
    SobolSequenceGenerator sobol = new SobolSequenceGenerator(size);
    // the first point is a corner
    sobol.skipTo(1);
    double[] normal = new double[size];
    for (int n = 0; n < DRAWS; n++) {
      double[] uniform = sobol.nextVector();
      weights[n] = 1;
      for (int at = 0; at < size; at++) {
        int k = order[at];
        double middle = center[k];
        for (int j = 0; j < at; j++) {
          middle += root.getEntry(at, j) * normal[j];
        }
        double scale = root.getEntry(at, at);
        double low = (unknowns.get(k).least() - middle) / scale;
        double high = (unknowns.get(k).most() - middle) / scale;
        normal[at] = cut(low, high, uniform[at], n);
        draws[k][n] = middle + scale * normal[at];
      }
    }
  }

  /** From the nearer end to the middle, in deviations; below zero where it lies beyond. */
  private double room(int k, double center) {
    double near = Math.min(center - unknowns.get(k).least(), unknowns.get(k).most() - center);
    return near / Math.sqrt(covariance.getEntry(k, k));
  }

  /** The lower triangle whose square is the matrix; rounding has left it not quite symmetric. */
  private static RealMatrix root(RealMatrix covariance) {
    RealMatrix even = covariance.add(covariance.transpose()).scalarMultiply(0.5);
    return new CholeskyDecomposition(even, 1e-9, 0).getL();
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
    double left = 0;
    double below = 0;
    int first = 0;
    for (int last = 0; last < DRAWS; last++) {
      held += weights[order[last]];
      while (held - weights[order[first]] >= COVERED * all) {
        held -= weights[order[first]];
        left += weights[order[first]];
        first++;
      }
      double width = values[order[last]] - values[order[first]];
      if (held >= COVERED * all && width < best[1] - best[0]) {
        best = new double[] {values[order[first]], values[order[last]]};
        below = left;
      }
    }
    // what is most probable at an end reaches to it; a few draws are no gap
    return unknowns.get(k).isWear() && below < NO_GAP * all
        ? new double[] {unknowns.get(k).least(), best[1]}
        : best;
  }
}
