package halfwave.matching;

import halfwave.bench.Bench;
import halfwave.matching.Match.Compared;
import halfwave.matching.Match.Estimate;
import halfwave.message.Quantity;
import halfwave.quantity.RejectedValueException;
import halfwave.quantity.RejectedValueException.Allowed;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.exception.ConvergenceException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.exception.TooManyIterationsException;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Fits numbers of a bench to readings: the most probable ones (maximum a posteriori) under normal
 * errors of meter and flicker and the wide prior of each {@link Unknown}.
 */
public final class Matching {

  private Matching() {}

  /** What the readings can be asked for: all, but what cleaning left only where it was read. */
  public static Set<Unknown> usual(List<TakenReading> readings) {
    Set<Unknown> usual = EnumSet.allOf(Unknown.class);
    if (readings.stream().noneMatch(r -> r.sight().setting().cleaned())) {
      usual.remove(Unknown.FILM_LEFT);
    }
    return usual;
  }

  /**
   * Fits.
   *
   * @param bench what is known otherwise, and where sizes are looked for
   * @param asked what to fit; at least one
   * @param readings any kinds, at least one
   * @return the match, or what stood in its way
   * @throws RejectedValueException naming {@code unknowns} or {@code readings} where there are none
   */
  public static Matched of(Bench bench, Set<Unknown> asked, List<TakenReading> readings) {
    notEmpty("unknowns", asked.size());
    notEmpty("readings", readings.size());
    List<Unknown> unknowns = new ArrayList<>(EnumSet.copyOf(asked));
    Search search = new Search(bench, unknowns, readings);
    try {
      return match(search, search.found());
    } catch (Predictor.Unreadable e) {
      return e.why();
    } catch (TooManyEvaluationsException | TooManyIterationsException | ConvergenceException e) {
      return new Matched.Unsettled(search.count());
    }
  }

  private static void notEmpty(String field, int size) {
    if (size == 0) {
      throw new RejectedValueException(field, "0", Allowed.ENTRIES, 1, Double.NaN);
    }
  }

  private static Match match(Search search, Search.Found found) {
    Posterior posterior = new Posterior(search.unknowns(), found);
    List<Estimate> estimates = new ArrayList<>();
    for (int k = 0; k < search.unknowns().size(); k++) {
      estimates.add(
          estimate(
              search, search.unknowns().get(k), found.best().getEntry(k), posterior.interval(k)));
    }
    List<Compared> compared = new ArrayList<>();
    double chi = 0;
    for (int n = 0; n < search.readings().size(); n++) {
      TakenReading taken = search.readings().get(n);
      double off = found.misfits().getEntry(n);
      double fitted = taken.value().si() - off * found.deviations().getEntry(n);
      compared.add(new Compared(taken, new Quantity(fitted, taken.value().dimension()), off));
      chi += off * off;
    }
    return new Match(
        bench(search, found),
        estimates,
        compared,
        fitProbability(found, posterior, chi),
        new Telling(search, found, posterior).ambiguities());
  }

  private static Bench bench(Search search, Search.Found found) {
    Bench bench = search.predictor().bench(found.best().toArray(), false);
    return new Bench(bench.name() + "-matched", bench.design(), bench.condition());
  }

  private static Estimate estimate(Search search, Unknown unknown, double best, double[] ends) {
    double a = unknown.si(search.bench(), ends[0]);
    double b = unknown.si(search.bench(), ends[1]);
    return new Estimate(
        unknown,
        new Quantity(unknown.si(search.bench(), best), unknown.dimension()),
        new Quantity(Math.min(a, b), unknown.dimension()),
        new Quantity(Math.max(a, b), unknown.dimension()));
  }

  /** Readings beyond those that were needed to fix the unknowns are left to judge the fit. */
  private static double fitProbability(Search.Found found, Posterior posterior, double chi) {
    RealMatrix information = found.information();
    double used = information.multiply(posterior.covariance()).getTrace();
    double freedom = found.misfits().getDimension() - used;
    return freedom < 0.5
        ? 1
        : 1 - new ChiSquaredDistribution(null, freedom).cumulativeProbability(chi);
  }
}
