package halfwave.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.board.Ignition;
import halfwave.board.StatusCode;
import halfwave.diagnosis.Entry.Observed;
import halfwave.evidence.Course;
import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Unit;
import halfwave.validation.Validated;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The engine against a textbook's example of Bayes' rule and against counting everything out by
 * hand, without any of the engine's own sums.
 */
@Validated(Area.EVIDENCE)
class BeliefReferenceTest {

  private static final double ROUNDING = 1e-12;
  private static final Reference EDDY =
      Reference.seen("Eddy 1982, in Judgment under Uncertainty, 249; worked anew in 32nds");
  private static final Reference COUNTED = Reference.calc("every case followed by itself");
  private static final Reference TRIED = Reference.calc("each outcome of each check tried");
  private static final Reference FORM = Reference.calc("order of falling p/C by hand");

  /**
   * Eddy, in Kahneman, Slovic and Tversky (eds.), Judgment under Uncertainty (1982), 249: one in a
   * hundred has it, the test finds 80 % of those and 9.6 % of the others; then a finding means 7.8
   * %. Here as shares of the draws, 26 and 3 of 32: 0.8125 and 0.09375, so the rule is worked anew:
   * 0.01 × 0.8125 / (0.01 × 0.8125 + 0.99 × 0.09375) = 8.05 %.
   */
  @Test
  void aRareCauseStaysRareAfterOneFinding() {
    List<Case> cases = new ArrayList<>();
    for (int draw = 0; draw < CaseTable.DRAWS; draw++) {
      cases.add(seen(Cause.HEALTHY, draw, 32 * draw < 3 * CaseTable.DRAWS));
    }
    for (int draw = 0; draw < CaseTable.DRAWS; draw++) {
      cases.add(seen(SmallWorld.GROUND, draw, 32 * draw < 26 * CaseTable.DRAWS));
    }
    List<Check> checks = List.of(new Check.Call());
    CaseTable table = new CaseTable(checks, List.of(Cause.HEALTHY, SmallWorld.GROUND), cases);
    Priors priors = SmallWorld.priors(1e-6);
    Priors rare =
        new Priors(
            99,
            priors.kinds(),
            priors.pairs(),
            priors.hazardMinutes(),
            0,
            1e-6,
            1e-6,
            priors.outlierProbability(),
            priors.mishapProbability());

    Belief belief =
        new Outlook(table, rare)
            .start()
            .after(new Observed(new Check.Call(), new Outcome.Found(Course.GOES_OUT)));

    EDDY.check("a rare cause after one finding", Unit.RATIO, belief.now().get(SmallWorld.GROUND))
        .isCloseTo(0.0805, 5e-5, "half of the last digit; one look in a million is misread");
  }

  private static Case seen(Cause cause, int draw, boolean found) {
    Course course = found ? Course.GOES_OUT : Course.RUNS;
    return new Case(cause, draw, List.of(new Outcome.Found(course)));
  }

  /** Two findings, one unsure, one repair: every case followed by itself. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void countedOut(long seed) {
    double misread = 0.02;
    Outlook outlook = new Outlook(SmallWorld.table(seed), SmallWorld.priors(misread));
    Check call = SmallWorld.CHECKS.get(0);
    Check light = SmallWorld.CHECKS.get(1);
    Outcome goesOut = new Outcome.Found(Course.GOES_OUT);
    Belief belief =
        outlook
            .start()
            .after(new Observed(call, goesOut))
            .after(new Observed(light, new Outcome.Found(StatusCode.NO_IGNITION)));

    double[] sums = new double[SmallWorld.CAUSES.size()];
    double[] weights = {2, 5, 1, 0.5};
    for (int c = 0; c < sums.length; c++) {
      for (int draw = 0; draw < CaseTable.DRAWS; draw++) {
        Case one = outlook.table().cases().get(c * CaseTable.DRAWS + draw);
        boolean out = one.outcomes().get(0).equals(goesOut);
        boolean told = one.outcomes().get(1).equals(new Outcome.Found(StatusCode.NO_IGNITION));
        double likely =
            (out ? 1 - misread : misread / Course.values().length)
                * (told ? 1 - misread : misread / StatusCode.values().length);
        sums[c] += weights[c] * likely;
      }
    }
    double all = sums[0] + sums[1] + sums[2] + sums[3];
    Map<Cause, Double> now = belief.now();
    for (int c = 0; c < sums.length; c++) {
      COUNTED
          .check("belief after two findings", Unit.RATIO, now.get(SmallWorld.CAUSES.get(c)))
          .isCloseTo(sums[c] / all, ROUNDING, "rounding of a few hundred additions");
    }
  }

  /** The gain of a check is what is lost in entropy when each of its outcomes is tried. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void gainByTryingEachOutcome(long seed) {
    Outlook outlook = new Outlook(SmallWorld.table(seed), SmallWorld.priors(0.02));
    Belief belief =
        outlook.start().after(new Observed(new Check.Call(), new Outcome.Found(Course.GOES_OUT)));
    Advice advice = new Adviser(outlook, Ignition.HOT_SURFACE).advice(belief);
    double before = entropy(belief);
    for (CheckAdvice told : advice.checks()) {
      List<Outcome> outcomes = new ArrayList<>();
      told.check().outcomes().forEach(w -> outcomes.add(new Outcome.Found(w)));
      outcomes.add(new Outcome.NotReached());
      double left = 0;
      double all = 0;
      for (Outcome outcome : outcomes) {
        Belief after = belief.after(new Observed(told.check(), outcome));
        double probability = after.steps().get(1).expectedProbability();
        all += probability;
        left += probability * entropy(after);
      }
      TRIED
          .check("probabilities of all outcomes of a check", Unit.RATIO, all)
          .isCloseTo(1, 1e-9, "rounding");
      TRIED
          .check("gain of a check", Unit.BITS, told.gainBits())
          .isCloseTo(Math.max(0, before - left), 1e-9, "rounding");
    }
    assertThat(advice.checks()).hasSize(SmallWorld.CHECKS.size() - 1);
  }

  private static double entropy(Belief belief) {
    double sum = 0;
    for (double p : belief.now().values()) {
      sum -= p > 0 ? p * StrictMath.log(p) / StrictMath.log(2) : 0;
    }
    return sum;
  }

  /** One fault, repairs that do not overlap: the greedy plan is the order of falling p/C. */
  @Test
  void planOfRepairsIsTheTextbooksOrder() {
    List<Cause> causes = List.of(Cause.HEALTHY, SmallWorld.FOULED, SmallWorld.GROUND);
    Priors priors = SmallWorld.priors(0.02);
    Repairing repairing = Repairing.of(causes, priors, Ignition.HOT_SURFACE);
    double[] p = {0, 0.7, 0.3};
    List<Repairing.Turn> turns = repairing.turns(p);
    List<Repairing.Turn> byRatio = new ArrayList<>(turns);
    byRatio.sort(Comparator.comparingDouble(t -> -t.curesProbability() / t.effortSeconds()));
    double seconds =
        turns.get(0).effortSeconds()
            + turns.get(1).effortSeconds() * (1 - turns.get(0).curesProbability());
    assertThat(turns).hasSize(2).isEqualTo(byRatio);
    FORM.check("effort of two repairs in order", Unit.SECONDS, repairing.expectedSeconds(p))
        .isCloseTo(seconds, 1e-9, "rounding");
  }
}
