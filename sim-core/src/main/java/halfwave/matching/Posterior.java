package halfwave.matching;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
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

  /** Weight of draws between an end and an interval that still begins at it. */
  private static final double NO_GAP = 0.005;

  /** With fewer draws that count there is no telling how wide an interval is. */
  private static final double LEAST_COUNT = 50;

  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  private final List<Unknown> unknowns;
  private final RealVector best;
  private final RealVector pull;
  private final RealMatrix precision;
  private final RealMatrix covariance;
  private final double[][] draws;
  private final double[] weights = new double[DRAWS];

  Posterior(List<Unknown> unknowns, Search.Found found) {
    this.unknowns = unknowns;
    int size = unknowns.size();
    best = found.best();
    precision = found.information();
    // where the readings pull against an end, the middle lies beyond it
    pull = found.slopes().transpose().operate(found.misfits());
    for (int k = 0; k < size; k++) {
      double width = unknowns.get(k).widthRatio();
      precision.addToEntry(k, k, 1 / (width * width));
      pull.addToEntry(k, -best.getEntry(k) / (width * width));
    }
    covariance = MatrixUtils.inverse(precision);
    draws = new double[size][DRAWS];
    draw(k -> false);
    if (effectiveCount() < LEAST_COUNT) {
      draw(this::pressed);
    }
  }

  /** Whether a coordinate stands at an end and would go on beyond it. */
  private boolean pressed(int k) {
    return (best.getEntry(k) <= unknowns.get(k).least() && pull.getEntry(k) < 0)
        || (best.getEntry(k) >= unknowns.get(k).most() && pull.getEntry(k) > 0);
  }

  /** How many draws of equal weight would say as much (Kish 1965). */
  private double effectiveCount() {
    double sum = 0;
    double squares = 0;
    for (double weight : weights) {
      sum += weight;
      squares += weight * weight;
    }
    return squares == 0 ? 0 : sum * sum / squares;
  }

  /**
   * Draws first what is pressed hardest against an end: drawn last, its chance would differ so much
   * from draw to draw that one of them would weigh more than all others. Where that happens all the
   * same, the readings being far from any such bench, what is pressed is held: drawn by itself,
   * with the others where they are best, and they as if it stood at its end.
   */
  private void draw(IntPredicate held) {
    int size = draws.length;
    int[] free = IntStream.range(0, size).filter(held.negate()).toArray();
    if (free.length > 0) {
      drawTogether(free);
    } else {
      Arrays.fill(weights, 1);
    }
    for (int k : IntStream.range(0, size).filter(held).toArray()) {
      double scale = 1 / Math.sqrt(precision.getEntry(k, k));
      double middle = best.getEntry(k) + pull.getEntry(k) * scale * scale;
      for (int n = 0; n < DRAWS; n++) {
        double even = (n + 0.5) / DRAWS;
        draws[k][n] = middle + scale * cut(k, middle, scale, even).deviateRatio();
      }
    }
  }

  private void drawTogether(int[] free) {
    RealMatrix spread = MatrixUtils.inverse(precision.getSubMatrix(free, free));
    double[] pulls = Arrays.stream(free).mapToDouble(pull::getEntry).toArray();
    double[] shift = spread.operate(pulls);
    int[] order =
        IntStream.range(0, free.length)
            .boxed()
            .sorted(
                Comparator.comparingDouble(
                    f -> room(free[f], shift[f], Math.sqrt(spread.getEntry(f, f)))))
            .mapToInt(f -> f)
            .toArray();
    RealMatrix root = root(spread.getSubMatrix(order, order));
    SobolSequenceGenerator sobol = new SobolSequenceGenerator(free.length);
    // the first point is a corner
    sobol.skipTo(1);
    double[] normal = new double[free.length];
    for (int n = 0; n < DRAWS; n++) {
      double[] uniform = sobol.nextVector();
      weights[n] = 1;
      for (int at = 0; at < free.length; at++) {
        int k = free[order[at]];
        double middle = best.getEntry(k) + shift[order[at]];
        for (int j = 0; j < at; j++) {
          middle += root.getEntry(at, j) * normal[j];
        }
        double scale = root.getEntry(at, at);
        Cut cut = cut(k, middle, scale, uniform[at]);
        normal[at] = cut.deviateRatio();
        weights[n] *= cut.probability();
        draws[k][n] = middle + scale * normal[at];
      }
    }
  }

  /** From the nearer end to the middle, in deviations; below zero where it lies beyond. */
  private double room(int k, double shift, double deviation) {
    double middle = best.getEntry(k) + shift;
    double near = Math.min(middle - unknowns.get(k).least(), unknowns.get(k).most() - middle);
    return near / deviation;
  }

  /** The lower triangle whose square is the matrix; rounding has left it not quite symmetric. */
  private static RealMatrix root(RealMatrix covariance) {
    RealMatrix even = covariance.add(covariance.transpose()).scalarMultiply(0.5);
    return new CholeskyDecomposition(even, 1e-9, 0).getL();
  }

  /** A normal deviate between two ends, and the chance to be there. */
  private record Cut(double deviateRatio, double probability) {}

  private Cut cut(int k, double middle, double scale, double uniform) {
    double low = (unknowns.get(k).least() - middle) / scale;
    double high = (unknowns.get(k).most() - middle) / scale;
    if (low > 0) {
      // in the upper tail all chances are so near to one that nothing would be left of them
      Cut mirrored = cut(-high, -low, 1 - uniform);
      return new Cut(-mirrored.deviateRatio(), mirrored.probability());
    }
    return cut(low, high, uniform);
  }

  private static Cut cut(double low, double high, double uniform) {
    double below = NORMAL.cumulativeProbability(low);
    double between = NORMAL.cumulativeProbability(high) - below;
    double there = NORMAL.inverseCumulativeProbability(below + uniform * between);
    return new Cut(Math.max(low, Math.min(high, there)), between);
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
    double[] ends = {values[order[0]], values[order[DRAWS - 1]]};
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
      if (held >= COVERED * all && width < ends[1] - ends[0]) {
        ends = new double[] {values[order[first]], values[order[last]]};
        below = left;
      }
    }
    // what is most probable at an end reaches to it; a few draws are no gap
    return unknowns.get(k).isWear() && below < NO_GAP * all
        ? new double[] {unknowns.get(k).least(), ends[1]}
        : ends;
  }
}
