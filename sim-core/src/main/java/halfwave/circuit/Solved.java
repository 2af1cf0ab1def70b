package halfwave.circuit;

import java.util.Arrays;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A periodic steady state: every voltage and current of the circuit over one period of the source,
 * and its means.
 *
 * <p>Words: "mean" is the mean over the period (DC), signed; "alternating rms" is the rms with the
 * mean removed (AC). Waveforms start where the source rises through zero and have {@link
 * #sampleCount()} equal steps.
 */
public final class Solved implements SteadyState {

  /** Below this decay over a period the mean of a mode is read off its samples. */
  private static final double NO_DECAY = 1e-6;

  private final Reduction reduction;
  private final Grid grid;
  private final Supplier<Sweep> walk;
  private @Nullable Sweep walked;
  private final double[] portMean;
  private final double meanSquare;
  private final double meanSine;

  Solved(
      Reduction reduction,
      Grid grid,
      Supplier<Sweep> walk,
      double[] portMean,
      double meanSquare,
      double meanSine) {
    this.reduction = reduction;
    this.grid = grid;
    this.walk = walk;
    this.portMean = portMean;
    this.meanSquare = meanSquare;
    this.meanSine = meanSine;
  }

  Reduction reduction() {
    return reduction;
  }

  Grid grid() {
    return grid;
  }

  /** The walk through the period; without capacitors it is done only for who looks at waves. */
  private synchronized Sweep walked() {
    if (walked == null) {
      walked = walk.get();
    }
    return walked;
  }

  /** Port currents, then free potentials, at each sample. */
  double[][] port() {
    return walked().port;
  }

  /** Their means. */
  double[] portMean() {
    return portMean;
  }

  /** The circuit that was solved. */
  public Circuit circuit() {
    return reduction.circuit;
  }

  /** Samples per period. */
  public int sampleCount() {
    return grid.samples;
  }

  /** Time between samples (s). */
  public double stepSeconds() {
    return grid.stepSeconds;
  }

  /** Voltage between two points over the period (V), at each sample. */
  public double[] voltageVolts(Point from, Point to) {
    return waveform(reduction.voltage(from, to));
  }

  /** DC voltage between two points (V). */
  public double voltageMeanVolts(Point from, Point to) {
    return mean(reduction.voltage(from, to));
  }

  /** AC voltage between two points, the mean removed (V rms). */
  public double voltageAlternatingRmsVolts(Point from, Point to) {
    return alternatingRms(reduction.voltage(from, to));
  }

  /** Current through the elements of that part over the period (A); zero where there are none. */
  public double[] currentAmps(Part part) {
    return waveform(current(part));
  }

  /** DC current through that part (A). */
  public double currentMeanAmps(Part part) {
    return mean(current(part));
  }

  /** AC current through that part, the mean removed (A rms). */
  public double currentAlternatingRmsAmps(Part part) {
    return alternatingRms(current(part));
  }

  private Signal current(Part part) {
    if (part == Part.SOURCE) {
      return new Currents(reduction).outOfSource();
    }
    Signal sum = Signal.zero(reduction.modes, portMean.length);
    for (Element e : reduction.circuit.elements()) {
      if (e.part() == part) {
        sum = sum.plus(1, new Currents(reduction).through(e));
      }
    }
    return sum;
  }

  private double[] waveform(Signal signal) {
    double[] w = grid.sourcePart(signal, reduction.sourcePeakVolts);
    addScaled(w, signal.perMode(), walked().mode);
    addScaled(w, signal.perPort(), port());
    return w;
  }

  private static void addScaled(double[] sum, double[] factors, double[][] rows) {
    for (int k = 0; k < factors.length; k++) {
      double f = factors[k];
      if (f != 0) {
        for (int n = 0; n < sum.length; n++) {
          sum[n] += f * rows[k][n];
        }
      }
    }
  }

  private double mean(Signal signal) {
    double sum = 0;
    for (int k = 0; k < portMean.length; k++) {
      sum += signal.perPort()[k] * portMean[k];
    }
    for (int m = 0; m < reduction.modes; m++) {
      if (signal.perMode()[m] != 0) {
        sum += signal.perMode()[m] * modeMean(m);
      }
    }
    return sum;
  }

  /** Whether the mode decays within reach of a period; else its charge is constant. */
  boolean decays(int m) {
    return reduction.decayPerSecond[m] * grid.stepSeconds * grid.samples >= NO_DECAY;
  }

  /** From the mode's own equation: λ·⟨y⟩ = drive·⟨i⟩ over a closed period. */
  double modeMean(int m) {
    double lambda = reduction.decayPerSecond[m];
    if (!decays(m)) {
      return Arrays.stream(walked().mode[m]).limit(grid.samples).sum() / grid.samples;
    }
    double sum = 0;
    for (int k = 0; k < reduction.ports; k++) {
      sum += reduction.drive[m][k] * portMean[k];
    }
    return sum / lambda;
  }

  private double alternatingRms(Signal signal) {
    if (reduction.modes == 0 && portMean.length == 1 && !Double.isNaN(meanSquare)) {
      double d = signal.perPort()[0];
      double e = reduction.sourcePeakVolts * signal.sine();
      double mean = d * portMean[0];
      double square = d * d * meanSquare + 2 * d * e * meanSine + 0.5 * e * e;
      return Math.sqrt(Math.max(0, square - mean * mean));
    }
    double[] w = waveform(signal);
    double mean = Arrays.stream(w).sum() / w.length;
    double sum = 0;
    for (double x : w) {
      sum += (x - mean) * (x - mean);
    }
    return Math.sqrt(sum / w.length);
  }
}
