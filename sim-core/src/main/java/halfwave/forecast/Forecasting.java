package halfwave.forecast;

import halfwave.forecast.Forecast.Learned;
import halfwave.forecast.Forecast.Plan;
import halfwave.forecast.Forecast.Point;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Follows many possible lives of a rod. Without a log each counts alike; with one, each counts by
 * how well it explains the readings (importance sampling), and those that count are followed.
 */
public final class Forecasting {

  /** Lives that are held against a log, and lives that are followed. */
  private static final int DRAWN = 4096;

  private static final int FOLLOWED = 512;

  private static final int TIMES = 13;

  private static final double LOW = 0.05;
  private static final double MIDDLE = 0.5;
  private static final double HIGH = 0.95;

  private final Question question;
  private final List<Logged.Done> done;
  private final List<Life> lives;
  private final List<Drawn> drawn;
  private final Map<Boolean, Currents> currents = new HashMap<>();
  private final Rods rods;

  private Forecasting(Question question) {
    this.question = question;
    rods = new Rods(question.bench());
    done =
        question.log().stream()
            .filter(Logged.Done.class::isInstance)
            .map(Logged.Done.class::cast)
            .toList();
    boolean read = question.log().stream().anyMatch(Logged.Read.class::isInstance);
    drawn = Drawn.of(question, read ? DRAWN : FOLLOWED);
    lives = drawn.stream().map(d -> new Life(question, rods, d.rates())).toList();
  }

  /** The forecast, or what stood in its way. */
  public static Forecasted of(Question question) {
    try {
      return new Forecasting(question).forecast();
    } catch (Currents.UnsolvedException e) {
      return new Forecasted.Unsolved(e.reason());
    }
  }

  private Forecast forecast() {
    LogFit fit = LogFit.of(question.log(), lives.size(), this::amps);
    List<@Nullable Repair> repairs = new ArrayList<>();
    repairs.add(null);
    repairs.addAll(Logged.ROD_REPAIRS);
    double[] times = times();
    int[] followed = fit.drawnAgain(FOLLOWED);
    double[][][] amps = new double[repairs.size()][times.length][followed.length];
    for (int n = 0; n < followed.length; n++) {
      // a life that counts several times has another level each time
      double level = fit.level(followed[n], drawn.get(n).levelRatio());
      for (int p = 0; p < repairs.size(); p++) {
        List<Logged.Done> all = with(repairs.get(p));
        for (int t = 0; t < times.length; t++) {
          amps[p][t][n] = level * amps(followed[n], times[t], all);
        }
      }
    }
    List<Plan> plans = new ArrayList<>();
    for (int p = 0; p < amps.length; p++) {
      plans.add(
          new Plan(
              repairs.get(p),
              point(times[0], amps[p][0]),
              reached(times, amps[p], 1 - question.confidenceProbability()),
              reached(times, amps[p], MIDDLE)));
    }
    List<Point> band =
        IntStream.range(0, times.length).mapToObj(t -> point(times[t], amps[0][t])).toList();
    return new Forecast(
        question,
        band.get(0),
        band,
        plans,
        learned(fit.weights()),
        fit.effectiveCount(),
        fit.fitProbability());
  }

  private double[] times() {
    double now = question.nowSeconds();
    return IntStream.range(0, TIMES)
        .mapToDouble(t -> now + question.aheadSeconds() * t / (TIMES - 1))
        .toArray();
  }

  private List<Logged.Done> with(@Nullable Repair repair) {
    if (repair == null) {
      return done;
    }
    List<Logged.Done> all = new ArrayList<>(done);
    all.add(new Logged.Done(question.nowSeconds(), repair));
    return all;
  }

  /** The reading of one life at one time, before any level (A). */
  private double amps(int life, double seconds, List<Logged.Done> before) {
    Worn worn = lives.get(life).at(seconds, before);
    return currents.computeIfAbsent(worn.renewed(), this::solved).amps(worn);
  }

  private Currents solved(boolean renewed) {
    double end = question.nowSeconds() + question.aheadSeconds();
    double thinned = 0;
    double drooped = 0;
    for (Life life : lives) {
      Worn worn = life.at(end, List.of());
      thinned = Math.max(thinned, worn.thinnedMeters());
      drooped = Math.max(drooped, worn.droopedRadians());
    }
    return new Currents(rods, renewed, thinned, drooped);
  }

  private static Point point(double seconds, double[] amps) {
    double[] alike = new double[amps.length];
    Arrays.fill(alike, 1.0 / amps.length);
    return new Point(
        seconds,
        Weighted.quantile(amps, alike, LOW),
        Weighted.quantile(amps, alike, MIDDLE),
        Weighted.quantile(amps, alike, HIGH));
  }

  /** When a share of the lives has been below the limit; between two times in a straight line. */
  private double reached(double[] times, double[][] amps, double share) {
    boolean[] below = new boolean[amps[0].length];
    double before = 0;
    for (int t = 0; t < times.length; t++) {
      int count = 0;
      for (int n = 0; n < below.length; n++) {
        below[n] |= amps[t][n] < question.limitAmps();
        count += below[n] ? 1 : 0;
      }
      double now = (double) count / below.length;
      if (now >= share) {
        return t == 0
            ? times[0]
            : times[t - 1] + (share - before) / (now - before) * (times[t] - times[t - 1]);
      }
      before = now;
    }
    return Double.POSITIVE_INFINITY;
  }

  private List<Learned> learned(double[] weights) {
    return Arrays.stream(Rate.values())
        .map(
            rate -> {
              double[] values =
                  drawn.stream().mapToDouble(d -> d.rates().getOrDefault(rate, 1.0)).toArray();
              return new Learned(
                  rate,
                  Weighted.quantile(values, weights, LOW),
                  Weighted.quantile(values, weights, MIDDLE),
                  Weighted.quantile(values, weights, HIGH));
            })
        .toList();
  }
}
