package halfwave.gui.presentation.bench;

import static halfwave.gui.presentation.bench.DirectBench.act;
import static halfwave.gui.presentation.bench.DirectBench.drag;
import static halfwave.gui.presentation.bench.DirectBench.opens;
import static halfwave.gui.presentation.bench.DirectBench.turn;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import halfwave.bench.Parameter;
import halfwave.bench.Readings;
import halfwave.bench.ShippedBenches;
import halfwave.bench.Stages;
import halfwave.board.Stage;
import halfwave.gui.presentation.ManualExecutor;
import halfwave.instrument.Figure;
import halfwave.instrument.HookUp;
import halfwave.instrument.LeadEnd;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.MeterReading;
import halfwave.instrument.Shown;
import halfwave.sequence.Deed;
import halfwave.sequence.Event;
import halfwave.sequence.Hooked;
import halfwave.sequence.Moment;
import halfwave.work.Look;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** What the workbench makes of intents, one after the other, without a display. */
class WorkbenchTest {

  /** Where the rod of the standard bench would stand inside its burner's tube (m). */
  private static final double INTO_METAL = -0.04;

  private final DirectBench bench = DirectBench.standing();

  @Test
  void hasNothingToShowBeforeABenchIsOpened() {
    Workbench empty = new Workbench(Runnable::run, Runnable::run, bench.mistakes::add);
    assertThat(empty.ready()).isFalse();
    assertThatIllegalStateException().isThrownBy(empty::shown);
  }

  @Test
  void opensWithARunningFurnaceThatReadsAsTheBenchDoesAtRest() {
    assertThat(bench.moment().board().stage()).isEqualTo(Stage.RUN);
    assertThat(bench.shown().unsaved()).isFalse();
    MeterReading.Amps still =
        (MeterReading.Amps) Readings.of(new Stages(), ShippedBenches.standard()).series();
    // the display rounds to a count of 0.01 µA and the rod is still a little cooler than at rest
    assertThat(display()).isCloseTo(still.meanAmps(), within(0.02 * still.meanAmps()));
    assertThat(MeterView.of(bench.shown(), DirectBench.ENGLISH).unit()).startsWith("µA");
  }

  private double display() {
    Shown shown = bench.shown().readout().measured().orElseThrow().shown();
    return ((Figure.Value) ((Shown.Direct) shown).figure()).quantity().si();
  }

  @Test
  void timePassesOnlyWhileTheClockRunsAndAtItsSpeed() {
    long before = bench.moment().timeMillis();
    bench.want(new Intent.Pass(100));
    assertThat(bench.moment().timeMillis()).isEqualTo(before);
    bench.want(new Intent.Play(true), new Intent.Speed(10), new Intent.Pass(100));
    assertThat(bench.moment().timeMillis()).isEqualTo(before + 1000);
  }

  @Test
  void stepsOnWithTheClockStanding() {
    long before = bench.moment().timeMillis();
    bench.want(new Intent.Play(true), new Intent.StepOn(1000L));
    assertThat(bench.moment().timeMillis()).isEqualTo(before + 1000);
    assertThat(bench.shown().clock().running()).isFalse();
    int told = bench.shown().recording().events().size();
    bench.want(act(new Deed.Call(false)), new Intent.StepOn(null));
    assertThat(bench.shown().recording().events()).hasSizeGreaterThan(told);
  }

  /** Of the dozens of events of a start those are left that somebody sees, and none is missed. */
  @Test
  void theNextEventIsOneThatIsSeen() {
    bench.want(act(new Deed.Call(false)), new Intent.StepOn(60_000L));
    bench.want(act(new Deed.Call(true)));
    List<Stage> stages = new ArrayList<>();
    for (int k = 0; k < 12; k++) {
      Seen before = Seen.of(bench.moment());
      bench.want(new Intent.StepOn(null));
      assertThat(Seen.of(bench.moment())).as("step %s", k).isNotEqualTo(before);
      stages.add(bench.moment().board().stage());
      if (stages.get(k) == Stage.RUN) {
        break;
      }
    }
    assertThat(stages).contains(Stage.TRIAL).endsWith(Stage.RUN);
    assertThat(stages).as("not one step for each event").hasSizeLessThan(10);
  }

  @Test
  void aDialThatIsTurnedLeavesTheSenseLeadClosedAndALeadThatIsMovedOpensIt() {
    bench.want(new Intent.Turn(MeterFunction.AC_MICROAMPS));
    Hooked turned = Objects.requireNonNull(bench.moment().hooked());
    assertThat(turned.function()).isEqualTo(MeterFunction.AC_MICROAMPS);
    assertThat(turned.opening()).isFalse();
    bench.want(new Intent.StepOn(5000L));
    assertThat(bench.moment().board().stage()).isEqualTo(Stage.RUN);

    Placing other = new Placing.At(new HookUp.InSenseLead(LeadEnd.ROD, true));
    bench.want(new Intent.Lead(other, MeterFunction.DC_MICROAMPS));
    assertThat(Objects.requireNonNull(bench.moment().hooked()).opening()).isTrue();
    // a dial that is turned meanwhile puts nothing off
    bench.want(new Intent.StepOn(2000L), new Intent.Turn(MeterFunction.DC_MICROAMPS));
    assertThat(Objects.requireNonNull(bench.moment().hooked()).opening()).isTrue();
    // a little over, to the next instant at which the model looks
    bench.want(new Intent.StepOn(1100L));
    assertThat(Objects.requireNonNull(bench.moment().hooked()).opening()).isFalse();
  }

  @Test
  void aDragIsOneActAndOneUndoReturnsToTheVeryMomentBeforeIt() {
    bench.want(act(new Deed.Damp(true)));
    Moment before = bench.moment();
    for (int mm = 1; mm <= 20; mm++) {
      bench.want(drag(7, Parameter.ROD_UP, mm * 1e-3));
    }
    Moment after = bench.moment();
    assertThat(bench.of(Parameter.ROD_UP)).isEqualTo(0.02);
    assertThat(bench.shown().history().done()).hasSize(2);
    assertThat(acts()).as("only the last position of a drag is told").isEqualTo(2 + opening());
    bench.want(new Intent.Undo());
    assertThat(bench.moment()).isEqualTo(before);
    bench.want(new Intent.Redo());
    assertThat(bench.moment()).isEqualTo(after);
    bench.want(new Intent.Undo(), new Intent.Undo());
    assertThat(bench.moment()).isEqualTo(DirectBench.untouched().moment());
    assertThat(bench.shown().history().done()).isEmpty();
    bench.want(new Intent.Undo());
    assertThat(bench.moment()).isEqualTo(DirectBench.untouched().moment());
  }

  private long acts() {
    return actsOf(bench);
  }

  /** Power, call and meter of the opening. */
  private static long opening() {
    return actsOf(DirectBench.standing());
  }

  private static long actsOf(DirectBench of) {
    return of.shown().recording().events().stream()
        .filter(e -> e.subject() == Event.Subject.ACT)
        .count();
  }

  @Test
  void twoDragsAreTwoActsAndAFreshActForgetsWhatWasUndone() {
    bench.want(drag(7, Parameter.ROD_UP, 0.01), drag(8, Parameter.ROD_UP, 0.02));
    assertThat(bench.shown().history().done()).hasSize(2);
    bench.want(new Intent.Undo());
    assertThat(bench.of(Parameter.ROD_UP)).isEqualTo(0.01);
    bench.want(act(new Deed.Damp(true)), new Intent.Redo());
    assertThat(bench.of(Parameter.ROD_UP)).isEqualTo(0.01);
    assertThat(bench.shown().history().undone()).isEmpty();
  }

  @Test
  void theNewestOfAGestureTakesThePlaceOfTheOneThatWaits() {
    ManualExecutor engine = new ManualExecutor();
    Workbench slow = new Workbench(engine, Runnable::run, bench.mistakes::add);
    slow.want(opens(ShippedBenches.standard()));
    slow.want(new Intent.Play(false));
    engine.run();
    long before = slow.shown().moment().timeMillis();
    slow.want(drag(7, Parameter.ROD_UP, 0.01));
    slow.want(drag(7, Parameter.ROD_UP, 0.02));
    slow.want(drag(7, Parameter.ROD_UP, 0.03));
    assertThat(engine.waiting()).as("one computation is in flight").isEqualTo(1);
    engine.run();
    assertThat(Parameter.ROD_UP.of(slow.shown().moment().bench())).isEqualTo(0.03);
    // an act takes one millisecond of the bench: only one of the three was computed
    assertThat(slow.shown().moment().timeMillis()).isEqualTo(before + 1);
  }

  @Test
  void otherIntentsWaitInTheirOrder() {
    ManualExecutor engine = new ManualExecutor();
    Workbench slow = new Workbench(engine, Runnable::run, bench.mistakes::add);
    slow.want(opens(ShippedBenches.standard()));
    engine.run();
    long before = slow.shown().moment().timeMillis();
    slow.want(new Intent.Speed(2));
    slow.want(new Intent.Pass(100));
    slow.want(new Intent.Speed(10));
    slow.want(new Intent.Pass(100));
    slow.want(new Intent.Play(false));
    slow.want(new Intent.Pass(100));
    engine.run();
    assertThat(slow.shown().moment().timeMillis()).isEqualTo(before + 200 + 1000);
  }

  @Test
  void passesThatWaitBecomeOneThatIsNotTooLong() {
    ManualExecutor engine = new ManualExecutor();
    Workbench slow = new Workbench(engine, Runnable::run, bench.mistakes::add);
    slow.want(opens(ShippedBenches.standard()));
    engine.run();
    long before = slow.shown().moment().timeMillis();
    for (int k = 0; k < 100; k++) {
      slow.want(new Intent.Pass(33));
    }
    engine.run();
    assertThat(slow.shown().moment().timeMillis()).isEqualTo(before + 500);
  }

  @Test
  void whatCannotBeDoneChangesNothingAndSaysWhy() {
    Moment before = bench.moment();
    bench.want(act(new Deed.Damp(true)), act(turn(Parameter.ROD_ALONG, INTO_METAL)));
    State refused = bench.shown();
    assertThat(refused.refusal()).isNotNull();
    assertThat(refused.refusal().reason().field()).isNotBlank();
    assertThat(bench.of(Parameter.ROD_ALONG)).isEqualTo(Parameter.ROD_ALONG.of(before.bench()));
    assertThat(bench.moment().damp()).isTrue();
    assertThat(refused.history().done()).hasSize(1);
    bench.want(act(turn(Parameter.ROD_ALONG, INTO_METAL)));
    assertThat(bench.shown().refusal().number())
        .as("the same once more is told once more")
        .isEqualTo(refused.refusal().number() + 1);
    bench.want(act(new Deed.Damp(false)));
    assertThat(bench.shown().refusal()).isNull();
  }

  @Test
  void whoWatchesInWhateverOrderSeesTheSame() {
    Map<String, Function<State, Object>> panels = new LinkedHashMap<>();
    panels.put("meter", s -> MeterView.of(s, DirectBench.ENGLISH));
    panels.put("board", s -> BoardView.of(s, DirectBench.SPANISH));
    panels.put("condition", s -> ConditionView.of(s, DirectBench.ENGLISH));
    panels.put("bar", s -> BarView.of(s, DirectBench.SPANISH));
    panels.put("work", s -> WorkCard.done(s, DirectBench.ENGLISH));
    Map<String, List<Object>> first = seen(panels, new ArrayList<>(panels.keySet()));
    assertThat(first.get("meter")).hasSize(6);
    Random random = new Random(3);
    for (int k = 0; k < 3; k++) {
      List<String> order = new ArrayList<>(panels.keySet());
      Collections.shuffle(order, random);
      assertThat(seen(panels, order)).as("order %s", order).isEqualTo(first);
    }
  }

  private static Map<String, List<Object>> seen(
      Map<String, Function<State, Object>> panels, List<String> order) {
    DirectBench fresh = DirectBench.standing();
    Map<String, List<Object>> seen = new HashMap<>();
    order.forEach(
        name ->
            fresh.workbench.subscribe(
                s ->
                    seen.computeIfAbsent(name, n -> new ArrayList<>())
                        .add(panels.get(name).apply(s))));
    fresh.want(
        act(turn(Parameter.GROUND, Double.POSITIVE_INFINITY)),
        new Intent.StepOn(1000L),
        new Intent.Labor(Look.STATUS_LIGHT),
        new Intent.Undo(),
        new Intent.Redo());
    return seen;
  }

  @Test
  void whoStoppedWatchingIsToldNoMore() {
    List<State> told = new ArrayList<>();
    Runnable end = bench.workbench.subscribe(told::add);
    bench.want(new Intent.Speed(5));
    end.run();
    bench.want(new Intent.Speed(10));
    assertThat(told).hasSize(2);
  }

  @Test
  void aMistakeOfTheProgramIsToldAndTheBenchStaysAsItWas() {
    Moment before = bench.moment();
    // a time that lies in the past is no intent of anyone: it stands for any mistake inside
    bench.want(new Intent.StepOn(-1000L));
    assertThat(bench.mistakes).hasSize(1);
    assertThat(bench.moment()).isEqualTo(before);
    bench.want(new Intent.StepOn(1000L));
    assertThat(bench.moment().timeMillis()).isEqualTo(before.timeMillis() + 1000);
  }
}
