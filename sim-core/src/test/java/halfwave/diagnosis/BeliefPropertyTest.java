package halfwave.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import halfwave.board.StatusCode;
import halfwave.diagnosis.Entry.Observed;
import halfwave.diagnosis.Entry.Repaired;
import halfwave.diagnosis.Entry.Result;
import halfwave.evidence.Course;
import halfwave.work.Finding;
import halfwave.work.Look;
import halfwave.work.Repair;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for any table. */
class BeliefPropertyTest {

  private static final Entry CALL =
      new Observed(new Check.Call(), new Outcome.Found(Course.GOES_OUT));
  private static final Entry LIGHT =
      new Observed(new Check.Light(), new Outcome.Found(StatusCode.FLAME));
  private static final Entry LOOK =
      new Observed(SmallWorld.CHECKS.get(4), new Outcome.NotReached());

  private static Belief start(long seed) {
    return new Outlook(SmallWorld.table(seed), SmallWorld.priors(0.02)).start();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void orderOfEvidenceDoesNotMatter(long seed) {
    Belief one = start(seed).after(List.of(CALL, LIGHT, LOOK));
    Belief other = start(seed).after(List.of(LOOK, CALL, LIGHT));
    one.now().forEach((c, p) -> assertThat(other.now().get(c)).isCloseTo(p, within(1e-12)));
  }

  @Test
  void notSureAtAllChangesNothing() {
    Check call = new Check.Call();
    Outcome any = new Outcome.Unsure(Set.copyOf(call.outcomes()));
    Belief before = start(1).after(LIGHT);
    Belief after = before.after(new Observed(call, any));
    before.now().forEach((c, p) -> assertThat(after.now().get(c)).isCloseTo(p, within(1e-9)));
  }

  @Test
  void noCauseIsEverRuledOut() {
    Belief belief = start(1);
    for (int k = 0; k < 5; k++) {
      belief = belief.after(List.of(CALL, LIGHT, LOOK));
    }
    assertThat(belief.now().values()).allSatisfy(p -> assertThat(p).isPositive());
  }

  @Test
  void whatNoCauseLooksLikeIsHardToBelieve() {
    Entry never = new Observed(new Check.Light(), new Outcome.Found(StatusCode.LIMIT_OPEN));
    assertThat(start(1).after(never).steps().get(0).surprising()).isTrue();
    assertThat(start(1).after(CALL).steps().get(0).surprising()).isFalse();
  }

  /** Readings from before go on telling what it was; what it is now has changed. */
  @Test
  void aCureMovesNowAndKeepsWhatItWas() {
    Belief before = start(3).after(CALL);
    Belief cured = before.after(new Repaired(Repair.RESTORE_BOND, Result.CURED));
    assertThat(cured.now().get(Cause.HEALTHY)).isGreaterThan(before.now().get(Cause.HEALTHY));
    assertThat(cured.atFirst().get(SmallWorld.GROUND))
        .isGreaterThan(before.atFirst().get(SmallWorld.GROUND));
    assertThat(cured.atFirst().get(SmallWorld.FOULED))
        .isLessThan(before.atFirst().get(SmallWorld.FOULED));
  }

  @Test
  void aRepairInVainSpeaksAgainstWhatItCures() {
    Belief before = start(3).after(CALL);
    Belief after = before.after(new Repaired(Repair.RESTORE_BOND, Result.UNCHANGED));
    assertThat(after.atFirst().get(SmallWorld.GROUND))
        .isLessThan(before.atFirst().get(SmallWorld.GROUND));
  }

  /** A customer tells how it began, whatever was repaired before they were asked. */
  @Test
  void whatIsRememberedWeighsTheSameAfterARepair() {
    Check since = new Check.Looked(Look.ASK_SINCE_WHEN, Occasion.STANDBY);
    Entry told = new Observed(since, new Outcome.Found(Finding.SINCE_WEEKS));
    Entry repaired = new Repaired(Repair.RESTORE_BOND, Result.UNSEEN);
    Belief before = start(5).after(List.of(CALL, told, repaired));
    Belief after = start(5).after(List.of(CALL, repaired, told));
    before.now().forEach((c, p) -> assertThat(after.now().get(c)).isCloseTo(p, within(1e-12)));
    before
        .atFirst()
        .forEach((c, p) -> assertThat(after.atFirst().get(c)).isCloseTo(p, within(1e-12)));
    assertThat(before.done()).containsExactly(since);
    // and it tells something of what it is now, through what it was
    assertThat(start(5).after(List.of(CALL, repaired)).now()).isNotEqualTo(after.now());
  }

  /** What was checked before a repair may be checked again after it. */
  @Test
  void aRepairMakesChecksNewAgain() {
    Belief belief = start(1).after(List.of(CALL, LIGHT));
    assertThat(belief.done()).containsExactlyInAnyOrder(new Check.Call(), new Check.Light());
    assertThat(belief.after(new Repaired(Repair.REPLACE_ROD, Result.UNCHANGED)).done()).isEmpty();
  }
}
