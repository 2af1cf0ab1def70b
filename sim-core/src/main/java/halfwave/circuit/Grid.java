package halfwave.circuit;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.util.FastMath;

/**
 * Exact steps of the decay modes over a period cut into equal parts, with the port currents taken
 * as linear between samples:
 *
 * <pre>
 * y_m(n+1) = keep_m·y_m(n) + drive_mk·(early_m·i_k(n) + late_m·i_k(n+1))
 * </pre>
 *
 * <p>With z = λh: keep = e⁻ᶻ, late = h·(1 − φ)/z, early = h·φ − late, φ = (1 − e⁻ᶻ)/z (first-order
 * hold; Franklin, Powell and Workman, Digital Control of Dynamic Systems, ch. 6; from memory).
 * Stiff modes need no small step, slow ones no waiting.
 */
final class Grid {

  final int samples;
  final double stepSeconds;
  final double[] keep;
  final double[] early;
  final double[] late;

  /** sin and cos of the source's phase at each sample. */
  final double[] sine;

  final double[] cosine;

  /** sin θ at the nodes of a quarter period, and their weights in a mean over the whole one. */
  final double[] quarterSine;

  final double[] quarterWeight;

  Grid(Reduction reduction, int samples) {
    this.samples = samples;
    stepSeconds = 1 / (reduction.circuit.sourceHertz() * samples);
    double[][] circle = circle(samples);
    sine = circle[0];
    cosine = circle[1];
    quarterSine = circle[2];
    quarterWeight = circle[3];
    int modes = reduction.modes;
    keep = new double[modes];
    early = new double[modes];
    late = new double[modes];
    for (int m = 0; m < modes; m++) {
      double z = reduction.decayPerSecond[m] * stepSeconds;
      keep[m] = FastMath.exp(-z);
      double phi;
      double rest;
      if (z < 1e-2) {
        phi = 1 - z / 2 * (1 - z / 3 * (1 - z / 4 * (1 - z / 5)));
        rest = 0.5 * (1 - z / 3 * (1 - z / 4 * (1 - z / 5)));
      } else {
        phi = (1 - keep[m]) / z;
        rest = (1 - phi) / z;
      }
      late[m] = stepSeconds * rest;
      early[m] = stepSeconds * phi - late[m];
    }
  }

  /** A signal's source part at each sample. */
  double[] sourcePart(Signal signal, double peakVolts) {
    double[] part = new double[samples];
    for (int n = 0; n < samples; n++) {
      part[n] = peakVolts * (signal.sine() * sine[n] + signal.cosine() * cosine[n]);
    }
    return part;
  }

  private static final double[][] STANDARD = newCircle(SteadyState.STANDARD_SAMPLES);

  private static final double[][] COARSE = newCircle(Shooting.COARSE_SAMPLES);

  private static double[][] circle(int samples) {
    return switch (samples) {
      case SteadyState.STANDARD_SAMPLES -> STANDARD;
      case Shooting.COARSE_SAMPLES -> COARSE;
      default -> newCircle(samples);
    };
  }

  /** Antisymmetric to the last bit between the half-cycles, so that equal electrodes give no DC. */
  private static double[][] newCircle(int samples) {
    double[][] c = new double[4][samples];
    int half = samples / 2;
    int points = Math.min(48, Math.max(8, samples / 8));
    GaussIntegrator gauss = new GaussIntegratorFactory().legendre(points, 0, 1);
    c[2] = new double[points];
    c[3] = new double[points];
    for (int j = 0; j < points; j++) {
      double u = gauss.getPoint(j);
      c[2][j] = StrictMath.sin(0.5 * StrictMath.PI * u * u);
      c[3][j] = u * gauss.getWeight(j);
    }
    for (int n = 0; n < half; n++) {
      double phase = StrictMath.PI * n / half;
      c[0][n] = StrictMath.sin(phase);
      c[1][n] = StrictMath.cos(phase);
      c[0][n + half] = -c[0][n];
      c[1][n + half] = -c[1][n];
    }
    return c;
  }
}
