package halfwave.circuit;

import halfwave.circuit.Element.Capacitor;
import java.util.EnumMap;
import java.util.Map;
import org.apache.commons.math3.complex.Complex;

/**
 * Mean power of every part of a steady state over one period.
 *
 * <p>Taken from the harmonics of {@link PortWaves}, not from the waveforms of the steady state,
 * whose samples and whose straight lines between them belong to slightly different voltages. The
 * harmonics obey both of Kirchhoff's laws one by one, so that the powers cancel (Tellegen's
 * theorem); a resistance takes up a sum of squares, a capacitance nothing, and a conductor the mean
 * of products of one sign, as far as its law and the network have been brought to agree.
 *
 * <p>Costs the cube of the number of samples: a millisecond at the standard number and one flame.
 */
public final class PowerBalance {

  private final Map<Part, Double> watts = new EnumMap<>(Part.class);
  private final double sourceWatts;
  private final double residualWatts;

  private PowerBalance(Solved solved) {
    PortWaves waves = new PortWaves(solved);
    Complex[][] back = waves.backHarmonics();
    Complex source = Harmonics.sine(solved.reduction().sourcePeakVolts);
    double given = 0;
    for (int k = waves.networks.length - 1; k >= 0; k--) {
      HarmonicNetwork network = waves.networks[k];
      Complex[] voltage = network.voltages(k == 1 ? source : Complex.ZERO, back[k]);
      Complex[] current = network.currents(voltage, back[k]);
      for (int n = 0; n < voltage.length; n++) {
        Element e = network.branches.get(n).element();
        if (!(e instanceof Capacitor)) {
          double w = realProduct(voltage[n], current[n]);
          watts.merge(e.part(), k == 0 ? w : 0.5 * w, Double::sum);
        }
      }
      given += k == 1 ? 0.5 * realProduct(source, network.outOfSource(current)) : 0;
    }
    sourceWatts = given;
    residualWatts = watts.values().stream().mapToDouble(w -> w).sum() - given;
  }

  private static double realProduct(Complex a, Complex b) {
    return a.getReal() * b.getReal() + a.getImaginary() * b.getImaginary();
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
}
