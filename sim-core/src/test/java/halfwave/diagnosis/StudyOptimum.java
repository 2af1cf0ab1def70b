package halfwave.diagnosis;

import halfwave.board.Ignition;
import halfwave.quantity.Noise;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.apache.commons.math3.util.MathArrays;

/**
 * The advice against the best policy there is, where that can be computed: few causes and few
 * checks, every order of checks tried with every outcome, repairs in the best order at the end.
 * Both are reckoned with the engine's own table, so that only the choosing is compared.
 */
final class StudyOptimum {

  private static final int PROBLEMS = 60;
  private static final int CAUSES = 6;
  private static final int CHECKS = 5;
  private static final double LEAST_PROBABILITY = 1e-6;

  private final Priors priors;

  StudyOptimum(Priors priors) {
    this.priors = priors;
  }

  String text() {
    List<Double> ratios = new ArrayList<>();
    double advised = 0;
    double best = 0;
    CaseTable table = DiagnosisStudy.table(DiagnosisStudy.BENCHES.get(0), priors);
    for (int k = 0; k < PROBLEMS; k++) {
      Problem problem = new Problem(small(table, k));
      double own = problem.advised(problem.start(), problem.all());
      double optimal = problem.best(problem.start(), problem.all());
      ratios.add(own / optimal);
      advised += own;
      best += optimal;
    }
    ratios.sort(Double::compare);
    return String.format(
        Locale.ROOT,
        "%d small problems, each of %d causes and %d checks of the standard bench drawn by seed:"
            + " all orders of checks with all outcomes, repairs in the engine's order. Expected"
            + " effort as advised over that of the best policy: %.3f together, %.3f in the middle,"
            + " %.3f at worst.",
        PROBLEMS,
        CAUSES,
        CHECKS,
        advised / best,
        ratios.get(PROBLEMS / 2),
        ratios.get(PROBLEMS - 1));
  }

  /** A part of the table. */
  private static CaseTable small(CaseTable table, int seed) {
    TreeSet<Integer> causes = draw(seed, 1, table.causes().size(), CAUSES);
    // the first check tells the course, which repairs need
    TreeSet<Integer> checks = draw(seed, 2, table.checks().size() - 1, CHECKS - 1);
    List<Integer> places = new ArrayList<>(List.of(0));
    checks.forEach(c -> places.add(c + 1));
    List<Case> cases = new ArrayList<>();
    for (int cause : causes) {
      for (int draw = 0; draw < CaseTable.DRAWS; draw++) {
        Case one = table.cases().get(cause * CaseTable.DRAWS + draw);
        cases.add(new Case(one.cause(), draw, places.stream().map(one.outcomes()::get).toList()));
      }
    }
    return new CaseTable(
        places.stream().map(table.checks()::get).toList(),
        causes.stream().map(table.causes()::get).toList(),
        cases);
  }

  private static TreeSet<Integer> draw(int seed, int purpose, int from, int count) {
    TreeSet<Integer> drawn = new TreeSet<>();
    for (int k = 0; drawn.size() < count; k++) {
      double u = Noise.uniform(seed, Noise.Purpose.READING, purpose * 1000L + k);
      drawn.add((int) (u * from));
    }
    return drawn;
  }

  /** One small problem. */
  private final class Problem {
    private final Outlook outlook;
    private final Repairing repairing;

    Problem(CaseTable table) {
      outlook = new Outlook(table, priors);
      repairing = Repairing.of(table.causes(), priors, Ignition.HOT_SURFACE);
    }

    double[] start() {
      double[] weights =
          outlook.table().cases().stream().mapToDouble(c -> priors.weight(c.cause())).toArray();
      return MathArrays.normalizeArray(weights, 1);
    }

    List<Integer> all() {
      List<Integer> all = new ArrayList<>();
      for (int k = 0; k < outlook.table().checks().size(); k++) {
        all.add(k);
      }
      return all;
    }

    private double[] causes(double[] weights) {
      double[] sums = new double[outlook.causes().size()];
      for (int c = 0; c < weights.length; c++) {
        sums[c / CaseTable.DRAWS] += weights[c];
      }
      return sums;
    }

    private double effort(int check) {
      Check c = outlook.table().checks().get(check);
      return 60.0 * c.minutes() + Repairing.hazards(c.hazards(Ignition.HOT_SURFACE), priors);
    }

    /** Effort from here on, times the probability of getting here, by the best choice. */
    double best(double[] weights, List<Integer> left) {
      double least = repairing.expectedSeconds(causes(weights));
      for (int check : left) {
        double seconds = sum(weights) * effort(check);
        if (seconds < least) {
          least = Math.min(least, after(weights, left, check, least, true));
        }
      }
      return least;
    }

    private double after(
        double[] weights, List<Integer> left, int check, double bound, boolean best) {
      List<Integer> rest = new ArrayList<>(left);
      rest.remove((Integer) check);
      double seconds = sum(weights) * effort(check);
      double[][] chances = outlook.chances(check);
      for (int o = 0; o < chances[0].length && seconds < bound; o++) {
        double[] then = new double[weights.length];
        for (int c = 0; c < weights.length; c++) {
          then[c] = weights[c] * chances[c][o];
        }
        if (sum(then) > LEAST_PROBABILITY) {
          seconds += best ? best(then, rest) : advised(then, rest);
        }
      }
      return seconds;
    }

    /** The same by the rule of the adviser: most bits a minute among the checks that pay. */
    double advised(double[] weights, List<Integer> left) {
      double[] now = causes(weights);
      double unaided = repairing.expectedSeconds(now);
      double merit = 0;
      int chosen = -1;
      for (int check : left) {
        double[][] joint = joint(weights, check);
        double after = 0;
        for (double[] row : joint) {
          after += repairing.expectedSeconds(row);
        }
        double gain =
            Information.entropyBits(now) - Information.expectedEntropyBits(joint) / sum(weights);
        boolean pays = unaided - after - sum(weights) * effort(check) > 0;
        if (pays && gain > Adviser.REDUNDANT_BITS && gain / effort(check) > merit) {
          merit = gain / effort(check);
          chosen = check;
        }
      }
      return chosen < 0 ? unaided : after(weights, left, chosen, Double.POSITIVE_INFINITY, false);
    }

    private double[][] joint(double[] weights, int check) {
      double[][] chances = outlook.chances(check);
      double[][] joint = new double[chances[0].length][outlook.causes().size()];
      for (int c = 0; c < weights.length; c++) {
        for (int o = 0; o < joint.length; o++) {
          joint[o][c / CaseTable.DRAWS] += weights[c] * chances[c][o];
        }
      }
      return joint;
    }

    private double sum(double[] weights) {
      double sum = 0;
      for (double w : weights) {
        sum += w;
      }
      return sum;
    }
  }
}
