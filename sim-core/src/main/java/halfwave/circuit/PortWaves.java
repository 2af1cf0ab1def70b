package halfwave.circuit;

import halfwave.circuit.Element.Conductor;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.complex.Complex;

/**
 * The steady state as harmonics, in which network and laws agree at the same samples; for sums in
 * which the two must not differ.
 *
 * <p>With a resistance S at each port, {@code e = v + S·i} is the wave that goes into a conductor
 * and {@code b = v − S·i} the one that comes back. A rising law never sends back more than it gets,
 * a passive network neither, so that
 *
 * <pre>
 * e = network(b) + source,   b = law(e)
 * </pre>
 *
 * <p>has one solution, Newton's matrix can be eliminated without a change of rows, and no circuit
 * is singular, whatever in it is open, short or afloat (waves as in Fettweis, Proc. IEEE 74 (1986)
 * 270; from memory). The number of samples is odd: each harmonic then has its sine and its cosine,
 * and mean products of samples are sums over harmonics.
 */
final class PortWaves {

  private static final int MOST_ITERATIONS = 60;

  /** Newton's step, whole and shortened. */
  private static final int MOST_TRIALS = 4;

  private static final int MIXINGS = 4;

  /** Share of the waves' power left open, about a rounding squared, that no step can lessen. */
  private static final double CLOSED = 1e-31;

  /** Not worth another elimination. */
  private static final double NO_GAIN = 0.99999;

  /** Stands in where no current flows. */
  private static final double ANY_OHMS = 1e6;

  /** The network at each harmonic from the mean on. */
  final HarmonicNetwork[] networks;

  private final int samples;
  private final List<Conductor> conductors;
  private final double[] portOhms;

  /** What a unit wave out of port q at sample 0 brings into port p at each, [p][q][sample]. */
  private final double[][][] kernel;

  /** What the source brings into the ports; like all waves, port after port. */
  private final double[] source;

  private final double[] in;

  PortWaves(Solved solved) {
    Reduction reduction = solved.reduction();
    conductors = reduction.topology.ports;
    int ports = conductors.size();
    samples = solved.sampleCount() - 1;
    portOhms = new double[ports];
    double[] start = new double[ports * samples];
    for (int p = 0; p < ports; p++) {
      double[] v = solved.voltageVolts(conductors.get(p).from(), conductors.get(p).to());
      double[] i = solved.port()[p];
      // as much voltage as current in the waves: neither is a small difference of theirs
      double ohms = Math.sqrt(square(v) / square(i));
      portOhms[p] = ohms > 0 && ohms < Double.POSITIVE_INFINITY ? ohms : ANY_OHMS;
      for (int n = 0; n < samples; n++) {
        start[p * samples + n] = between(v, n) + portOhms[p] * between(i, n);
      }
    }
    networks = new HarmonicNetwork[samples / 2 + 1];
    for (int k = 0; k < networks.length; k++) {
      networks[k] = new HarmonicNetwork(reduction, portOhms, k);
    }
    kernel = new double[ports][ports][];
    source = new double[ports * samples];
    for (int q = 0; q < ports; q++) {
      fillKernel(q);
    }
    fillSource(reduction.sourcePeakVolts);
    in = close(trial(start));
  }

  private static double square(double[] x) {
    double sum = 0;
    for (double value : x) {
      sum += value * value;
    }
    return sum;
  }

  /** A waveform of the steady state at one of our fewer samples. */
  private double between(double[] wave, int n) {
    double place = (double) n * wave.length / samples;
    int early = (int) place;
    double late = wave[(early + 1) % wave.length];
    return wave[early] + (place - early) * (late - wave[early]);
  }

  private void fillKernel(int q) {
    int ports = portOhms.length;
    Complex[][] into = new Complex[ports][networks.length];
    Complex[] unit = unit(q);
    for (int k = 0; k < networks.length; k++) {
      Complex[] v = networks[k].voltages(Complex.ZERO, unit);
      double weight = (k == 0 ? 1.0 : 2.0) / samples;
      for (int p = 0; p < ports; p++) {
        into[p][k] = v[networks[k].port[p]].multiply(2).subtract(unit[p]).multiply(weight);
      }
    }
    for (int p = 0; p < ports; p++) {
      kernel[p][q] = Harmonics.samples(into[p], samples);
    }
  }

  /** A wave out of port q alone; out of none for −1. */
  private Complex[] unit(int q) {
    Complex[] unit = new Complex[portOhms.length];
    Arrays.fill(unit, Complex.ZERO);
    if (q >= 0) {
      unit[q] = Complex.ONE;
    }
    return unit;
  }

  private void fillSource(double peakVolts) {
    Complex[] v = networks[1].voltages(Harmonics.sine(peakVolts), unit(-1));
    for (int p = 0; p < portOhms.length; p++) {
      Complex[] harmonics = {Complex.ZERO, v[networks[1].port[p]].multiply(2)};
      System.arraycopy(Harmonics.samples(harmonics, samples), 0, source, p * samples, samples);
    }
  }

  /** Incoming waves, what the network lacks to make them, and the power of what it lacks. */
  private record Trial(double[] inVolts, double[] lackingVolts, double openWatts) {}

  private Trial trial(double[] e) {
    double[] b = back(e);
    double[] lacking = new double[e.length];
    for (int row = 0; row < e.length; row++) {
      double sum = source[row] - e[row];
      for (int column = 0; column < e.length; column++) {
        sum += share(row, column) * b[column];
      }
      lacking[row] = sum;
    }
    return new Trial(e, lacking, watts(lacking));
  }

  private double share(int row, int column) {
    int apart = row % samples - column % samples;
    return kernel[row / samples][column / samples][apart >= 0 ? apart : apart + samples];
  }

  private double watts(double[] waves) {
    double sum = 0;
    for (int n = 0; n < waves.length; n++) {
      sum += waves[n] * waves[n] / portOhms[n / samples];
    }
    return sum;
  }

  private Trial moved(Trial from, double share, double[] step) {
    double[] e = from.inVolts.clone();
    for (int n = 0; n < e.length; n++) {
      e[n] += share * step[n];
    }
    return trial(e);
  }

  private double[] close(Trial start) {
    Trial now = start;
    for (int k = 0; k < MOST_ITERATIONS && now.openWatts > CLOSED * watts(now.inVolts); k++) {
      Trial next = better(now);
      if (!(next.openWatts < NO_GAIN * now.openWatts)) {
        break;
      }
      now = next;
    }
    return now.inVolts;
  }

  /**
   * By Newton where that helps. At the kink of a law that conducts one way it may not; half of the
   * way to what the network makes of the waves never does harm, and gets past the kink
   * (Krasnosel'skii, Usp. Mat. Nauk 10 (1955) 123; from memory).
   */
  private Trial better(Trial now) {
    double[] step = newtonStep(now);
    double share = 1;
    for (int k = 0; k < MOST_TRIALS; k++) {
      Trial next = moved(now, share, step);
      if (next.openWatts < now.openWatts) {
        return next;
      }
      share /= 2;
    }
    Trial next = now;
    for (int k = 0; k < MIXINGS; k++) {
      next = moved(next, 0.5, next.lackingVolts);
    }
    return next;
  }

  private double[] newtonStep(Trial now) {
    int size = now.inVolts.length;
    double[] slope = new double[size];
    for (int n = 0; n < size; n++) {
      double ohms = portOhms[n / samples];
      ConductionLaw law = conductors.get(n / samples).law();
      slope[n] =
          1 - 2 * ohms * law.seriesSlopeSiemens(now.inVolts[n], amps(n, now.inVolts[n]), ohms);
    }
    double[][] a = new double[size][size];
    for (int row = 0; row < size; row++) {
      for (int column = 0; column < size; column++) {
        a[row][column] = (row == column ? 1 : 0) - share(row, column) * slope[column];
      }
    }
    double[] x = now.lackingVolts.clone();
    eliminate(a, x);
    return x;
  }

  /** Gauss's elimination; the symmetric part is positive, and so is every pivot. */
  private static void eliminate(double[][] a, double[] x) {
    int size = x.length;
    for (int k = 0; k < size; k++) {
      double[] pivot = a[k];
      for (int row = k + 1; row < size; row++) {
        double[] target = a[row];
        double factor = target[k] / pivot[k];
        for (int column = k + 1; column < size; column++) {
          target[column] -= factor * pivot[column];
        }
        x[row] -= factor * x[k];
      }
    }
    for (int k = size - 1; k >= 0; k--) {
      for (int column = k + 1; column < size; column++) {
        x[k] -= a[k][column] * x[column];
      }
      x[k] /= a[k][k];
    }
  }

  private double amps(int n, double e) {
    return conductors.get(n / samples).law().currentInSeriesAmps(e, portOhms[n / samples]);
  }

  private double[] back(double[] e) {
    double[] b = new double[e.length];
    for (int n = 0; n < e.length; n++) {
      b[n] = e[n] - 2 * portOhms[n / samples] * amps(n, e[n]);
    }
    return b;
  }

  /** Harmonics of the waves that the conductors send back, [harmonic][port]. */
  Complex[][] backHarmonics() {
    double[] b = back(in);
    Complex[][] harmonics = new Complex[networks.length][portOhms.length];
    for (int p = 0; p < portOhms.length; p++) {
      Complex[] wave = Harmonics.of(Arrays.copyOfRange(b, p * samples, (p + 1) * samples));
      for (int k = 0; k < networks.length; k++) {
        harmonics[k][p] = wave[k];
      }
    }
    return harmonics;
  }
}
