package halfwave.matching;

import halfwave.instrument.MeterModel;
import halfwave.matching.Match.Ambiguity;
import halfwave.matching.Match.Proposal;
import halfwave.message.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.jspecify.annotations.Nullable;

/**
 * Which unknowns the readings tell apart, and which further reading would. Widths are those of the
 * linearised problem, over the width before any reading.
 */
final class Telling {

  /** Open is what the readings leave more than half of its width. */
  private static final double OPEN_RATIO = 0.5;

  /** What hangs together with more than these is as good as not seen. */
  private static final int MOST_TOGETHER = 3;

  /** A reading that takes off less than a tenth is not worth the way. */
  private static final double WORTH_RATIO = 0.9;

  /** Where else a rod can be held with its bracket loose: further out, higher (m) [practice]. */
  private static final double ASIDE_METERS = 5e-3;

  private final Search search;
  private final Search.Found found;
  private final RealMatrix covariance;
  private final List<Candidate> candidates = new ArrayList<>();

  Telling(Search search, Search.Found found, Posterior posterior) {
    this.search = search;
    this.found = found;
    int size = search.unknowns().size();
    covariance = posterior.covariance().copy();
    for (int k = 0; k < size; k++) {
      for (int j = 0; j < size; j++) {
        covariance.multiplyEntry(k, j, 1 / (width(k) * width(j)));
      }
    }
  }

  private double width(int k) {
    return search.unknowns().get(k).widthRatio();
  }

  List<Ambiguity> ambiguities() {
    List<Ambiguity> ambiguities = new ArrayList<>();
    for (Set<Integer> set : sets()) {
      List<Unknown> unknowns = set.stream().map(search.unknowns()::get).toList();
      ambiguities.add(new Ambiguity(unknowns, further(set)));
    }
    return ambiguities;
  }

  /** Each open unknown with the fewest others that would have to be known for it to be fixed. */
  private List<Set<Integer>> sets() {
    List<Set<Integer>> sets = new ArrayList<>();
    for (int k = 0; k < covariance.getRowDimension(); k++) {
      if (open(covariance, k)) {
        Set<Integer> set = partners(k);
        if (!sets.contains(set)) {
          sets.add(set);
        }
      }
    }
    // what is said of two of them need not be said of three
    return sets.stream()
        .filter(
            s ->
                sets.stream()
                    .noneMatch(o -> o.size() < s.size() && o.size() > 1 && s.containsAll(o)))
        .toList();
  }

  private static boolean open(RealMatrix covariance, int k) {
    return covariance.getEntry(k, k) > OPEN_RATIO * OPEN_RATIO;
  }

  private Set<Integer> partners(int k) {
    Set<Integer> set = new TreeSet<>(Set.of(k));
    RealMatrix rest = covariance;
    while (open(rest, k) && set.size() < Math.min(MOST_TOGETHER, rest.getRowDimension())) {
      RealMatrix before = rest;
      int most =
          IntStream.range(0, rest.getRowDimension())
              .filter(j -> !set.contains(j))
              .boxed()
              .max((a, b) -> Double.compare(shared(before, k, a), shared(before, k, b)))
              .orElseThrow();
      set.add(most);
      rest = known(rest, most);
    }
    return open(rest, k) ? Set.of(k) : set;
  }

  /** How much of the variance of one unknown would go if another were known. */
  private static double shared(RealMatrix covariance, int k, int other) {
    double both = covariance.getEntry(k, other);
    double own = covariance.getEntry(other, other);
    return own > 0 ? both * both / own : 0;
  }

  /** The covariance if one unknown were known. */
  private static RealMatrix known(RealMatrix covariance, int other) {
    double own = covariance.getEntry(other, other);
    return own > 0
        ? covariance.subtract(
            covariance
                .getColumnMatrix(other)
                .multiply(covariance.getRowMatrix(other))
                .scalarMultiply(1 / own))
        : covariance;
  }

  /** The reading that would leave these unknowns the least variance, all together. */
  private @Nullable Proposal further(Set<Integer> set) {
    double now = set.stream().mapToDouble(k -> covariance.getEntry(k, k)).sum();
    Proposal best = null;
    for (Candidate candidate : candidates()) {
      double gone = 0;
      for (int k : set) {
        double shift = covariance.getRowVector(k).dotProduct(candidate.slopes());
        gone +=
            shift
                * shift
                / (1 + candidate.slopes().dotProduct(covariance.operate(candidate.slopes())));
      }
      double remaining = Math.sqrt(Math.max(0, 1 - gone / now));
      if (remaining < (best == null ? WORTH_RATIO : best.remainingRatio())) {
        best = new Proposal(candidate.sight(), candidate.expected(), remaining);
      }
    }
    return best;
  }

  /** A reading that could be taken: what it would show, and how steep over its deviation. */
  private record Candidate(Sight sight, Quantity expected, RealVector slopes) {}

  private List<Candidate> candidates() {
    if (candidates.isEmpty()) {
      MeterModel meter = search.readings().get(0).sight().meter();
      for (boolean cleaned : new boolean[] {false, true}) {
        for (Setting setting :
            List.of(
                new Setting(cleaned, 0, 0, 0),
                new Setting(cleaned, 0, 0, ASIDE_METERS),
                new Setting(cleaned, 0, ASIDE_METERS, 0))) {
          for (ReadingKind kind : ReadingKind.values()) {
            candidate(new Sight(kind, setting, meter)).ifPresent(candidates::add);
          }
        }
      }
    }
    return candidates;
  }

  private Optional<Candidate> candidate(Sight sight) {
    double[] best = found.best().toArray();
    List<Sight> one = List.of(sight);
    try {
      double[] value = search.predictor().values(best, one);
      double deviation =
          Search.deviation(sight, value[0], search.predictor().flickerSlopes(best, value, one)[0]);
      double[] slopes = new double[best.length];
      for (int k = 0; k < best.length; k++) {
        slopes[k] = search.predictor().slopes(best, value, k, one)[0] * width(k) / deviation;
      }
      Quantity expected = new Quantity(value[0], sight.kind().dimension());
      return Optional.of(new Candidate(sight, expected, new ArrayRealVector(slopes, false)));
    } catch (Predictor.Unreadable impossible) {
      // the rod has no place there, or the circuit no solution
      return Optional.empty();
    }
  }
}
