package halfwave.forecast;

import halfwave.instrument.MeterFunction;
import halfwave.instrument.ShippedMeters;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.util.FastMath;

/**
 * How well each life that was drawn explains a log. A furnace reads a little above or below its
 * bench all its life: that level, a factor common to all readings, is worked out of each life in
 * closed form (both it and the scatter of readings are log-normal).
 */
final class LogFit {

  /** Width of the level's logarithm with a log, where the bench need not be this very furnace. */
  private static final double LEVEL_RATIO = 0.25;

  /** The same without a log: from one such furnace to the next (1) [practice, judgement]. */
  private static final double OWN_LEVEL_RATIO = 0.1;

  /** From day to day: gas, air, weather (1) [practice, judgement]. */
  private static final double SCATTER_RATIO = 0.05;

  /** What a life would read (A). */
  interface Reader {
    double amps(int life, double seconds, List<Logged.Done> before);
  }

  private final double[] weights;
  private final double[] levels;
  private final double levelWidth;
  private final double fitProbability;

  private LogFit(double[] weights, double[] levels, double levelWidth, double fitProbability) {
    this.weights = weights;
    this.levels = levels;
    this.levelWidth = levelWidth;
    this.fitProbability = fitProbability;
  }

  static LogFit of(List<Logged> log, int count, Reader reader) {
    List<Logged.Read> reads = new ArrayList<>();
    List<List<Logged.Done>> before = new ArrayList<>();
    List<Logged.Done> done = new ArrayList<>();
    for (Logged logged : log) {
      if (logged instanceof Logged.Read read) {
        reads.add(read);
        before.add(List.copyOf(done));
      } else {
        done.add((Logged.Done) logged);
      }
    }
    double[] weights = new double[count];
    double[] levels = new double[count];
    if (reads.isEmpty()) {
      Arrays.fill(weights, 1.0 / weights.length);
      return new LogFit(weights, levels, OWN_LEVEL_RATIO, 1);
    }
    double precision = 1 / (LEVEL_RATIO * LEVEL_RATIO);
    double[] sharp = new double[reads.size()];
    for (int k = 0; k < sharp.length; k++) {
      sharp[k] = 1 / variance(reads.get(k).amps());
      precision += sharp[k];
    }
    double[] misfits = new double[count];
    for (int n = 0; n < misfits.length; n++) {
      double sum = 0;
      double squares = 0;
      for (int k = 0; k < sharp.length; k++) {
        Logged.Read read = reads.get(k);
        double off = FastMath.log(read.amps() / reader.amps(n, read.flameSeconds(), before.get(k)));
        sum += sharp[k] * off;
        squares += sharp[k] * off * off;
      }
      levels[n] = sum / precision;
      misfits[n] = squares - sum * sum / precision;
    }
    double least = Arrays.stream(misfits).min().orElseThrow();
    for (int n = 0; n < weights.length; n++) {
      weights[n] = FastMath.exp(-0.5 * (misfits[n] - least));
    }
    double all = Arrays.stream(weights).sum();
    for (int n = 0; n < weights.length; n++) {
      weights[n] /= all;
    }
    return new LogFit(weights, levels, 1 / Math.sqrt(precision), probability(least, sharp.length));
  }

  /** Of a reading's logarithm, by the day and by a good meter. */
  private static double variance(double amps) {
    double meter = ShippedMeters.service().deviationSi(MeterFunction.DC_MICROAMPS, amps) / amps;
    return SCATTER_RATIO * SCATTER_RATIO + meter * meter;
  }

  /** A level and a slope can be had from any two readings. */
  private static double probability(double misfit, int count) {
    return count < 3
        ? 1
        : 1 - new ChiSquaredDistribution(null, count - 1).cumulativeProbability(misfit);
  }

  /** How much each life counts; together one. */
  double[] weights() {
    return weights.clone();
  }

  double fitProbability() {
    return fitProbability;
  }

  /** How many lives of equal weight would say as much (Kish 1965). */
  double effectiveCount() {
    return 1 / Arrays.stream(weights).map(w -> w * w).sum();
  }

  /** A level that life may have, at a normal deviate. */
  double level(int n, double deviate) {
    return FastMath.exp(levels[n] + levelWidth * deviate);
  }

  /** So many lives, each as often as it counts, evenly taken. */
  int[] drawnAgain(int count) {
    int[] again = new int[count];
    double passed = weights[0];
    int n = 0;
    for (int k = 0; k < count; k++) {
      while (passed < (k + 0.5) / count && n < weights.length - 1) {
        n++;
        passed += weights[n];
      }
      again[k] = n;
    }
    return again;
  }
}
