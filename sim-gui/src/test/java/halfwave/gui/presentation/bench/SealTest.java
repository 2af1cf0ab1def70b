package halfwave.gui.presentation.bench;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Change;
import halfwave.bench.Disorder;
import halfwave.bench.Parameter;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import halfwave.gui.presentation.charts.StripView;
import halfwave.picture.scene.DrawnBench;
import halfwave.sequence.Deed;
import halfwave.work.Caution;
import halfwave.work.Look;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A bench that is hidden from a class tells nothing until it is revealed, and then everything. */
class SealTest {

  private final DirectBench bench = DirectBench.standing();

  private Seal seal() {
    return Objects.requireNonNull(bench.shown().seal());
  }

  private SealView view() {
    return SealView.of(bench.shown(), DirectBench.ENGLISH);
  }

  private void fault(FaultKind kind) {
    List<Deed> deeds = new ArrayList<>();
    Fault.typical(kind).changes().forEach(change -> deeds.add(new Deed.Alter(change)));
    bench.want(new Intent.Act(deeds, 0));
  }

  @Test
  void hidingKeepsTheBenchAndForgetsTheWayToIt() {
    fault(FaultKind.GROUND_CORRODED);
    var before = bench.shown();
    bench.want(new Intent.Hide());
    assertThat(bench.moment()).isEqualTo(before.moment());
    assertThat(bench.shown().sealed()).isTrue();
    assertThat(bench.shown().history()).isEqualTo(History.EMPTY);
    assertThat(bench.shown().recording().events()).isEmpty();
    assertThat(BarView.of(bench.shown(), DirectBench.ENGLISH).title()).contains("changed");
    bench.want(new Intent.Undo());
    assertThat(bench.moment()).isEqualTo(before.moment());
  }

  @Test
  void ofTheFlameOnlyIsSeenWhetherItBurnsAndTheTimelineSaysTheSame() {
    DrawnBench healthy = SeenBench.of(bench.shown(), null, DirectBench.ENGLISH);
    fault(FaultKind.GAS_PRESSURE_LOW);
    bench.want(new Intent.StepOn(20_000L));
    DrawnBench before = SeenBench.of(bench.shown(), null, DirectBench.ENGLISH);
    bench.want(new Intent.Hide(), new Intent.StepOn(2000L));
    DrawnBench hidden = SeenBench.of(bench.shown(), null, DirectBench.ENGLISH);

    assertThat(before.flame().field().sheets()).isNotEqualTo(healthy.flame().field().sheets());
    assertThat(hidden.flame().field().sheets()).isEqualTo(healthy.flame().field().sheets());
    assertThat(before.arrows()).isNotNull();
    assertThat(hidden.arrows()).as("no current is seen without a meter").isNull();
    assertThat(lit(hidden)).isPositive();
    assertThat(flameUntilNow()).isTrue();

    bench.want(DirectBench.act(new Deed.Supply(false)), new Intent.StepOn(2000L));
    assertThat(lit(SeenBench.of(bench.shown(), null, DirectBench.ENGLISH))).isZero();
    assertThat(flameUntilNow()).isFalse();

    bench.want(new Intent.Reveal(null));
    assertThat(SeenBench.of(bench.shown(), null, DirectBench.ENGLISH).flame().field().sheets())
        .isEqualTo(before.flame().field().sheets());
  }

  private static int lit(DrawnBench drawn) {
    return drawn.moment().furnace().litCount();
  }

  private boolean flameUntilNow() {
    StripView strip = StripView.of(bench.shown(), DirectBench.ENGLISH, 180_000, 400);
    return strip.lanes().stream()
        .filter(StripView.Lane::flame)
        .flatMap(lane -> lane.bars().stream())
        // less than the two seconds since the power went: 1/90 of three minutes
        .anyMatch(bar -> bar.level() > 0 && bar.until() > strip.now() - 0.005);
  }

  @Test
  void theEndBringsBackExactlyWhatWasThere() {
    fault(FaultKind.GROUND_CORRODED);
    var before = bench.shown();
    bench.want(
        new Intent.Hide(),
        new Intent.Draw(3),
        new Intent.Labor(Repair.CLEAN_ROD_WITH_STEEL_WOOL),
        new Intent.Reveal(null),
        new Intent.Unseal());
    assertThat(bench.shown()).isEqualTo(before);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void whatIsDrawnCanBeNoticedAndIsNamedWhenRevealed(long seed) {
    double healthy = bench.moment().filter().meanAmps();
    var stage = bench.moment().board().stage();
    bench.want(new Intent.Hide(), new Intent.Draw(seed));
    Fault drawn = Objects.requireNonNull(seal().drawn());
    double now = bench.moment().filter().meanAmps();
    assertThat(bench.moment().board().stage() != stage || Math.abs(now / healthy - 1) > 0.15)
        .as("seed %s, %s: %s A after %s A", seed, drawn.kind(), now, healthy)
        .isTrue();
    String name = DirectBench.ENGLISH.heading(drawn.kind());
    assertThat(view().text()).doesNotContain(name);
    bench.want(new Intent.Reveal(drawn.kind()));
    assertThat(view().text()).contains(name);
    assertThat(view().verdict()).contains("Right.");
  }

  @Test
  void drawingIsTheSameForTheSameSeed() {
    bench.want(new Intent.Hide(), new Intent.Draw(5));
    Fault first = seal().drawn();
    bench.want(new Intent.Draw(6), new Intent.Draw(5));
    assertThat(seal().drawn()).isEqualTo(first);
  }

  @Test
  void theWayIsToldInOrderAndCanBeLookedAtAgain() {
    fault(FaultKind.GROUND_LOST);
    bench.want(new Intent.Hide(), new Intent.StepOn(5000L));
    bench.want(new Intent.Labor(Look.STATUS_LIGHT), new Intent.StepOn(1000L));
    bench.want(new Intent.Labor(Repair.RESTORE_BOND), new Intent.StepOn(1000L));
    bench.want(DirectBench.act(new Deed.Supply(false)), new Intent.StepOn(1000L));
    bench.want(DirectBench.act(new Deed.Supply(true)), new Intent.StepOn(60_000L));
    bench.want(new Intent.Reveal(FaultKind.GROUND_LOST));
    assertThat(view().path()).hasSize(4);
    assertThat(view().path().get(0)).contains(DirectBench.ENGLISH.heading(Look.STATUS_LIGHT));
    assertThat(view().path().get(1)).contains(DirectBench.ENGLISH.heading(Repair.RESTORE_BOND));
    assertThat(view().outcome()).contains("good order");
    assertThat(view().verdict()).contains("Right.");
    var end = bench.moment();
    bench.want(new Intent.LookBack(0));
    assertThat(Parameter.GROUND.of(bench.moment().bench())).isInfinite();
    assertThat(view().at()).isZero();
    bench.want(new Intent.LookBack(4));
    assertThat(bench.moment()).isEqualTo(end);
  }

  @Test
  void whatIsDoneWithPowerOnSaysWhatToMindSealedOrNot() {
    String caution = DirectBench.ENGLISH.heading(Caution.OFF_BEFORE_OPENING);
    bench.want(new Intent.Labor(Look.INSULATION_TEST));
    assertThat(lastDone()).contains(caution);
    bench.want(new Intent.Hide(), new Intent.Labor(Look.INSULATION_TEST));
    assertThat(lastDone()).as("the result, and what to mind").contains(": ").contains(caution);
    bench.want(new Intent.Labor(Look.STATUS_LIGHT));
    assertThat(lastDone()).as("seen through the glass").doesNotContain(caution);
    Deed.Alter shut = new Deed.Alter(new Change.Upset(Disorder.GAS_SHUT, true));
    bench.want(DirectBench.act(new Deed.Supply(false)), new Intent.Labor(Look.INSULATION_TEST));
    assertThat(lastDone()).as("the gas is still open").contains(caution);
    bench.want(DirectBench.act(shut), new Intent.Labor(Look.INSULATION_TEST));
    assertThat(lastDone()).as("all off").doesNotContain(caution);
  }

  private String lastDone() {
    return WorkCard.done(bench.shown(), DirectBench.ENGLISH).get(0);
  }

  @Test
  void anotherFaultOfTheSamePartIsNearAndAnotherPartIsNot() {
    bench.want(new Intent.Hide(), new Intent.Reveal(FaultKind.GROUND_LOST));
    assertThat(view().verdict()).contains("something else");
    assertThat(view().text()).contains("Nothing was wrong");
  }
}
