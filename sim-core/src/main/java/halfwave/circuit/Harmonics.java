package halfwave.circuit;

import org.apache.commons.math3.complex.Complex;

/** Harmonics X of a periodic signal at an odd number of samples, {@code x = Re Σ X_k·exp(jωkt)}. */
final class Harmonics {

  private Harmonics() {}

  /** The first harmonic of {@code peak·sin ωt}. */
  static Complex sine(double peak) {
    return new Complex(0, -peak);
  }

  /** Harmonics of samples, from the mean on. */
  static Complex[] of(double[] samples) {
    int count = samples.length;
    double[][] circle = circle(count);
    Complex[] harmonics = new Complex[count / 2 + 1];
    for (int k = 0; k < harmonics.length; k++) {
      double real = 0;
      double imaginary = 0;
      for (int n = 0; n < count; n++) {
        int phase = n * k % count;
        real += samples[n] * circle[0][phase];
        imaginary -= samples[n] * circle[1][phase];
      }
      double weight = (k == 0 ? 1.0 : 2.0) / count;
      harmonics[k] = new Complex(weight * real, weight * imaginary);
    }
    return harmonics;
  }

  /** Samples of harmonics, from the mean on. */
  static double[] samples(Complex[] harmonics, int count) {
    double[][] circle = circle(count);
    double[] samples = new double[count];
    for (int k = 0; k < harmonics.length; k++) {
      double real = harmonics[k].getReal();
      double imaginary = harmonics[k].getImaginary();
      for (int n = 0; n < count; n++) {
        int phase = n * k % count;
        samples[n] += real * circle[0][phase] - imaginary * circle[1][phase];
      }
    }
    return samples;
  }

  private static double[][] circle(int count) {
    double[][] circle = new double[2][count];
    for (int n = 0; n < count; n++) {
      circle[0][n] = StrictMath.cos(2 * StrictMath.PI * n / count);
      circle[1][n] = StrictMath.sin(2 * StrictMath.PI * n / count);
    }
    return circle;
  }
}
