package halfwave.forecast;

import halfwave.bench.Stages;
import halfwave.circuit.SteadyState;
import halfwave.forecast.Forecast.Learned;
import halfwave.forecast.Forecast.Plan;
import halfwave.forecast.Forecast.Point;
import halfwave.instrument.MeterReading;
import halfwave.instrument.Microammeter;
import halfwave.quantity.RejectedValueException;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Follows many possible lives of a rod. Without a log each counts alike; with one, each counts by
 * how well it explains the readings (importance sampling), and those that count are followed.
 */
public final class Forecasting {

  /** Lives that are held against a log, and lives that are followed. */
  private static final int DRAWN = 1024;

  private static final int FOLLOWED = 128;

  private static final int TIMES = 13;

  private static final double LOW = 0.05;
  private static final double MIDDLE = 0.5;
  private static final double HIGH = 0.95;

  /** Current of a rod that gives none, or the wrong sign: less than any meter shows (A). */
  private static final double NOTHING_AMPS = 1e-9;

  private final Question question;
  private final List<Logged.Done> done;
  private final List<Drawn> drawn;
  private final Exposure exposure = new Exposure();
  private final Stages stages = new Stages();

  /** A second flame, for a rod of another age. */
  private final Stages renewed = new Stages();

  private static final class UnsolvedException extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient SteadyState.Failed reason;

    private UnsolvedException(SteadyState.Failed reason) {
      this.reason = reason;
    }
  }

  private Forecasting(Question question) {
    this.question = question;
    done =
        question.log().stream()
            .filter(Logged.Done.class::isInstance)
            .map(Logged.Done.class::cast)
            .toList();
    boolean read = question.log().stream().anyMatch(Logged.Read.class::isInstance);
    drawn = Drawn.of(question, read ? DRAWN : FOLLOWED);
  }

  /** The forecast, or what stood in its way. */
  public static Forecasted of(Question question) {
    try {
      return new Forecasting(question).forecast();
    } catch (UnsolvedException e) {
      return new Forecasted.Unsolved(e.reason);
    }
  }

  private Forecast forecast() {
    LogFit fit = LogFit.of(question.log(), drawn, this::amps);
    List<@Nullable Repair> repairs = new ArrayList<>();
    repairs.add(null);
    repairs.addAll(Logged.ROD_REPAIRS);
    double[] times = times();
    int[] followed = fit.drawnAgain(FOLLOWED);
    double[][][] amps = new double[repairs.size()][times.length][followed.length];
    for (int n = 0; n < followed.length; n++) {
      Drawn life = drawn.get(followed[n]);
      double level = fit.level(followed[n], life.levelRatio());
      for (int t = 0; t < times.length; t++) {
        // all works but a new rod share a flame
        for (int p = 0; p < repairs.size(); p++) {
          Stages remembered = repairs.get(p) == Repair.REPLACE_ROD ? renewed : stages;
          amps[p][t][n] = level * amps(remembered, life, times[t], with(repairs.get(p)));
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

  /** The reading of one life at one time of the log, before any level (A). */
  private double amps(Drawn life, double seconds, List<Logged.Done> before) {
    return amps(stages, life, seconds, before);
  }

  private double amps(Stages remembered, Drawn life, double seconds, List<Logged.Done> before) {
    MeterReading reading;
    try {
      reading =
          Microammeter.SERVICE.read(
              remembered.circuit(new Life(question, exposure, life.rates()).at(seconds, before)));
    } catch (RejectedValueException onMetal) {
      // the rod has drooped onto the burner
      return NOTHING_AMPS;
    }
    if (reading instanceof MeterReading.None none) {
      throw new UnsolvedException(none.reason());
    }
    return Math.max(NOTHING_AMPS, ((MeterReading.Amps) reading).meanAmps());
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
