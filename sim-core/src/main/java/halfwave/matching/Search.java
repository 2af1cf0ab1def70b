package halfwave.matching;

import halfwave.bench.Bench;
import halfwave.flame.Flicker;
import halfwave.instrument.MeterModel;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.ValueAndJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.FastMath;
import org.apache.commons.math3.util.Pair;
import org.jspecify.annotations.Nullable;

/**
 * Looks for the most probable coordinates by Levenberg and Marquardt's method. Beyond the ends of
 * its range a coordinate goes on in a straight line, so that the search meets no wall and a normal
 * distribution about what it finds can be cut off there afterwards.
 */
final class Search {

  /** A start where wear already shows, and one where it is most of what there is. */
  private static final double[] WEAR_STARTS = {0.3, 1.5};

  /** A sum of squares over the number of readings that needs no second start. */
  private static final double GOOD_RATIO = 2;

  /** A step that matters to nobody: the narrowest intervals are some hundredths wide. */
  private static final double LEAST_STEP = 1e-4;

  /** More would be a search that goes nowhere; usual are ten. */
  private static final int MOST_COUNT = 100;

  private final Bench bench;
  private final List<Unknown> unknowns;
  private final List<TakenReading> readings;
  private final List<Sight> sights;
  private final Predictor predictor;
  private int count;

  /**
   * What was found, in the coordinates u of {@link Unknown}.
   *
   * @param best most probable within the ranges
   * @param slopes of the readings there, in standard deviations
   * @param misfits read minus fitted, in standard deviations, at the best
   * @param deviations standard deviations of the readings, in SI
   */
  record Found(RealVector best, RealMatrix slopes, RealVector misfits, RealVector deviations) {

    /** Precision that the readings give. */
    RealMatrix information() {
      return slopes.transpose().multiply(slopes);
    }
  }

  Search(Bench bench, List<Unknown> unknowns, List<TakenReading> readings) {
    this.bench = bench;
    this.unknowns = unknowns;
    this.readings = List.copyOf(readings);
    sights = readings.stream().map(TakenReading::sight).toList();
    predictor = new Predictor(bench, unknowns);
  }

  Bench bench() {
    return bench;
  }

  List<Unknown> unknowns() {
    return unknowns;
  }

  List<TakenReading> readings() {
    return readings;
  }

  Predictor predictor() {
    return predictor;
  }

  /** How many sets of coordinates were tried. */
  int count() {
    return count;
  }

  Found found() {
    boolean[] free = new boolean[unknowns.size()];
    Arrays.fill(free, true);
    double[] center = roughly(free);
    // flicker shows by how steep the readings are there
    double[] deviations = deviations(center);
    double[] best = within(center, free, deviations);
    RealVector misfits = new Whitened(best, free, deviations).misfits(best);
    Arrays.fill(free, true);
    RealMatrix slopes =
        new Whitened(best, free, deviations)
            .computeJacobian(best)
            .getSubMatrix(0, sights.size() - 1, 0, best.length - 1);
    return new Found(new ArrayRealVector(best), slopes, misfits, new ArrayRealVector(deviations));
  }

  /** From the first start that leads to a good place; else the best there is. */
  private double[] roughly(boolean[] free) {
    @Nullable TooManyEvaluationsException lost = null;
    double @Nullable [] best = null;
    double least = Double.POSITIVE_INFINITY;
    for (double wear : WEAR_STARTS) {
      double[] from = start(wear);
      try {
        Optimum optimum = optimum(from, free, deviations(from));
        if (optimum.getCost() < least) {
          least = optimum.getCost();
          best = optimum.getPoint().toArray();
        }
      } catch (TooManyEvaluationsException e) {
        lost = e;
      }
      if (least * least <= GOOD_RATIO * sights.size()) {
        break;
      }
    }
    if (best == null) {
      throw Objects.requireNonNull(lost);
    }
    return best;
  }

  private double[] start(double wear) {
    return unknowns.stream().mapToDouble(x -> x.isWear() ? wear * x.widthRatio() : 0).toArray();
  }

  /** Looks closely; holds what lies beyond an end at that end, and looks again for the others. */
  private double[] within(double[] center, boolean[] free, double[] deviations) {
    double[] best = optimum(center, free, deviations).getPoint().toArray();
    double[] held = clamped(best);
    while (!Arrays.equals(held, best)) {
      for (int k = 0; k < held.length; k++) {
        free[k] &= held[k] == best[k];
      }
      best = optimum(held, free, deviations).getPoint().toArray();
      held = clamped(best);
    }
    return best;
  }

  private double[] clamped(double[] u) {
    double[] inside = u.clone();
    for (int k = 0; k < u.length; k++) {
      inside[k] = Math.max(unknowns.get(k).least(), Math.min(unknowns.get(k).most(), u[k]));
    }
    return inside;
  }

  /** Of the readings, by meter and flicker, where the flame is that of these coordinates. */
  private double[] deviations(double[] u) {
    double[] inside = clamped(u);
    double[] slopes = predictor.flickerSlopes(inside, predictor.values(inside, sights), sights);
    double[] deviations = new double[slopes.length];
    for (int n = 0; n < deviations.length; n++) {
      deviations[n] = deviation(sights.get(n), readings.get(n).value().si(), slopes[n]);
    }
    return deviations;
  }

  /** Of one reading, by its meter and by flicker on a slope against the ion source's logarithm. */
  static double deviation(Sight sight, double si, double slope) {
    MeterModel meter = sight.meter();
    return FastMath.hypot(
        meter.deviationSi(sight.kind().function(), si),
        slope * Flicker.averagedRatio(meter.averagingSeconds()));
  }

  private Optimum optimum(double[] from, boolean[] free, double[] deviations) {
    int data = sights.size();
    double[] target = new double[data + unknowns.size()];
    for (int n = 0; n < data; n++) {
      target[n] = readings.get(n).value().si() / deviations[n];
    }
    return new LevenbergMarquardtOptimizer()
        .withCostRelativeTolerance(LEAST_STEP)
        .withParameterRelativeTolerance(LEAST_STEP)
        .optimize(
            new LeastSquaresBuilder()
                .start(from)
                .model(new Whitened(from, free, deviations))
                .target(target)
                .lazyEvaluation(true)
                .maxEvaluations(MOST_COUNT)
                .maxIterations(MOST_COUNT)
                .build());
  }

  /** Readings over their deviations, and below them the coordinates over their widths. */
  private final class Whitened implements ValueAndJacobianFunction {

    private final double[] from;
    private final boolean[] free;
    private final double[] deviations;
    private double[] lastPlace = {};
    private RealVector lastValue = new ArrayRealVector();

    Whitened(double[] from, boolean[] free, double[] deviations) {
      this.from = from;
      this.free = free;
      this.deviations = deviations;
    }

    @Override
    public Pair<RealVector, RealMatrix> value(RealVector point) {
      return Pair.create(computeValue(point.toArray()), computeJacobian(point.toArray()));
    }

    @Override
    public RealVector computeValue(double[] u) {
      // asked for twice at each place
      if (!Arrays.equals(u, lastPlace)) {
        lastPlace = u.clone();
        lastValue = valueAt(u);
      }
      return lastValue;
    }

    private RealVector valueAt(double[] u) {
      count++;
      double[] inside = inside(u);
      double[] here = predictor.values(inside, sights);
      double[] values = new double[here.length + u.length];
      System.arraycopy(here, 0, values, 0, here.length);
      for (int k = 0; k < u.length; k++) {
        values[here.length + k] = u[k] / unknowns.get(k).widthRatio();
        if (free[k] && u[k] != inside[k]) {
          double[] slopes = predictor.slopes(inside, here, k, sights);
          for (int n = 0; n < here.length; n++) {
            values[n] += slopes[n] * (u[k] - inside[k]);
          }
        }
      }
      for (int n = 0; n < here.length; n++) {
        values[n] /= deviations[n];
      }
      return new ArrayRealVector(values, false);
    }

    @Override
    public RealMatrix computeJacobian(double[] u) {
      double[] inside = inside(u);
      double[] here = predictor.values(inside, sights);
      double[][] rows = new double[here.length + u.length][u.length];
      for (int k = 0; k < u.length; k++) {
        if (free[k]) {
          double[] slopes = predictor.slopes(inside, here, k, sights);
          for (int n = 0; n < here.length; n++) {
            rows[n][k] = slopes[n] / deviations[n];
          }
        }
        rows[here.length + k][k] = free[k] ? 1 / unknowns.get(k).widthRatio() : 0;
      }
      return new Array2DRowRealMatrix(rows, false);
    }

    /** Read minus fitted, in standard deviations. */
    RealVector misfits(double[] u) {
      double[] here = predictor.values(inside(u), sights);
      RealVector misfits = new ArrayRealVector(here.length);
      for (int n = 0; n < here.length; n++) {
        misfits.setEntry(n, (readings.get(n).value().si() - here[n]) / deviations[n]);
      }
      return misfits;
    }

    /** What is held stays where it was. */
    private double[] inside(double[] u) {
      double[] inside = clamped(u);
      for (int k = 0; k < u.length; k++) {
        inside[k] = free[k] ? inside[k] : from[k];
      }
      return inside;
    }
  }
}
