package halfwave.diagnosis;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * A table of cases with the judgement that weighs them: all that does not change while one looks
 * for a fault.
 */
public final class Outlook {

  private final CaseTable table;
  private final Priors priors;
  private final Likelihood likelihood;
  private final Map<Cause, Integer> places;

  /** Probability of each outcome: check, case, outcome. */
  private final double[][][] chances;

  /** Prepares it. */
  public Outlook(CaseTable table, Priors priors) {
    this.table = table;
    this.priors = priors;
    likelihood = new Likelihood(priors);
    places = table.places();
    chances =
        IntStream.range(0, table.checks().size())
            .parallel()
            .mapToObj(this::chancesOf)
            .toArray(double[][][]::new);
  }

  /**
   * Cases in which a check finds the same share their row: a row for each takes five times as much.
   */
  private double[][] chancesOf(int check) {
    Check what = table.checks().get(check);
    Map<Outcome, double[]> known = new HashMap<>();
    return table.cases().stream()
        .map(c -> c.outcomes().get(check))
        .map(found -> known.computeIfAbsent(found, o -> likelihood.chances(what, o)))
        .toArray(double[][]::new);
  }

  /** The table. */
  public CaseTable table() {
    return table;
  }

  /** The judgement. */
  public Priors priors() {
    return priors;
  }

  /** What is believed before anything is known. */
  public Belief start() {
    return Belief.start(this);
  }

  Likelihood likelihood() {
    return likelihood;
  }

  List<Cause> causes() {
    return table.causes();
  }

  /** Where a cause stands; −1 where the table has none such. */
  int place(Cause cause) {
    return places.getOrDefault(cause, -1);
  }

  /** Where a check stands. */
  int place(Check check) {
    int place = table.checks().indexOf(check);
    if (place < 0) {
      throw new IllegalArgumentException("no check " + check.id() + " at this appliance");
    }
    return place;
  }

  /** Of the cases, by number: the probabilities of a check's outcomes. */
  double[][] chances(int check) {
    return chances[check];
  }
}
