package halfwave.diagnosis;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.util.FastMath;

/**
 * How likely an outcome is where a case predicts one. A look may be misread, and a customer may
 * remember something else. A reading scatters by meter, flicker and by what lies between two of the
 * cases (a normal kernel), or, seldom, has nothing to do with the bench at all; so no cause is ever
 * ruled out for good.
 */
final class Likelihood {

  /** Edges of the classes into which expected readings are sorted (A, A, V). */
  private static final double[] DIRECT_AMPS = {
    -1e-6, -0.3e-6, -0.1e-6, 0.1e-6, 0.3e-6, 0.6e-6, 1e-6, 1.4e-6, 1.9e-6, 2.4e-6, 3e-6, 4e-6, 6e-6
  };

  private static final double[] ALTERNATING_AMPS = {
    1e-6, 3e-6, 4.5e-6, 6e-6, 7e-6, 8e-6, 9.5e-6, 12e-6, 20e-6
  };

  private static final double[] ALTERNATING_VOLTS = {
    2, 10, 20, 35, 50, 65, 75, 82, 86, 90, 95, 100, 110, 130
  };

  /** Kernel of a current: meter, flicker, and the gap between cases. */
  private static final double CURRENT_RATIO = 0.06;

  private static final double CURRENT_AMPS = 0.08e-6;

  /** AC of leads and meters differs more. */
  private static final double ALTERNATING_CURRENT_AMPS = 0.25e-6;

  /** Kernel of a voltage. */
  private static final double VOLTS_RATIO = 0.02;

  private static final double VOLTS = 1;

  /** What is no reading of the bench may be anything up to so much (A, V). */
  private static final double ANY_AMPS = 20e-6;

  private static final double ANY_VOLTS = 150;

  private static final NormalDistribution NORMAL = new NormalDistribution(0, 1);
  private static final double ROOT_TWO_PI = FastMath.sqrt(2 * Math.PI);

  private final double misread;
  private final double misremembered;
  private final double outlier;

  Likelihood(Priors priors) {
    misread = priors.misreadProbability();
    misremembered = priors.misrememberedProbability();
    outlier = priors.outlierProbability();
  }

  /** Probability of what was found, or density of a reading in units of its widest range. */
  double of(Check check, Outcome observed, Outcome predicted) {
    if (observed instanceof Outcome.Unsure unsure) {
      return unsure.what().stream()
          .mapToDouble(w -> found(check, new Outcome.Found(w), predicted))
          .sum();
    } else if (observed instanceof Outcome.Metered reading) {
      return (1 - outlier) * density(reading, predicted) + outlier;
    }
    return found(check, observed, predicted);
  }

  private double found(Check check, Outcome observed, Outcome predicted) {
    if (check instanceof Check.Read) {
      // that it never comes to a reading
      return observed.equals(predicted) ? 1 - outlier : outlier;
    }
    // one more: that it never comes to that
    int others = check.outcomes().size();
    double wrong = check.remembered() ? misremembered : misread;
    return observed.equals(predicted) ? 1 - wrong : wrong / others;
  }

  /** Density of a reading; zero where there was none to be expected. */
  private static double density(Outcome.Metered observed, Outcome predicted) {
    if (observed instanceof Outcome.Amps o && predicted instanceof Outcome.Amps p) {
      return density(o.meanAmps(), p.meanAmps(), meanSigma(p), ANY_AMPS)
          * density(o.alternatingRmsAmps(), p.alternatingRmsAmps(), rmsSigma(p), ANY_AMPS);
    } else if (observed instanceof Outcome.Volts o && predicted instanceof Outcome.Volts p) {
      return density(o.alternatingRmsVolts(), p.alternatingRmsVolts(), sigma(p), ANY_VOLTS);
    }
    return 0;
  }

  /** One where either is not known. */
  private static double density(double observed, double predicted, double sigma, double any) {
    double z = (observed - predicted) / sigma;
    return Double.isNaN(z) ? 1 : any / (sigma * ROOT_TWO_PI) * FastMath.exp(-0.5 * z * z);
  }

  private static double meanSigma(Outcome.Amps p) {
    return FastMath.hypot(CURRENT_AMPS, CURRENT_RATIO * p.meanAmps());
  }

  private static double rmsSigma(Outcome.Amps p) {
    return FastMath.hypot(ALTERNATING_CURRENT_AMPS, CURRENT_RATIO * p.alternatingRmsAmps());
  }

  private static double sigma(Outcome.Volts p) {
    return FastMath.hypot(VOLTS, VOLTS_RATIO * p.alternatingRmsVolts());
  }

  /**
   * Probabilities of everything that may come of a check where a case predicts something; the last
   * one is that it never comes to that.
   */
  double[] chances(Check check, Outcome predicted) {
    if (check instanceof Check.Read read) {
      return readings(read, predicted);
    }
    List<Enum<?>> outcomes = check.outcomes();
    double[] chances = new double[outcomes.size() + 1];
    for (int k = 0; k < outcomes.size(); k++) {
      chances[k] = found(check, new Outcome.Found(outcomes.get(k)), predicted);
    }
    chances[outcomes.size()] = found(check, new Outcome.NotReached(), predicted);
    return chances;
  }

  /** Classes of DC, and of AC in each of them, or of AC alone for a voltage. */
  private double[] readings(Check.Read read, Outcome predicted) {
    int count =
        read.current()
            ? (DIRECT_AMPS.length + 1) * (ALTERNATING_AMPS.length + 1)
            : ALTERNATING_VOLTS.length + 1;
    double[] chances = new double[count + 1];
    double[] classes = classes(predicted);
    if (classes.length == 0) {
      Arrays.fill(chances, outlier / count);
      chances[count] = 1 - outlier;
      return chances;
    }
    for (int k = 0; k < count; k++) {
      chances[k] = (1 - 2 * outlier) * classes[k] + outlier / count;
    }
    chances[count] = outlier;
    return chances;
  }

  /** Probability of each class; none where no reading is expected. */
  private static double[] classes(Outcome predicted) {
    if (predicted instanceof Outcome.Volts p && !Double.isNaN(p.alternatingRmsVolts())) {
      return classes(ALTERNATING_VOLTS, p.alternatingRmsVolts(), sigma(p));
    } else if (predicted instanceof Outcome.Amps p && !Double.isNaN(p.meanAmps())) {
      double[] rows = classes(DIRECT_AMPS, p.meanAmps(), meanSigma(p));
      double[] across = classes(ALTERNATING_AMPS, p.alternatingRmsAmps(), rmsSigma(p));
      double[] both = new double[rows.length * across.length];
      for (int k = 0; k < both.length; k++) {
        both[k] = rows[k / across.length] * across[k % across.length];
      }
      return both;
    }
    return new double[0];
  }

  private static double[] classes(double[] edges, double middle, double sigma) {
    double[] chances = new double[edges.length + 1];
    double below = 0;
    for (int k = 0; k < edges.length; k++) {
      double upTo = NORMAL.cumulativeProbability((edges[k] - middle) / sigma);
      chances[k] = upTo - below;
      below = upTo;
    }
    chances[edges.length] = 1 - below;
    return chances;
  }

  /** How probable it is that a reading lies as far out as this or further, on one side. */
  static double tail(Outcome.Metered observed, Outcome predicted, boolean above) {
    double z = standardised(observed, predicted);
    return Double.isNaN(z) ? 0.5 : NORMAL.cumulativeProbability(above ? -z : z);
  }

  /** By DC where that was read. */
  private static double standardised(Outcome.Metered observed, Outcome predicted) {
    if (observed instanceof Outcome.Amps o && predicted instanceof Outcome.Amps p) {
      return Double.isNaN(o.meanAmps())
          ? (o.alternatingRmsAmps() - p.alternatingRmsAmps()) / rmsSigma(p)
          : (o.meanAmps() - p.meanAmps()) / meanSigma(p);
    } else if (observed instanceof Outcome.Volts o && predicted instanceof Outcome.Volts p) {
      return (o.alternatingRmsVolts() - p.alternatingRmsVolts()) / sigma(p);
    }
    return Double.NaN;
  }
}
