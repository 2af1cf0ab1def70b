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

  private static final int MOST_ITERATIONS = 60;

  /** How well a period must close, relative to the source's peak: equal electrodes, no DC. */
  private static final double CLOSURE = 1e-11;

  /** What is accepted where rounding allows no better. */
  private static final double ROUGH_CLOSURE = 1e-7;

  /** A coarse walk first: it is four times cheaper, and its end is a good start. */
  static final int COARSE_SAMPLES = SteadyState.STANDARD_SAMPLES / 4;

  private static final double COARSE_CLOSURE = 1e-4;

  /**
   * Full steps before halving: on the way to a slow capacitor's charge one often widens the gap.
   */
  private static final int FREE_ITERATIONS = 25;

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
    return new SteadyState.Failed(Failure.NOT_CONVERGED, part, 0, fine.iterations);
  }

  private double[] start = new double[0];

  /** Newton until the period closes; leaves the start that closes it in {@link #start}. */
  private boolean close(double[] from, double closure) {
    start = from.clone();
    double allowed = closure * reduction.sourcePeakVolts + 1e-300;
    double stalled = ROUGH_CLOSURE * reduction.sourcePeakVolts;
    double smallest = Double.POSITIVE_INFINITY;
    double[] lastStart = start;
    double[] step = new double[start.length];
    for (iterations = 1; iterations <= MOST_ITERATIONS; iterations++) {
      sweep.frozen = iterations > FREE_ITERATIONS / 2;
      trouble = sweep.run(start);
      if (trouble != null) {
        return false;
      }
      double[] gap = gap();
      double opening = openingVolts(gap);
      if (opening <= allowed || (opening <= stalled && opening >= smallest)) {
        return true;
      }
      if (opening < smallest || iterations <= FREE_ITERATIONS) {
        smallest = Math.min(opening, smallest);
        lastStart = start;
        step = newtonStep(gap);
      } else {
        // the step overshot: take half of it from where it began
        for (int m = 0; m < step.length; m++) {
          step[m] /= 2;
        }
      }
      start = lastStart.clone();
      for (int m = 0; m < step.length; m++) {
        start[m] += step[m];
      }
    }
    return false;
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
    double meanSquare = Double.NaN;
    double meanSine = Double.NaN;
    if (ports == 1 && reduction.topology.free == 0) {
      if (reduction.modes == 0) {
        double[] moments = quarterWave();
        mean[0] = moments[0];
        meanSquare = moments[1];
        meanSine = moments[2];
      } else {
        mean[0] += sweep.extraMeanAmps;
      }
    }
    Solved solved = new Solved(reduction, grid, sweep.port, sweep.mode, mean, meanSquare, meanSine);
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

  /**
   * Moments of the current without capacitors: ⟨i⟩, ⟨i²⟩, ⟨i·sin ωt⟩. Each half-cycle is symmetric
   * about its crest, and θ = (π/2)·u² makes the square-root start of the current smooth.
   */
  private double[] quarterWave() {
    ConductionLaw law = reduction.topology.ports.get(0).law();
    double peak = reduction.sourcePeakVolts * reduction.portVoltage[0].sine();
    double ohms = -reduction.portVoltage[0].perPort()[0];
    int points = grid.quarterSine.length;
    double[] moments = new double[3];
    for (int j = 0; j < points; j++) {
      double sine = grid.quarterSine[j];
      double weight = grid.quarterWeight[j];
      double with = law.currentInSeriesAmps(peak * sine, ohms);
      double against = law.currentInSeriesAmps(-peak * sine, ohms);
      moments[0] += weight * (with + against);
      moments[1] += weight * (with * with + against * against);
      moments[2] += weight * (with - against) * sine;
    }
    return moments;
  }
}
