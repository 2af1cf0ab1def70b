package halfwave.forecast;

import halfwave.bench.Bench;
import halfwave.quantity.Guard;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What a forecast is to be of.
 *
 * @param bench the bench, with the rod as it was when the log begins, or as it is now without one
 * @param log readings and work in order of time; empty for none
 * @param touched whether the rod was touched with bare fingers when it was put in
 * @param siliconKilogramsPerCubicMeter silicon in the air (kg/m³), usual value; 0 to 1e-4
 * @param ranges of rates that are known better or worse than usual
 * @param aheadSeconds how far, in time with flame from the last entry (s); above zero
 * @param limitAmps DC that is too little (A)
 * @param confidenceProbability chance that it has not come to that by the day of service (1); 0.5
 *     to 0.99
 * @param seed of what is drawn
 */
public record Question(
    Bench bench,
    List<Logged> log,
    boolean touched,
    double siliconKilogramsPerCubicMeter,
    Map<Rate, Range> ranges,
    double aheadSeconds,
    double limitAmps,
    double confidenceProbability,
    long seed) {

  /** Silicon in the air of a house where nobody has measured it (kg/m³) [memory, factor 4]. */
  public static final double USUAL_SILICON = 20e-9;

  /** As sure as usual (1). */
  public static final double USUAL_CONFIDENCE = 0.95;

  /** Checks the domain and takes copies. */
  public Question {
    log = List.copyOf(log);
    for (int k = 1; k < log.size(); k++) {
      Guard.inRange(
          "log[" + k + "].flameSeconds",
          log.get(k).flameSeconds(),
          log.get(k - 1).flameSeconds(),
          Logged.MOST_SECONDS);
    }
    Guard.inRange("siliconKilogramsPerCubicMeter", siliconKilogramsPerCubicMeter, 0, 1e-4);
    Guard.inRange("aheadSeconds", aheadSeconds, 3600, Logged.MOST_SECONDS);
    Guard.inRange("limitAmps", limitAmps, Logged.Read.LEAST_AMPS, Logged.Read.MOST_AMPS);
    Guard.inRange("confidenceProbability", confidenceProbability, 0.5, 0.99);
    Map<Rate, Range> all = new EnumMap<>(Rate.class);
    for (Rate rate : Rate.values()) {
      all.put(rate, ranges.getOrDefault(rate, rate.usual()));
    }
    ranges = Map.copyOf(all);
  }

  /** The range of a rate. */
  Range range(Rate rate) {
    return ranges.getOrDefault(rate, rate.usual());
  }

  /** Time with flame at the last entry (s); zero without a log. */
  public double nowSeconds() {
    return log.isEmpty() ? 0 : log.get(log.size() - 1).flameSeconds();
  }
}
