package halfwave.forecast;

import halfwave.quantity.Noise;
import halfwave.quantity.Noise.Purpose;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/**
 * One set of rates, from Sobol's sequence shifted by the seed: it fills the ranges more evenly than
 * chance does.
 *
 * @param rates each as a multiple of its usual value (1)
 * @param levelRatio where this life stands in what is open of its level: a normal deviate (1)
 */
record Drawn(Map<Rate, Double> rates, double levelRatio) {

  static List<Drawn> of(Question question, int count) {
    Rate[] all = Rate.values();
    NormalDistribution normal = new NormalDistribution(null, 0, 1);
    SobolSequenceGenerator sobol = new SobolSequenceGenerator(all.length + 1);
    List<Drawn> drawn = new ArrayList<>();
    for (int n = 0; n < count; n++) {
      double[] even = sobol.nextVector();
      Map<Rate, Double> rates = new EnumMap<>(Rate.class);
      for (int k = 0; k <= all.length; k++) {
        double shifted = even[k] + Noise.uniform(question.seed(), Purpose.RATE, k);
        // away from the ends, where a normal deviate is infinite
        double inside = Math.max(1e-9, Math.min(1 - 1e-9, shifted - Math.floor(shifted)));
        even[k] = normal.inverseCumulativeProbability(inside);
        if (k < all.length) {
          rates.put(all[k], question.range(all[k]).at(even[k]));
        }
      }
      drawn.add(new Drawn(Map.copyOf(rates), even[all.length]));
    }
    return drawn;
  }
}
