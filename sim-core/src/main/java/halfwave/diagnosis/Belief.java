package halfwave.diagnosis;

import halfwave.diagnosis.Entry.Result;
import halfwave.evidence.Course;
import halfwave.fault.FaultKind;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What is believed after some evidence. It is a weight for every way in which it can have been and
 * can be now: which case the furnace was when one came, and which it is after the repairs so far.
 * Bayes' rule weighs each by how likely the evidence is there; what several readings have in common
 * (the same severity, the same bench) is so taken care of. Immutable.
 *
 * <p>Repairs change the case and keep the bench (Breese and Heckerman, Proc. UAI 1996, 124):
 * readings from before a repair go on telling what was wrong, those after it what still is.
 */
public final class Belief {

  /** All ways below this together change no advice (1): some thousands of them make a 1e-5. */
  private static final double NEGLIGIBLE_PROBABILITY = 1e-9;

  private final Outlook outlook;

  /** Places of what was wrong at first, and numbers of the cases of now. */
  private final int[] origins;

  private final int[] nows;
  private final double[] weights;

  /** Weight of each case of now: after repairs several ways lead to the same. */
  private final double[] caseWeights;

  private final List<Step> steps;

  private Belief(Outlook outlook, int[] origins, int[] nows, double[] weights, List<Step> steps) {
    this.outlook = outlook;
    this.origins = origins;
    this.nows = nows;
    this.weights = weights;
    this.steps = List.copyOf(steps);
    caseWeights = new double[outlook.table().cases().size()];
    for (int k = 0; k < nows.length; k++) {
      caseWeights[nows[k]] += weights[k];
    }
  }

  static Belief start(Outlook outlook) {
    int count = outlook.table().cases().size();
    int[] origins = new int[count];
    int[] nows = new int[count];
    double[] weights = new double[count];
    for (int k = 0; k < count; k++) {
      origins[k] = k / CaseTable.DRAWS;
      nows[k] = k;
      weights[k] = outlook.priors().weight(outlook.causes().get(origins[k]));
    }
    return new Belief(outlook, origins, nows, normalised(weights), List.of());
  }

  private static double[] normalised(double[] weights) {
    double sum = Arrays.stream(weights).sum();
    return Arrays.stream(weights).map(w -> w / sum).toArray();
  }

  /** After one more line. */
  public Belief after(Entry entry) {
    if (entry instanceof Entry.Observed observed) {
      return observed(observed);
    } else if (entry instanceof Entry.Repaired repaired) {
      return repaired(repaired);
    }
    throw new IllegalStateException("no rule for " + entry);
  }

  /** After all of these lines. */
  public Belief after(List<Entry> entries) {
    Belief belief = this;
    for (Entry entry : entries) {
      belief = belief.after(entry);
    }
    return belief;
  }

  /** The case that decides what a check shows: repairs do not change what is remembered. */
  private int shown(int k, Check check) {
    return check.remembered() ? origins[k] * CaseTable.DRAWS + nows[k] % CaseTable.DRAWS : nows[k];
  }

  private Outcome predicted(int k, Check check, int place) {
    return outlook.table().cases().get(shown(k, check)).outcomes().get(place);
  }

  private Belief observed(Entry.Observed entry) {
    int check = outlook.place(entry.check());
    Likelihood likelihood = outlook.likelihood();
    double[] after = new double[weights.length];
    for (int k = 0; k < weights.length; k++) {
      Outcome predicted = predicted(k, entry.check(), check);
      after[k] = weights[k] * likelihood.of(entry.check(), entry.outcome(), predicted);
    }
    double expected = expected(entry, check, Arrays.stream(after).sum());
    return stepped(entry, origins, nows, after, expected);
  }

  private double expected(Entry.Observed entry, int check, double found) {
    if (!(entry.outcome() instanceof Outcome.Metered metered)) {
      return Math.min(1, found);
    }
    double above = 0;
    double below = 0;
    for (int k = 0; k < weights.length; k++) {
      Outcome predicted = predicted(k, entry.check(), check);
      above += weights[k] * Likelihood.tail(metered, predicted, true);
      below += weights[k] * Likelihood.tail(metered, predicted, false);
    }
    return Math.min(1, 2 * Math.min(above, below));
  }

  private Belief stepped(
      Entry entry, int[] origin, int[] now, double[] after, double expectedProbability) {
    double[] next = normalised(after);
    List<Step> more = new ArrayList<>(steps);
    Map<Cause, Double> then = falling(sums(now, next));
    more.add(new Step(entry, now(), then, expectedProbability));
    return new Belief(outlook, origin, now, next, more);
  }

  private Belief repaired(Entry.Repaired entry) {
    Set<FaultKind> mishaps = Mishaps.of(entry.repair());
    double mishap = mishaps.isEmpty() ? 0 : outlook.priors().mishapProbability();
    Strands strands = new Strands();
    for (int k = 0; k < weights.length; k++) {
      int after = after(nows[k], entry.repair());
      add(strands, k, after, (1 - mishap) * weights[k], entry.result());
      for (FaultKind kind : mishaps) {
        int broken = broken(after, kind);
        add(strands, k, broken, mishap / mishaps.size() * weights[k], entry.result());
      }
    }
    double[] after = strands.weights();
    double expected = Math.min(1, Arrays.stream(after).sum());
    return stepped(entry, strands.origins(), strands.nows(), after, expected);
  }

  private void add(Strands strands, int k, int after, double weight, Result result) {
    strands.add(origins[k], after, weight * likely(nows[k], after, result));
  }

  /** The case after a repair: the same bench without what the repair cures. */
  private int after(int now, Repair repair) {
    Case before = outlook.table().cases().get(now);
    Cause left = before.cause().after(repair);
    return left.equals(before.cause()) ? now : number(left, before.draw(), now);
  }

  /** The case after something else broke; two faults at once only where the table has them. */
  private int broken(int now, FaultKind kind) {
    Case before = outlook.table().cases().get(now);
    if (before.cause().kinds().contains(kind)) {
      return now;
    }
    int alone = number(Cause.of(kind), before.draw(), now);
    return before.cause().kinds().size() == 1
        ? number(Cause.of(before.cause().kinds().get(0), kind), before.draw(), alone)
        : alone;
  }

  private int number(Cause cause, int draw, int otherwise) {
    int place = outlook.place(cause);
    return place < 0 ? otherwise : place * CaseTable.DRAWS + draw;
  }

  /** How likely that result is where one case became another. */
  private double likely(int before, int after, Result result) {
    if (result == Result.UNSEEN) {
      return 1;
    }
    double misread = outlook.priors().misreadProbability();
    Course was = course(before);
    Course is = course(after);
    boolean cured = outlook.table().cases().get(after).cause().healthy();
    Set<Result> fitting;
    if (cured || is == Course.RUNS) {
      // what ran all along looks cured and unchanged
      fitting = was == is ? Set.of(Result.CURED, Result.UNCHANGED) : Set.of(Result.CURED);
    } else {
      fitting = was == is ? Set.of(Result.UNCHANGED) : Set.of(Result.WORSE);
    }
    // of those that somebody saw
    int others = Result.values().length - 1 - fitting.size();
    return fitting.contains(result) ? (1 - misread) / fitting.size() : misread / others;
  }

  private Course course(int number) {
    Outcome told = outlook.table().cases().get(number).outcomes().get(0);
    return (Course) ((Outcome.Found) told).what();
  }

  /** What belongs to the belief but not to one look at it. */
  public Outlook outlook() {
    return outlook;
  }

  /** What each line did, in order. */
  public List<Step> steps() {
    return steps;
  }

  /** Probability of each cause to be what is wrong now, all causes, falling. */
  public Map<Cause, Double> now() {
    return falling(nowProbabilities());
  }

  /** Probability of each cause to be what was wrong when one came, all causes, falling. */
  public Map<Cause, Double> atFirst() {
    double[] sums = new double[outlook.causes().size()];
    for (int k = 0; k < weights.length; k++) {
      sums[origins[k]] += weights[k];
    }
    return falling(sums);
  }

  private Map<Cause, Double> falling(double[] probabilities) {
    List<Integer> order = new ArrayList<>();
    for (int k = 0; k < probabilities.length; k++) {
      order.add(k);
    }
    order.sort((a, b) -> Double.compare(probabilities[b], probabilities[a]));
    Map<Cause, Double> falling = new LinkedHashMap<>();
    order.forEach(k -> falling.put(outlook.causes().get(k), probabilities[k]));
    return falling;
  }

  /** Probability of each cause to be what is wrong now, in the order of the table. */
  double[] nowProbabilities() {
    return sums(nows, weights);
  }

  private double[] sums(int[] cases, double[] weightOfEach) {
    double[] sums = new double[outlook.causes().size()];
    for (int k = 0; k < cases.length; k++) {
      sums[cases[k] / CaseTable.DRAWS] += weightOfEach[k];
    }
    return sums;
  }

  /** Row: what a check finds, column: what is wrong now; probability of both. */
  double[][] joint(Check check) {
    double[][] chances = outlook.chances(outlook.place(check));
    double[][] joint = new double[chances[0].length][outlook.causes().size()];
    if (check.remembered()) {
      for (int k = 0; k < weights.length; k++) {
        add(joint, nows[k], weights[k], chances[shown(k, check)]);
      }
    } else {
      for (int c = 0; c < caseWeights.length; c++) {
        add(joint, c, caseWeights[c], chances[c]);
      }
    }
    return joint;
  }

  private static void add(double[][] joint, int now, double weight, double[] chances) {
    if (weight > NEGLIGIBLE_PROBABILITY) {
      int cause = now / CaseTable.DRAWS;
      for (int o = 0; o < joint.length; o++) {
        joint[o][cause] += weight * chances[o];
      }
    }
  }

  /**
   * How probable it is that a check finds something of a kind.
   *
   * @param check the check
   * @param found the kind
   */
  public double probability(Check check, Predicate<Outcome> found) {
    int place = outlook.place(check);
    double sum = 0;
    for (int k = 0; k < weights.length; k++) {
      boolean hit = found.test(predicted(k, check, place));
      sum += hit ? weights[k] : 0;
    }
    return Math.min(1, sum);
  }

  /** Checks that to do again tells nothing new: since the last repair, or from memory. */
  Set<Check> done() {
    Set<Check> done = new HashSet<>();
    for (Step step : steps) {
      if (step.entry() instanceof Entry.Observed observed) {
        done.add(observed.check());
      } else {
        done.removeIf(check -> !check.remembered());
      }
    }
    return done;
  }
}
