package halfwave.circuit;

import halfwave.circuit.Element.Conductor;
import halfwave.circuit.Element.Resistor;
import java.util.EnumMap;
import java.util.Map;

/**
 * Mean power of every part of a steady state over one period.
 *
 * <p>The samples of the port currents are taken as harmonics up to the Nyquist one, and each decay
 * mode answers a harmonic exactly: {@code Y = Σ drive·I/(λ + jωk)}. All voltages and currents are
 * then harmonic sums that obey both of Kirchhoff's laws, so that the powers cancel to rounding
 * (Tellegen's theorem), and by Parseval's theorem a mean product is {@code X₀Y₀ + ½·Σ
 * Re(X_k·Y_k*)}.
 *
 * <p>Known simplification: the conductor's voltage is the network's at its port for these
 * harmonics, not its law's between the samples.
 */
public final class PowerBalance {

  private final Map<Part, Double> watts = new EnumMap<>(Part.class);
  private final double sourceWatts;
  private final double residualWatts;

  private final Reduction reduction;
  private final Grid grid;
  private final Spectrum[] port;
  private final Spectrum[] mode;

  private PowerBalance(Solved solved) {
    reduction = solved.reduction();
    grid = solved.grid();
    port = new Spectrum[solved.port().length];
    for (int k = 0; k < port.length; k++) {
      port[k] = new Spectrum(grid, solved.port()[k]);
      port[k].real[0] = solved.portMean()[k];
    }
    mode = new Spectrum[reduction.modes];
    for (int m = 0; m < mode.length; m++) {
      mode[m] = modeSpectrum(m, solved.modeMean(m));
    }
    double sum = 0;
    for (Element e : solved.circuit().elements()) {
      double w = watts(e);
      watts.merge(e.part(), w, Double::sum);
      sum += w;
    }
    sourceWatts =
        spectrum(reduction.voltage(Point.EMF, Point.COMMON))
            .meanProduct(spectrum(new Currents(reduction).outOfSource()));
    residualWatts = sum - sourceWatts;
  }

  /** Balances a steady state. */
  public static PowerBalance of(Solved solved) {
    return new PowerBalance(solved);
  }

  /**
   * Mean power that the elements of a part take up (W), zero where there are none.
   *
   * @param part any part but the source
   */
  public double watts(Part part) {
    return watts.getOrDefault(part, 0.0);
  }

  /** Mean power that the source gives (W). */
  public double sourceWatts() {
    return sourceWatts;
  }

  /** What all elements take up, less what the source gives (W): a measure of rounding. */
  public double residualWatts() {
    return residualWatts;
  }

  private double watts(Element e) {
    if (e instanceof Resistor r && r.resistanceOhms() > 0) {
      Spectrum v = spectrum(reduction.voltage(e.from(), e.to()));
      return v.meanProduct(v) / r.resistanceOhms();
    }
    if (e instanceof Conductor) {
      Spectrum v = spectrum(reduction.voltage(e.from(), e.to()));
      return v.meanProduct(spectrum(new Currents(reduction).through(e)));
    }
    return 0;
  }

  private Spectrum modeSpectrum(int m, double mean) {
    Spectrum y = new Spectrum(grid.samples / 2);
    double lambda = reduction.decayPerSecond[m];
    for (int k = 1; k < y.real.length; k++) {
      double re = 0;
      double im = 0;
      for (int p = 0; p < reduction.ports; p++) {
        re += reduction.drive[m][p] * port[p].real[k];
        im += reduction.drive[m][p] * port[p].imaginary[k];
      }
      double omega = k * reduction.omegaRadiansPerSecond;
      double square = lambda * lambda + omega * omega;
      y.real[k] = (re * lambda + im * omega) / square;
      y.imaginary[k] = (im * lambda - re * omega) / square;
    }
    y.real[0] = mean;
    return y;
  }

  private Spectrum spectrum(Signal signal) {
    Spectrum sum = new Spectrum(grid.samples / 2);
    for (int k = 0; k < port.length; k++) {
      sum.add(signal.perPort()[k], port[k]);
    }
    for (int m = 0; m < mode.length; m++) {
      sum.add(signal.perMode()[m], mode[m]);
    }
    sum.real[1] += reduction.sourcePeakVolts * signal.cosine();
    sum.imaginary[1] -= reduction.sourcePeakVolts * signal.sine();
    return sum;
  }

  /** Harmonics X of a periodic signal, {@code x = X₀ + Re Σ X_k·exp(jωkt)}, k up to Nyquist's. */
  private static final class Spectrum {

    final double[] real;
    final double[] imaginary;

    Spectrum(int highest) {
      real = new double[highest + 1];
      imaginary = new double[highest + 1];
    }

    Spectrum(Grid grid, double[] samples) {
      this(grid.samples / 2);
      int count = grid.samples;
      for (int k = 0; k < real.length; k++) {
        double weight = (k == 0 || 2 * k == count ? 1.0 : 2.0) / count;
        for (int n = 0; n < count; n++) {
          int phase = (n * k) % count;
          real[k] += weight * samples[n] * grid.cosine[phase];
          imaginary[k] -= weight * samples[n] * grid.sine[phase];
        }
      }
    }

    void add(double factor, Spectrum other) {
      for (int k = 0; factor != 0 && k < real.length; k++) {
        real[k] += factor * other.real[k];
        imaginary[k] += factor * other.imaginary[k];
      }
    }

    double meanProduct(Spectrum other) {
      double sum = 0;
      for (int k = real.length - 1; k > 0; k--) {
        sum += 0.5 * (real[k] * other.real[k] + imaginary[k] * other.imaginary[k]);
      }
      return sum + real[0] * other.real[0];
    }
  }
}
