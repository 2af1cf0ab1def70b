package halfwave.forecast;

import halfwave.work.Repair;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How the reading goes on: DC in series on the warm bench, with the band of what the rates leave
 * open.
 *
 * @param question what was asked
 * @param now the reading at the last entry of the log, or at the beginning
 * @param band from then on, if nothing is done
 * @param plans what could be done at that time: nothing first
 * @param learned what the log tells of each rate, or the ranges themselves without one
 * @param effectiveCount how many of the lives that were drawn the log has left
 * @param fitProbability chance that readings of the life that fits best would differ from it as
 *     much as the log's do (1); 1 with fewer than three readings
 */
public record Forecast(
    Question question,
    Point now,
    List<Point> band,
    List<Plan> plans,
    List<Learned> learned,
    double effectiveCount,
    double fitProbability)
    implements Forecasted {

  /** Below this the log holds something that is no ageing, but for one log in a hundred. */
  private static final double LEAST_PROBABILITY = 0.01;

  /** Fewer lives than these make a band of steps. */
  private static final double LEAST_COUNT = 20;

  /** Takes copies. */
  public Forecast {
    band = List.copyOf(band);
    plans = List.copyOf(plans);
    learned = List.copyOf(learned);
  }

  /**
   * The reading at a time.
   *
   * @param flameSeconds time with flame since the log began (s)
   * @param lowAmps 5 % are below (A)
   * @param middleAmps half are below (A)
   * @param highAmps 5 % are above (A)
   */
  public record Point(double flameSeconds, double lowAmps, double middleAmps, double highAmps) {}

  /**
   * What could be done at the last entry of the log.
   *
   * @param repair the work on the rod, or null for nothing
   * @param after the reading right after it
   * @param serviceSeconds time with flame since the log began, by which the reading has come to the
   *     limit with no more than the chance allowed (s); infinite: not within the time looked at
   * @param likelySeconds the same for an even chance (s)
   */
  public record Plan(
      @Nullable Repair repair, Point after, double serviceSeconds, double likelySeconds) {}

  /**
   * A rate after the log.
   *
   * @param rate which
   * @param lowRatio 5 % are below (1)
   * @param middleRatio half are below (1)
   * @param highRatio 5 % are above (1)
   */
  public record Learned(Rate rate, double lowRatio, double middleRatio, double highRatio) {}

  /** Whether the log can be ageing alone. */
  public boolean plausible() {
    return fitProbability >= LEAST_PROBABILITY;
  }

  /** Whether the band is made of so few lives that it is rough. */
  public boolean rough() {
    return effectiveCount < LEAST_COUNT;
  }
}
