package halfwave.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.util.FastMath;

/** The study in words and numbers. */
final class StudyReport {

  /** An optimal classifier that errs less often could tell it apart. */
  private static final double DISTINGUISHABLE = 0.95;

  private final List<StudyCall> calls;
  private final StudyOptimum optimum;
  private final List<Boolean> distinguishable = new ArrayList<>();
  private final StringBuilder text = new StringBuilder();
  private int informedRight;

  StudyReport(List<StudyCall> calls, StudyOptimum optimum) {
    this.calls = calls;
    this.optimum = optimum;
    for (StudyCall call : calls) {
      distinguishable.add(tellable(call));
    }
  }

  /**
   * The best that could be known: Bayes' rule over all other calls of the study, which are drawn
   * from the very truth that the engine does not know, after all checks.
   */
  private boolean tellable(StudyCall call) {
    Likelihood likelihood = new Likelihood(halfwave.io.evidence.PriorsFile.shipped());
    Map<Cause, Double> sums = new HashMap<>();
    double all = 0;
    for (StudyCall other : calls) {
      if (other != call && other.bench().equals(call.bench())) {
        double log = 0;
        for (Map.Entry<Check, Outcome> found : call.found().entrySet()) {
          Outcome predicted = other.found().get(found.getKey());
          log += FastMath.log(likelihood.of(found.getKey(), found.getValue(), predicted));
        }
        double weight = FastMath.exp(Math.max(-600, log));
        sums.merge(other.cause(), weight, Double::sum);
        all += weight;
      }
    }
    Map.Entry<Cause, Double> best =
        sums.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow();
    boolean tells = best.getValue() / all >= DISTINGUISHABLE;
    informedRight += tells && best.getKey().equals(call.cause()) ? 1 : 0;
    return tells;
  }

  String text() {
    line("# How good is the advice?");
    line("");
    line(
        "Written by `mvn -q test -pl sim-core -Dtest=DiagnosisStudy"
            + " -Dsurefire.failIfNoSpecifiedTests=false`; the same seeds"
            + " give the same numbers. Everything here is simulated: it shows how well the engine"
            + " finds what the model does, not how well it does in a cellar.");
    line("");
    setting();
    ranking();
    calibration();
    minutes();
    optimum();
    wrong();
    return text.toString();
  }

  private void line(String format, Object... arguments) {
    text.append(String.format(Locale.ROOT, format, arguments)).append('\n');
  }

  private void setting() {
    line("## What was asked of it");
    line("");
    line(
        "%d service calls on two kinds of benches. The engine knows %d benches of each kind for"
            + " each cause; the calls are on others: spreads of ions, voltage, gas, air and place"
            + " half as wide again, another lead, severities anywhere in their range, and causes"
            + " drawn with other frequencies than it assumes (its own flattened, each then"
            + " multiplied by a random factor, e^(0.7 z)). One look in a hundred is misread, 15"
            + " customers in a hundred remember something else than what was, readings are"
            + " off by 4 %% and the last digits.",
        calls.size(), CaseTable.DRAWS);
    line("");
  }

  private void ranking() {
    line("## The true cause after all checks");
    line("");
    long telling = distinguishable.stream().filter(d -> d).count();
    line(
        "Distinguishable: all other calls of the study together, drawn from the very truth, leave"
            + " less than 5 %% of doubt about the cause. That holds for %s of the calls (%s of those"
            + " are then named rightly by that classifier); the rest looks like something else, and"
            + " no routine could tell.",
        percent(telling, calls.size()), percent(informedRight, telling));
    line("");
    line("| calls | first | in the first three | smallest probability of the true cause |");
    line("|---|---|---|---|");
    row("all", c -> true);
    row("distinguishable", c -> distinguishable.get(calls.indexOf(c)));
    row("the rest", c -> !distinguishable.get(calls.indexOf(c)));
    row("one fault", c -> c.cause().kinds().size() == 1);
    row("two faults", c -> c.cause().kinds().size() == 2);
    row("nothing wrong", c -> c.cause().healthy());
    line("");
  }

  private void row(String name, Predicate<StudyCall> which) {
    List<StudyCall> some = calls.stream().filter(which).toList();
    if (some.isEmpty()) {
      return;
    }
    long first = some.stream().filter(c -> StudyCall.rank(c.knowing(), c.cause()) == 0).count();
    long three = some.stream().filter(c -> StudyCall.rank(c.knowing(), c.cause()) < 3).count();
    double least =
        some.stream().mapToDouble(c -> c.knowing().getOrDefault(c.cause(), 0.0)).min().orElse(0);
    line(
        "| %s (%d) | %s | %s | %.1e |",
        name, some.size(), percent(first, some.size()), percent(three, some.size()), least);
  }

  private void calibration() {
    line("## Calibration");
    line("");
    line("How often the first cause is the true one, by the probability that it is given.");
    line("");
    line("| given | calls | mean given | true |");
    line("|---|---|---|---|");
    double[] edges = {0, 0.5, 0.7, 0.9, 0.97, 0.99, 1.0001};
    for (int k = 0; k + 1 < edges.length; k++) {
      double from = edges[k];
      double to = edges[k + 1];
      List<StudyCall> some = calls.stream().filter(c -> first(c) >= from && first(c) < to).toList();
      if (!some.isEmpty()) {
        long right = some.stream().filter(c -> StudyCall.rank(c.knowing(), c.cause()) == 0).count();
        line(
            "| %.0f to %.0f %% | %d | %.1f %% | %s |",
            100 * from,
            Math.min(100, 100 * to),
            some.size(),
            100 * some.stream().mapToDouble(StudyReport::first).average().orElse(0),
            percent(right, some.size()));
      }
    }
    line("");
  }

  private static double first(StudyCall call) {
    return call.knowing().values().iterator().next();
  }

  private void minutes() {
    line("## Minutes to a proven repair");
    line("");
    line(
        "Minutes of checks, repairs and the calls watched after them; parts in units without a"
            + " currency (a flame rod is 10). Everybody watches a call first. A visit that ends"
            + " while something is still wrong is not whole.");
    line("");
    line(
        "| way | mean min | median min | 90 %% under | parts | needless repairs | whole at the end |");
    line("|---|---|---|---|---|---|---|");
    for (Policy policy : Policy.values()) {
      List<Visit> visits = calls.stream().map(c -> c.visits().get(policy)).toList();
      line(
          "| %s | %.1f | %.0f | %.0f | %.1f | %.2f | %s |",
          name(policy),
          mean(visits, Visit::minutes),
          quantile(visits, 0.5),
          quantile(visits, 0.9),
          mean(visits, Visit::parts),
          mean(visits, Visit::needless),
          percent(visits.stream().filter(Visit::whole).count(), visits.size()));
    }
    line("");
  }

  private static String name(Policy policy) {
    return switch (policy) {
      case ADVISED -> "as advised";
      case RANDOM -> "any check, until one cause is nine to one";
      case ROUTINE -> "look, clean, microamps, volts, bond, replace rod, replace board";
      case SUSPECTED -> "repair the most probable cause, no checks";
    };
  }

  private static double mean(List<Visit> visits, ToDoubleFunction<Visit> what) {
    return visits.stream().mapToDouble(what).average().orElse(0);
  }

  private static double quantile(List<Visit> visits, double share) {
    double[] sorted = visits.stream().mapToDouble(Visit::minutes).sorted().toArray();
    return sorted[(int) (share * (sorted.length - 1))];
  }

  private void optimum() {
    line("## Against the best that can be computed");
    line("");
    line("%s", optimum.text());
    line("");
  }

  private void wrong() {
    line("## What it gets wrong");
    line("");
    line("Distinguishable calls whose true cause is not first after all checks, by cause.");
    line("");
    line("| true cause | taken for | calls |");
    line("|---|---|---|");
    Map<String, Integer> mixed = new TreeMap<>();
    for (int k = 0; k < calls.size(); k++) {
      StudyCall c = calls.get(k);
      if (distinguishable.get(k) && StudyCall.rank(c.knowing(), c.cause()) != 0) {
        mixed.merge(
            "| " + c.cause().id() + " | " + c.knowing().keySet().iterator().next().id(),
            1,
            Integer::sum);
      }
    }
    mixed.entrySet().stream()
        .sorted(Comparator.comparingInt(e -> -e.getValue()))
        .limit(20)
        .forEach(e -> line("%s | %d |", e.getKey(), e.getValue()));
    line("");
    line(
        "Why: a shut gas cock and a stuck valve show the same everywhere; a valve that leaks and a"
            + " board that sees flame differ by one look. A deaf board, little air or a corroded"
            + " ground of the mildest sort leaves everything inside what healthy furnaces have. Of"
            + " two faults the weaker one often shows in nothing beside the stronger, and a second"
            + " one is sometimes suspected where a flame is weaker than any that the table has.");
    line("");
    line("Visits as advised that ended with something still wrong, by cause.");
    line("");
    line("| true cause | visits | of |");
    line("|---|---|---|");
    Map<String, int[]> left = new TreeMap<>();
    for (StudyCall c : calls) {
      int[] counts = left.computeIfAbsent(c.cause().id(), k -> new int[2]);
      counts[0] += c.visits().get(Policy.ADVISED).whole() ? 0 : 1;
      counts[1]++;
    }
    left.entrySet().stream()
        .filter(e -> e.getValue()[0] > 0)
        .sorted(Comparator.comparingInt(e -> -e.getValue()[0]))
        .limit(20)
        .forEach(e -> line("| %s | %d | %d |", e.getKey(), e.getValue()[0], e.getValue()[1]));
    line("");
    line(
        "Why: after the stronger of two faults is mended the call runs well, and a visit ends with"
            + " that; only a further reading would show the other. High gas pressure, a slow"
            + " crossover and a mildly scaled burner run well from the start: where nothing seems to"
            + " be wrong, nothing is looked for.");
    line("");
  }

  private static String percent(long part, long whole) {
    return whole == 0 ? "–" : String.format(Locale.ROOT, "%.1f %%", 100.0 * part / whole);
  }
}
