package halfwave.circuit;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealVector;
import org.jspecify.annotations.Nullable;

/**
 * Finds the mode state that repeats after one period, by Newton on the map from the state at the
 * start to the state at the end. A coupling capacitor with a time constant of seconds costs no more
 * than a cable's microseconds.
 */
final class Shooting {

  private static final int MOST_ITERATIONS = 60;

  /** How well a period must close, relative to the source's peak. */
  private static final double CLOSURE = 1e-7;

  /** A coarse walk first: it is four times cheaper, and its end is a good start. */
  private static final int COARSE_SAMPLES = SteadyState.STANDARD_SAMPLES / 4;

  private static final double COARSE_CLOSURE = 1e-4;

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
    double smallest = Double.POSITIVE_INFINITY;
    double[] lastStart = start;
    double[] step = new double[start.length];
    for (iterations = 1; iterations <= MOST_ITERATIONS; iterations++) {
      trouble = sweep.run(start);
      if (trouble != null) {
        return false;
      }
      double[] gap = gap();
      double opening = openingVolts(gap);
      if (opening <= allowed) {
        return true;
      }
      if (opening < smallest) {
        smallest = opening;
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
      return new double[] {gap[0] / (1 - sweep.monodromy[0][0])};
    }
    double[][] a = new double[modes][modes];
    for (int m = 0; m < modes; m++) {
      for (int l = 0; l < modes; l++) {
        a[m][l] = (m == l ? 1 : 0) - sweep.monodromy[m][l];
      }
    }
    RealVector step =
        new LUDecomposition(new Array2DRowRealMatrix(a, false), 1e-300)
            .getSolver()
            .solve(new ArrayRealVector(gap, false));
    return step.toArray();
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
    return new Solved(reduction, grid, sweep.port, sweep.mode, mean, meanSquare, meanSine);
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
