package halfwave.circuit;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.jspecify.annotations.Nullable;

/**
 * Finds the mode state that repeats after one period, by Newton on the map from the state at the
 * start to the state at the end. A coupling capacitor with a time constant of seconds costs no more
 * than a cable's microseconds.
 */
final class Shooting {

  private static final int MOST_ITERATIONS = 120;

  /** How well a period must close, relative to the source's peak: equal electrodes, no DC. */
  private static final double CLOSURE = 1e-11;

  /** Newton's next step estimates what the state is off; this is nothing to any reading. */
  private static final double SETTLED = 3e-8;

  /** What is accepted where rounding allows no better. */
  private static final double ROUGH_CLOSURE = 1e-7;

  /** What is accepted when all else failed: picoamperes through a film's capacitance. */
  private static final double LAST_CLOSURE = 1e-5;

  /** A coarse walk first: it is four times cheaper, and its end is a good start. */
  static final int COARSE_SAMPLES = SteadyState.STANDARD_SAMPLES / 4;

  private static final double COARSE_CLOSURE = 1e-4;

  /** Full steps before the bracket: on the way to a slow capacitor's charge a gap may widen. */
  private static final int FREE_ITERATIONS = 12;

  /** Below this a direction of 1 − (end from start) is rounding. */
  private static final double SINGULAR = 1e-13;

  private final Reduction reduction;
  private final Grid grid;
  private final Sweep sweep;
  private int iterations;
  private @Nullable Part trouble;

  private Shooting(Reduction reduction, Grid grid) {
    this.reduction = reduction;
    this.grid = grid;
    sweep = Sweep.of(reduction, grid);
  }

  static SteadyState solve(Reduction reduction, int samples) {
    if (reduction.modes == 0 && reduction.ports == 1 && reduction.topology.free == 0) {
      return QuarterWave.solve(reduction, new Grid(reduction, samples));
    }
    Shooting fine = new Shooting(reduction, new Grid(reduction, samples));
    if (reduction.ports == 0) {
      return fine.solved();
    }
    double[] start = new double[reduction.modes];
    if (reduction.modes > 0 && samples > COARSE_SAMPLES) {
      Shooting coarse = new Shooting(reduction, new Grid(reduction, COARSE_SAMPLES));
      if (coarse.close(start, COARSE_CLOSURE)) {
        start = coarse.start;
      }
    }
    if (fine.close(start, CLOSURE)) {
      return fine.solved();
    }
    Part part = fine.trouble == null ? reduction.topology.ports.get(0).part() : fine.trouble;
    return new SteadyState.Failed(
        Failure.NOT_CONVERGED, part, fine.sweep.troubleSeconds, fine.iterations);
  }

  private double[] start = new double[0];

  /** Newton until the period closes; leaves the start that closes it in {@link #start}. */
  private boolean close(double[] from, double closure) {
    start = from.clone();
    double allowed = closure * reduction.sourcePeakVolts + 1e-300;
    double stalled = ROUGH_CLOSURE * reduction.sourcePeakVolts;
    double smallest = Double.POSITIVE_INFINITY;
    double[] closest = start;
    int slow = slowestMode();
    double low = Double.NEGATIVE_INFINITY;
    double high = Double.POSITIVE_INFINITY;
    for (iterations = 1; iterations <= MOST_ITERATIONS; iterations++) {
      sweep.frozen = iterations > FREE_ITERATIONS;
      trouble = sweep.run(start);
      if (trouble != null) {
        return false;
      }
      double[] gap = gap();
      double opening = openingVolts(gap);
      if (opening <= allowed || (opening <= stalled && opening >= smallest)) {
        return true;
      }
      closest = opening < smallest ? start : closest;
      smallest = Math.min(opening, smallest);
      double[] step = newtonStep(gap);
      if (openingVolts(step) <= SETTLED * reduction.sourcePeakVolts) {
        return true;
      }
      double share = 1;
      if (iterations > FREE_ITERATIONS) {
        // the more charge a slow capacitor holds, the less it gains: that brackets its charge
        if (gap[slow] > 0) {
          low = Math.max(low, start[slow]);
        } else {
          high = Math.min(high, start[slow]);
        }
        double target = start[slow] + step[slow];
        if (low < high && !(target > low && target < high)) {
          share = (0.5 * (low + high) - start[slow]) / step[slow];
        }
        if (!(low < high && share > 1e-9 && share <= 1)) {
          // the faster modes had not settled and the bracket was none
          low = Double.NEGATIVE_INFINITY;
          high = Double.POSITIVE_INFINITY;
          share = 1;
        }
      }
      start = start.clone();
      for (int m = 0; m < step.length; m++) {
        start[m] += share * step[m];
      }
    }
    // a charge that leaks away over days: Newton hops about the place where conduction just ends
    boolean closes = smallest <= LAST_CLOSURE * reduction.sourcePeakVolts;
    if (closes) {
      start = closest;
      trouble = sweep.run(start);
    }
    return closes && trouble == null;
  }

  /** The mode with the smallest decay among those that the ports drive. */
  private int slowestMode() {
    int slowest = 0;
    for (int m = 1; m < reduction.modes; m++) {
      if (reduction.decayPerSecond[m] < reduction.decayPerSecond[slowest]) {
        slowest = m;
      }
    }
    return slowest;
  }

  private double[] gap() {
    double[] gap = new double[start.length];
    for (int m = 0; m < gap.length; m++) {
      gap[m] = sweep.mode[m][grid.samples] - start[m];
    }
    return gap;
  }

  /** How far the period is from closing, as the volts it makes at the ports. */
  private double openingVolts(double[] gap) {
    double most = 0;
    for (Signal port : reduction.portVoltage) {
      for (int m = 0; m < gap.length; m++) {
        most = Math.max(most, Math.abs(port.perMode()[m] * gap[m]));
      }
    }
    return most;
  }

  private double[] newtonStep(double[] gap) {
    int modes = gap.length;
    if (modes == 1) {
      double one = 1 - sweep.monodromy[0][0];
      return new double[] {Math.abs(one) > SINGULAR ? gap[0] / one : 0};
    }
    double[][] a = new double[modes][modes];
    for (int m = 0; m < modes; m++) {
      for (int l = 0; l < modes; l++) {
        a[m][l] = (m == l ? 1 : 0) - sweep.monodromy[m][l];
      }
    }
    RealMatrix matrix = new Array2DRowRealMatrix(a, false);
    RealVector right = new ArrayRealVector(gap, false);
    DecompositionSolver lu = new LUDecomposition(matrix, SINGULAR).getSolver();
    return (lu.isNonSingular() ? lu.solve(right) : shortest(matrix, right)).toArray();
  }

  /** Charges without a leak that no port tells apart stay as they are: the shortest step. */
  private static RealVector shortest(RealMatrix matrix, RealVector right) {
    SingularValueDecomposition svd = new SingularValueDecomposition(matrix);
    RealVector step = new ArrayRealVector(right.getDimension());
    double[] values = svd.getSingularValues();
    for (int m = 0; m < values.length; m++) {
      if (values[m] > SINGULAR) {
        double along = svd.getU().getColumnVector(m).dotProduct(right) / values[m];
        step = step.add(svd.getV().getColumnVector(m).mapMultiply(along));
      }
    }
    return step;
  }

  private Solved solved() {
    int ports = sweep.port.length;
    double[] mean = new double[ports];
    for (int k = 0; k < ports; k++) {
      for (double x : sweep.port[k]) {
        mean[k] += x;
      }
      mean[k] /= grid.samples;
    }
    if (ports > 0) {
      mean[0] += sweep.extraMeanAmps;
    }
    Solved solved = new Solved(reduction, grid, () -> sweep, mean, Double.NaN, Double.NaN);
    for (int m = 0; m < reduction.modes; m++) {
      keepCharge(m, solved, mean);
    }
    return solved;
  }

  /** A capacitor without leak gains no charge over a period: that, exactly, fixes a mean. */
  private void keepCharge(int m, Solved solved, double[] mean) {
    if (!solved.decays(m)) {
      double[] drive = reduction.drive[m];
      double gained = -reduction.decayPerSecond[m] * solved.modeMean(m);
      double square = 0;
      for (int k = 0; k < drive.length; k++) {
        gained += drive[k] * mean[k];
        square += drive[k] * drive[k];
      }
      // a mode that the ports do not reach has a drive of nothing but rounding
      for (int k = 0; square > 1e-18 * reduction.largestDriveSquare() && k < drive.length; k++) {
        mean[k] -= drive[k] * gained / square;
      }
    }
  }
}
